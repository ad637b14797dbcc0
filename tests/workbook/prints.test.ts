import { beforeAll, describe, expect, it } from "vitest";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { buildWorkbook, type Entries } from "../../src/workbook/form/build";
import { NURSERY_EXAMPLE } from "../../src/workbook/nursery/examples/nursery";
import { NURSERY_SHEETS } from "../../src/workbook/nursery/nursery-plan";
import { converted } from "../support/libreoffice";

const upTo = (count: number) => Array.from({ length: count }, (_, index) => index);
/** As many cans as the sheet takes. */
const FULL_AUDIT: Entries = {
  ...EXAMPLE_ENTRIES,
  Bed_Width_m: 40,
  Bed_Length_m: 60,
  Cans_Across_m: [upTo(20).map((column) => 1 + 2 * column)],
  Cans_Along_m: upTo(30).map((row) => [1 + 2 * row]),
  Cans_Readings: upTo(30).map((row) => upTo(20).map((column) => 12 + ((row * column) % 9))),
};
/** As many blocks and start times as the sheets take, of the longest names. */
const FULL_PLAN: Entries = {
  ...NURSERY_EXAMPLE,
  Program_Blocks: upTo(60).map((index) => [
    `House ${10 + index}, the long bench on the north`,
    "",
    400,
    12,
    1.4,
    6,
    2,
    30,
    "",
  ]),
  Start_Times: upTo(240).map((index) => [
    `House ${10 + (index % 60)}, the long bench on the north`,
    1 + Math.floor(index / 60),
    (index < 200 ? 1200 + index : index) / 1440,
    11,
  ]),
};
const pagesOf = (pdf: Uint8Array): number =>
  (
    Buffer.from(pdf)
      .toString("latin1")
      .match(/\/Type\s*\/Page[^s]/g) ?? []
  ).length;

describe("full-size workbooks, printed by LibreOffice", () => {
  let pages: number[];
  beforeAll(async () => {
    const files = await Promise.all([
      buildWorkbook(AUDIT_SHEETS, FULL_AUDIT),
      buildWorkbook(AUDIT_SHEETS, {}),
      buildWorkbook(NURSERY_SHEETS, FULL_PLAN),
      buildWorkbook(NURSERY_SHEETS, {}),
    ]);
    pages = (await converted(files, "pdf")).map(pagesOf);
  }, 300_000);

  it("take a page a sheet of the audit, two for Heads, Report and Working, three for Cost", () => {
    expect(pages.slice(0, 2)).toEqual(Array(2).fill(AUDIT_SHEETS.length + 3 + 2));
  });

  it("take as many pages of the plan as the blank form: three for Demand, four for the Register, two for Program", () => {
    expect(pages.slice(2)).toEqual(Array(2).fill(NURSERY_SHEETS.length + 2 + 3 + 1));
  });
});

describe("names of blocks", () => {
  it("stay on one line where lines are alike, smaller where they are too long", () => {
    const cells = NURSERY_SHEETS.flatMap(({ name, cells }) =>
      cells.map((cell) => ({ ...cell, at: `${name}!${cell.at}` })),
    );
    const shrunk = new Set(cells.flatMap(({ at, shrink }) => (shrink ? [at] : [])));
    for (const at of [
      "Program!A27",
      "Program!A86",
      "Program!P5",
      "Start times!B6",
      "Start times!B245",
      "Start times!Z7",
      "Start times!AG46",
    ])
      expect(shrunk.has(at), at).toBe(true);
  });
});
