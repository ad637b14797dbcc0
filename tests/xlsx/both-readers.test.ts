import { readFileSync } from "node:fs";
import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { describe, expect, it } from "vitest";
import { shareCopy } from "../../src/share/copy/share-copy";
import { cellValue } from "../../src/xlsx/desk-file/value";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { chartFile } from "./chart-sample";
import { sampleFile } from "./xlsx-sample";

const template = (name: string) => new Uint8Array(readFileSync(`templates/${name}.xlsx`));
const copy = (name: string) => shareCopy(template(name), new Date(2026, 10, 25));

/** What the desk gets from its file library: value or formula of each cell, by sheet and address. */
async function theirs(file: Uint8Array): Promise<Map<string, unknown>> {
  installChartSupport();
  const workbook = new Workbook();
  await workbook.xlsx.load(file);
  const cells = new Map<string, unknown>();
  for (const sheet of workbook.worksheets) {
    sheet.eachRow((row) => {
      row.eachCell((cell) => {
        if (cell.isMerged && cell.master !== cell) return;
        const value = cell.formula ? `=${cell.formula} ${told(cellValue(cell.result))}` : told(cellValue(cell.value));
        if (value !== "nothing") cells.set(`${sheet.name}!${cell.address}`, value);
      });
    });
  }
  return cells;
}

/** A value with its kind; a number in the digits that both keep. */
function told(value: unknown): string {
  if (value === null || value === "") return "nothing";
  if (typeof value === "number") return value.toPrecision(12);
  return JSON.stringify(value);
}

function ours(file: Uint8Array): Map<string, unknown> {
  const cells = new Map<string, unknown>();
  for (const { name, cells: held } of openBook(file).sheets) {
    for (const [address, { value, error, formula }] of held) {
      const shows = told(error === undefined ? value : { error });
      const all = formula === undefined ? shows : `=${formula} ${shows}`;
      if (all !== "nothing") cells.set(`${name}!${address}`, all);
    }
  }
  return cells;
}

describe("the reader of parts and the file library of the desk read the same in each cell", () => {
  it.each([
    ["the audit template", () => template("block-audit")],
    ["the filled audit", () => template("example-audit")],
    ["the filled nursery plan", () => template("example-nursery")],
    ["a share copy", () => copy("example-audit")],
    ["a file of many kinds", sampleFile],
    ["a file with charts", chartFile],
  ])("of %s", async (_, file) => {
    const bytes = await file();
    const read = ours(bytes);
    expect(read.size).toBeGreaterThan(2);
    expect(Object.fromEntries(await theirs(bytes))).toEqual(Object.fromEntries(read));
  });
});
