import { expect, test } from "vitest";
import { leftOut, unsavedParts } from "../../src/desk/files/left-out";
import type { Grid } from "../../src/hosts/desk/grid";

/** A grid whose workbook holds these parts. */
const holding = (parts: Record<string, unknown>): Grid => {
  const resources = Object.entries(parts).map(([name, data]) => ({ name, data: JSON.stringify(data) }));
  return { api: { getActiveWorkbook: () => ({ save: () => ({ resources }) }) } } as unknown as Grid;
};

const NOTES = { SHEET_NOTE_PLUGIN: { example: { 3: { 1: { note: "beside the riser" } } } } };
const FORMATS = { SHEET_CONDITIONAL_FORMATTING_PLUGIN: { example: [{ cfId: "1" }] } };

test("a workbook with nothing but cells and names saves whole", () => {
  const parts = { SHEET_NOTE_PLUGIN: { example: {} }, SHEET_DATA_VALIDATION_PLUGIN: { example: [] } };
  expect(leftOut({}, unsavedParts(holding({ ...parts, SHEET_DEFINED_NAME_PLUGIN: { a: { name: "a" } } })))).toEqual([]);
});

test("notes and conditional formats made at the desk are named", () => {
  expect(leftOut({}, unsavedParts(holding({ ...NOTES, ...FORMATS })))).toEqual(["notes", "conditional formats"]);
});

test("what came with the file is in the saved one too, a change of it is not", () => {
  const opened = unsavedParts(holding({ ...NOTES, ...FORMATS }));
  expect(leftOut(opened, opened)).toEqual([]);
  expect(leftOut(opened, unsavedParts(holding(FORMATS)))).toEqual(["notes"]);
});

test("what went along with inserted rows was not made at the desk", () => {
  const lower = { SHEET_NOTE_PLUGIN: { example: { 5: { 1: { note: "beside the riser" } } } } };
  const [before, after] = [unsavedParts(holding(NOTES)), unsavedParts(holding(lower))];
  expect([leftOut(before, after), leftOut(before, after, true)]).toEqual([["notes"], []]);
});

test("a format that the grid divides and copies with inserted rows was not made at the desk, another one was", () => {
  const rule = (cfId: string, value: string, ...rows: number[]) => ({
    cfId,
    ranges: rows.map((startRow) => ({ startRow })),
    rule: { type: "highlightCell", value },
  });
  const formats = (...example: object[]) => unsavedParts(holding({ SHEET_CONDITIONAL_FORMATTING_PLUGIN: { example } }));
  const before = formats(rule("a", "=B1>$A$4", 1));
  const divided = formats(rule("Qx", "=B3>$A$6", 1, 5), rule("a", "=B5>$A$6", 7));
  const more = formats(rule("Qx", "=B3>$A$6", 1, 5), rule("b", "=B5<$A$6", 7));
  expect([leftOut(before, divided, true), leftOut(before, more, true)]).toEqual([[], ["conditional formats"]]);
});
