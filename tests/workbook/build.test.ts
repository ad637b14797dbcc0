import { Workbook } from "@cj-tech-master/excelts";
import { beforeAll, describe, expect, it } from "vitest";
import { buildWorkbook } from "../../src/workbook/form/build";
import type { SheetSpec } from "../../src/workbook/form/sheet-spec";
import { formulaResults } from "../support/formula-results";
import { converted } from "../support/libreoffice";

const SHEETS: SheetSpec[] = [
  {
    name: "Cans",
    widths: [20, 12, 8],
    frozenRows: 1,
    cells: [
      { at: "A1:C1", kind: "title", value: "Cans" },
      { at: "A2", kind: "label", value: "Length of the test" },
      { at: "B2", kind: "input", name: "Test_Minutes" },
      { at: "C2", kind: "unit", value: "min" },
      { at: "A4", kind: "reading" },
      { at: "B4", kind: "reading" },
      { at: "A5", kind: "reading" },
      { at: "B5", kind: "reading" },
    ],
    areas: { Cans_Readings: "A4:B5" },
    checks: [
      { range: "B2", message: "minutes must be more than 0", rule: { kind: "number", least: 0.01 } },
      { range: "A4:B5", message: "a number or x", rule: { kind: "formula", formula: 'OR(A4="x",ISNUMBER(A4))' } },
    ],
    shades: [{ range: "A4:B5", formula: 'A4="x"', fill: "#f5f5f5", bold: true }],
  },
  {
    name: "Run time",
    widths: [20, 12],
    cells: [
      { at: "A1", kind: "label", value: "Rate" },
      { at: "B1", kind: "answer", formula: "AVERAGE(Cans_Readings)*60/Test_Minutes", name: "Result_MAR" },
    ],
  },
];
const ENTRIES = {
  Test_Minutes: 15,
  Cans_Readings: [
    [2, 3],
    ["x", 4],
  ],
};

describe("a workbook built from sheet descriptions", () => {
  let book: Workbook;
  let file: Uint8Array;
  beforeAll(async () => {
    file = await buildWorkbook(SHEETS, ENTRIES, new Map([["Run time!B1", -1]]));
    book = new Workbook();
    await book.xlsx.load(file);
  });

  it("holds what was typed, under its names", () => {
    const sheet = book.getWorksheet("Cans")!;
    expect(["B2", "A4", "B4", "A5", "B5"].map((address) => sheet.getCell(address).value)).toEqual([15, 2, 3, "x", 4]);
    expect(book.definedNames.getRanges("Cans_Readings").ranges).toEqual(["Cans!$A$4:$B$5"]);
    expect(book.definedNames.getRanges("Result_MAR").ranges).toEqual(["'Run time'!$B$1"]);
  });

  it("locks all but what is typed in, without a password", () => {
    const sheet = book.getWorksheet("Cans")!;
    expect(sheet.getCell("B2").protection).toMatchObject({ locked: false });
    expect(sheet.getCell("A2").protection?.locked ?? true).toBe(true);
    expect(sheet.sheetProtection).toMatchObject({ sheet: true });
    expect(sheet.sheetProtection).not.toHaveProperty("hashValue");
  });

  it("refuses wrong typing in words and shows looks that follow from formulas", () => {
    const sheet = book.getWorksheet("Cans")!;
    expect(sheet.getCell("B2").dataValidation).toMatchObject({ type: "decimal", error: "minutes must be more than 0" });
    expect(sheet.getCell("B5").dataValidation).toMatchObject({ type: "custom", formulae: ['OR(A4="x",ISNUMBER(A4))'] });
    expect(sheet.conditionalFormattings).toMatchObject([{ ref: "A4:B5", rules: [{ formulae: ['A4="x"'] }] }]);
  });

  it("is calculated by LibreOffice whatever its cached values say", async () => {
    const [again] = await converted([file], "xlsx");
    expect(formulaResults(file).get("Run time!B1")).toBe(-1);
    expect(formulaResults(again!).get("Run time!B1")).toBe(12); // (2 + 3 + 4) / 3 * 60 / 15
  });

  it("refuses an entry that no cell has the name for", async () => {
    await expect(buildWorkbook(SHEETS, { Nothing: 1 })).rejects.toThrow("there is no cell named Nothing");
  });
});
