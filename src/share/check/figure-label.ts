import { firstCell } from "../../cells/places";
import type { CellSpec, SheetSpec } from "../../workbook/form/sheet-spec";

const ENDINGS: readonly (readonly [start: string, end: string, words: string])[] = [
  ["Weighted_", "", ", by area"],
  ...["MAR", "CU", "DU_Quarter", "SC_Can", "SC_Quarter", "SC_Share"].map(
    (measure) => [`Result_${measure}`, "", ", equal weight"] as const,
  ),
  ["Verdict_", "", ": verdict"],
  ["Limit_", "_Low", ": lowest allowed"],
  ["Limit_", "_High", ": highest allowed"],
  ["Limit_", "_Text", ": limit"],
  ...(["Low", "Likely", "High"] as const).flatMap((level): [string, string, string][] => {
    const price = level.toLowerCase();
    return [
      ["Cost_", `_Now_${level}`, `: cost now, ${price}`],
      ["Cost_", `_After_${level}`, `: cost after, ${price}`],
      ["Saved_", `_${level}`, `: saved, ${price}`],
      ["Payback_", `_${level}`, `: ${price}`],
      ["NPV_", `_${level}`, `: ${price}`],
      ["Paying_Price_", `_${level}`, `: ${price}`],
    ];
  }),
];

const rowOf = ({ at }: CellSpec) => firstCell(at).replace(/^[A-Z]+/, "");
const said = (cell: CellSpec | undefined) => (typeof cell?.value === "string" ? cell.value : "");

interface FigureLabel {
  label: string;
  unit: string;
}

function labelOf(name: string, row: readonly CellSpec[]): FigureLabel {
  const ending = ENDINGS.find(([start, end]) => name.startsWith(start) && name.endsWith(end));
  const label = said(row.find(({ kind }) => kind === "label"));
  const words = name.startsWith("Verdict_") || name.startsWith("Limit_");
  return {
    label: (label || name) + (ending?.[2] ?? ""),
    unit: words ? "" : said(row.find(({ kind }) => kind === "unit")),
  };
}

function labelsOf({ cells }: SheetSpec): [string, FigureLabel][] {
  const rows = new Map<string, CellSpec[]>();
  for (const cell of cells) rows.set(rowOf(cell), [...(rows.get(rowOf(cell)) ?? []), cell]);
  return cells.flatMap((cell) => (cell.name ? [[cell.name, labelOf(cell.name, rows.get(rowOf(cell))!)]] : []));
}

const known = new WeakMap<readonly SheetSpec[], ReadonlyMap<string, FigureLabel>>();

/** What the audit's sheets call a named cell, and its unit. */
export function figureLabel(specs: readonly SheetSpec[], name: string): FigureLabel {
  const labels = known.get(specs) ?? new Map(specs.flatMap(labelsOf).reverse());
  known.set(specs, labels);
  return labels.get(name) ?? { label: name, unit: "" };
}
