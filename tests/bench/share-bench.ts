import { readFileSync } from "node:fs";
import ExcelJS from "exceljs";
import { MOST_ACROSS, MOST_ALONG } from "../../src/core/pattern/can-field";
import { checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";
import { COVERAGE_ALONE } from "../../src/workbook/audit/coverage/alone";
import { buildWorkbook } from "../../src/workbook/form/build";
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

/** A full grid of 20 by 30 cans as a Coverage sheet of its own, from readings to file. */
async function paintBench(): Promise<void> {
  const across = Array.from({ length: MOST_ACROSS }, (_, column) => column);
  const along = Array.from({ length: MOST_ALONG }, (_, row) => row);
  const rates = along.map((row) => across.map((column) => 8 + ((row * 7 + column * 5) % 9)));
  const entries = { Coverage_Rates: rates, Coverage_Across: [across], Coverage_Along: along.map((place) => [place]) };
  const paint = () => buildWorkbook([COVERAGE_ALONE], entries);
  const file = await paint();
  const painting = [
    await timed("Canfall", ROUNDS, paint),
    await timed("exceljs, load and save only", ROUNDS, () => loadedAndSaved(file)),
  ];
  printed(`Coverage sheet of ${MOST_ACROSS} by ${MOST_ALONG} cans`, painting, "Canfall");
}

await paintBench();
await shareBench();
