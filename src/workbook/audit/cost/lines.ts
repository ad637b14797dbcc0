import type { CellSpec } from "../../form/sheet-spec";
import type { CostKind } from "./places";

export const MONEY = "#,##0.00";
/** What each kind is called. */
export const COST_LABELS: Readonly<Record<CostKind, string>> = {
  Water: "Water",
  Power: "Power",
  Fertiliser: "Fertiliser that drains",
  Labour: "Labour",
  Losses: "Plants lost",
};

/** Headings from the first column on. */
export const headings = (row: number, words: readonly string[]): CellSpec[] =>
  words.map((value, index) => ({ at: `${"ABCDEFGH"[index]}${row}`, kind: "heading", value }));
