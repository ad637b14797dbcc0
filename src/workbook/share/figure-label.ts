import { firstCell } from "../places";
import type { CellSpec, SheetSpec } from "../sheet-spec";

const ENDINGS: readonly (readonly [start: string, end: string, words: string])[] = [
  ["Weighted_", "", ", by area"],
  ["Verdict_", "", ": verdict"],
  ["Limit_", "_Low", ": lowest allowed"],
  ["Limit_", "_High", ": highest allowed"],
  ["Limit_", "_Text", ": limit"],
];

const rowOf = ({ at }: CellSpec) => firstCell(at).replace(/^[A-Z]+/, "");
const said = (cell: CellSpec | undefined) => (typeof cell?.value === "string" ? cell.value : "");

/** What the audit's sheets call a named cell, and its unit. */
export function figureLabel(specs: readonly SheetSpec[], name: string): { label: string; unit: string } {
  for (const { cells } of specs) {
    const cell = cells.find((one) => one.name === name);
    if (!cell) continue;
    const row = cells.filter((one) => rowOf(one) === rowOf(cell));
    const ending = ENDINGS.find(([start, end]) => name.startsWith(start) && name.endsWith(end));
    const label = said(row.find(({ kind }) => kind === "label"));
    const words = name.startsWith("Verdict_") || name.startsWith("Limit_");
    return {
      label: (label || name) + (ending?.[2] ?? ""),
      unit: words ? "" : said(row.find(({ kind }) => kind === "unit")),
    };
  }
  return { label: name, unit: "" };
}
