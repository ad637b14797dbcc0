import { firstCell } from "../../cells/places";
import { inRow, STRIKING } from "./entry-lines";
import type { CellSpec, ShadeSpec } from "./sheet-spec";

/** Something that the sheet looks at by itself: a formula that gives "", "ok", "not checked: …" or what to do. */
export interface DataCheck {
  label: string;
  formula: string;
  name?: string;
}

export interface CheckPart {
  cells: CellSpec[];
  shades: ShadeSpec[];
  heights: Record<number, number>;
}

/** True where a check warns; where it says that it was not made, or is silent, it is idle. */
export const isWarning = (cell: string) => `AND(${cell}<>"",${cell}<>"ok",LEFT(${cell},11)<>"not checked")`;
export const isIdle = (cell: string) => `OR(${cell}="",LEFT(${cell},11)="not checked")`;

/** Lines of data checks from a row on, each a few rows high; what needs doing is struck out in colour and bold. */
export function checkLines(
  top: number,
  { label, text, rows = 1 }: { label: string; text: string; rows?: number },
  checks: readonly DataCheck[],
): CheckPart {
  const part: CheckPart = { cells: [], shades: [], heights: {} };
  checks.forEach((check, index) => {
    const row = top + index * rows;
    const last = row + rows - 1;
    const at = inRow(text, row, last);
    const cell = firstCell(at).replace(/(\D+)(\d+)/, "$$$1$$$2");
    part.cells.push({ at: inRow(label, row, last), kind: "label", value: check.label });
    part.cells.push({ at, kind: "note", formula: check.formula, ...(check.name && { name: check.name }) });
    part.shades.push({
      range: at,
      formula: isWarning(cell),
      ...STRIKING,
    });
    if (rows === 1) part.heights[row] = 28;
  });
  return part;
}
