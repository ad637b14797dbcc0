import { expect, test } from "vitest";
import { leftOut, unsavedParts } from "../../src/desk/files/saving/left-out";
import type { Grid } from "../../src/hosts/desk/grid";

/** A grid whose workbook holds these parts. */
const holding = (parts: Record<string, unknown>, sheets = ["example"], config = {}): Grid => {
  const resources = Object.entries(parts).map(([name, data]) => ({ name, data: JSON.stringify(data) }));
  const book = {
    getId: () => "book",
    getSheets: () => sheets.map((key) => ({ getSheetId: () => key, getSheet: () => ({ getConfig: () => config }) })),
  };
  const injector = { get: () => ({ getResources: () => resources }) };
  return { api: { getActiveWorkbook: () => book }, injector } as unknown as Grid;
};

const NOTES = { SHEET_NOTE_PLUGIN: { example: { 3: { 1: { note: "beside the riser" } } } } };
const FORMATS = { SHEET_CONDITIONAL_FORMATTING_PLUGIN: { example: [{ cfId: "1" }] } };

test("a workbook with nothing but cells and names saves whole", () => {
  const parts = { SHEET_NOTE_PLUGIN: { example: {} }, SHEET_DATA_VALIDATION_PLUGIN: { example: [] } };
  expect(leftOut({}, holding({ ...parts, SHEET_DEFINED_NAME_PLUGIN: { a: { name: "a" } } }))).toEqual([]);
});

test("notes and conditional formats made at the desk are named", () => {
  expect(leftOut({}, holding({ ...NOTES, ...FORMATS }))).toEqual(["notes", "conditional formats"]);
});

test("what came with the file is in the saved one too, a change of it is not", () => {
  const grid = holding({ ...NOTES, ...FORMATS });
  const opened = unsavedParts(grid);
  expect(leftOut(opened, grid)).toEqual([]);
  expect(leftOut(opened, holding(FORMATS))).toEqual(["notes"]);
});

test("what went along with inserted rows was not made at the desk", () => {
  const lower = { SHEET_NOTE_PLUGIN: { example: { 5: { 1: { note: "beside the riser" } } } } };
  const [before, after] = [unsavedParts(holding(NOTES)), holding(lower)];
  expect([leftOut(before, after), leftOut(before, after, true)]).toEqual([["notes"], []]);
});

test("a format that the grid divides and copies with inserted rows was not made at the desk, another one was", () => {
  const rule = (cfId: string, value: string, ...rows: number[]) => ({
    cfId,
    ranges: rows.map((startRow) => ({ startRow })),
    rule: { type: "highlightCell", value },
  });
  const formats = (...example: object[]) => holding({ SHEET_CONDITIONAL_FORMATTING_PLUGIN: { example } });
  const before = unsavedParts(formats(rule("a", "=B1>$A$4", 1)));
  const divided = formats(rule("Qx", "=B3>$A$6", 1, 5), rule("a", "=B5>$A$6", 7));
  const more = formats(rule("Qx", "=B3>$A$6", 1, 5), rule("b", "=B5<$A$6", 7));
  expect([leftOut(before, divided, true), leftOut(before, more, true)]).toEqual([[], ["conditional formats"]]);
});

test("what went with its sheet was not made at the desk", () => {
  expect(leftOut(unsavedParts(holding(NOTES)), holding({}, ["another"]))).toEqual([]);
});

test("a check whose formula went along, or speaks of cells that are gone, was not made at the desk", () => {
  const check = (formula1: string) =>
    holding({ SHEET_DATA_VALIDATION_PLUGIN: { example: [{ uid: "a", ranges: [], type: "custom", formula1 }] } });
  const before = unsavedParts(check("=LEN(E1)<5"));
  const made = (formula: string) => leftOut(before, check(formula), true);
  expect([made("=LEN(#REF!)<5"), made("=LEN(F1)<5"), made("=SUM(F1)<5")]).toEqual([[], [], ["data checks"]]);
});

test("a sheet that was hidden or shown and a tab that was coloured are named, those of the file are not", () => {
  const [plain, set] = [holding({}), holding({}, ["example"], { hidden: 1, tabColor: "#ff0000" })];
  const kinds = ["hiding of sheets", "colours of tabs"];
  expect([leftOut(unsavedParts(plain), set), leftOut(unsavedParts(set), plain)]).toEqual([kinds, kinds]);
  expect(leftOut(unsavedParts(set), set, true)).toEqual([]);
});
