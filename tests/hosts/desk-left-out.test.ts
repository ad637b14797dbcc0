import { expect, test } from "vitest";
import { leftOut } from "../../src/desk/left-out";
import type { Grid } from "../../src/hosts/desk-grid";

/** A grid whose workbook holds these parts. */
const holding = (parts: Record<string, unknown>): Grid => {
  const resources = Object.entries(parts).map(([name, data]) => ({ name, data: JSON.stringify(data) }));
  return { api: { getActiveWorkbook: () => ({ save: () => ({ resources }) }) } } as unknown as Grid;
};

test("a workbook with nothing but cells and names saves whole", () => {
  const parts = { SHEET_NOTE_PLUGIN: { example: {} }, SHEET_DATA_VALIDATION_PLUGIN: { example: [] } };
  expect(leftOut(holding({ ...parts, SHEET_DEFINED_NAME_PLUGIN: { a: { name: "a" } } }))).toEqual([]);
});

test("notes and conditional formats made at the desk are named", () => {
  const parts = {
    SHEET_NOTE_PLUGIN: { example: { 3: { 1: { note: "beside the riser" } } } },
    SHEET_CONDITIONAL_FORMATTING_PLUGIN: { example: [{ cfId: "1" }] },
  };
  expect(leftOut(holding(parts))).toEqual(["notes", "conditional formats"]);
});
