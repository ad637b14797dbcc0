import type { CellSpec } from "../../form/sheet-spec";

export const MONEY = "#,##0.00";
/** Headings from the first column on. */
export const headings = (row: number, words: readonly string[]): CellSpec[] =>
  words.map((value, index) => ({ at: `${"ABCDEFGH"[index]}${row}`, kind: "heading", value }));
