import { positive } from "../checks";
import { InputError } from "../errors";

const MOST_CELLS = 1_000_000;

/** A bed cut into cells of equal size; rows run along the length, columns across the width. */
export interface Cells {
  rows: number;
  columns: number;
  /** Cell across the width [m]. */
  cellWidth: number;
  /** Cell along the length [m]. */
  cellLength: number;
}

/**
 * Cells of a bed.
 *
 *     n = max(1, size / cell to the nearest whole number) along each side, of equal size
 *
 * @param width Width of the bed [m], more than 0
 * @param length Length of the bed [m], more than 0
 * @param cell Side of a cell that is asked for [m], more than 0
 * @returns Number of rows and columns, at most 1,000,000 cells in all, and the true sides of a cell [m]
 * @throws InputError if a value is not more than 0, or there would be more cells
 * @source own reasoning
 * @example cellsOfBed(2, 3, 0.24).rows // 13
 */
export function cellsOfBed(width: number, length: number, cell: number): Cells {
  positive("cell", cell, "m");
  const columns = Math.max(1, Math.round(positive("width", width, "m") / cell));
  const rows = Math.max(1, Math.round(positive("length", length, "m") / cell));
  if (!(rows * columns <= MOST_CELLS)) {
    throw new InputError("cell", "be larger for a bed of this size (at most 1,000,000 cells)", cell);
  }
  return { rows, columns, cellWidth: width / columns, cellLength: length / rows };
}
