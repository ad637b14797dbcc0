import { columnNumber } from "../../cells/letters";
import { cellAt, firstCell } from "../../cells/places";
import type { SheetSpec } from "./sheet-spec";

/**
 * A cell of a named rectangle by its row and column from 1, for formulas of other sheets. Beside INDEX over the whole
 * rectangle it spares the program that calculates every other one that reads from it when one cell is typed.
 */
export function areaCell(spec: SheetSpec, area: string, row: number, column: number): string {
  const [, letters, top] = /^([A-Z]+)(\d+)$/.exec(firstCell(spec.areas![area]!))!;
  return `${spec.name}!${cellAt(Number(top) + row - 1, columnNumber(letters!) + column - 1)}`;
}
