import { readFileSync } from "node:fs";
import ExcelJS from "exceljs";
import { checkCopy } from "../../src/workbook/share/check-copy";
import { shareCopy } from "../../src/workbook/share/share-copy";
import { printed, type Row } from "./table";

const TEMPLATE = "templates/example-audit.xlsx";
const COPIES = 100;
const ROUNDS = 9;

/** The median time of some rounds after one to warm up. */
async function timed(name: string, rounds: number, run: () => Promise<unknown>): Promise<Row> {
  const times: number[] = [];
  for (let round = 0; round <= rounds; round += 1) {
    const start = performance.now();
    await run();
    if (round > 0) times.push(performance.now() - start);
  }
  times.sort((one, other) => one - other);
  return { name, milliseconds: times[Math.floor(times.length / 2)], failure: undefined };
}

/** What exceljs needs for the file work alone: it computes, replaces and checks nothing. */
async function loadedAndSaved(file: Uint8Array): Promise<void> {
  await (await loaded(file)).xlsx.writeBuffer();
}

async function loaded(file: Uint8Array): Promise<ExcelJS.Workbook> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(file.slice().buffer);
  return book;
}

async function times(count: number, run: () => Promise<unknown>): Promise<void> {
  for (let i = 0; i < count; i += 1) await run();
}

async function shareBench(): Promise<void> {
  const file = new Uint8Array(readFileSync(TEMPLATE));
  const copy = await shareCopy(file, new Date());
  const making = [
    await timed("Canfall", ROUNDS, () => shareCopy(file, new Date())),
    await timed("exceljs, load and save only", ROUNDS, () => loadedAndSaved(file)),
  ];
  printed("Share copy of the filled template", making, "Canfall");
  const checking = [
    await timed("Canfall", 1, () => times(COPIES, () => checkCopy(copy))),
    await timed("exceljs, load only", 1, () => times(COPIES, () => loaded(copy))),
    await timed("exceljs, load and save only", 1, () => times(COPIES, () => loadedAndSaved(copy))),
  ];
  printed(`Check of ${COPIES} copies`, checking, "Canfall");
}

shareBench();
