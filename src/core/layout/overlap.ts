import type { Grid } from "../grid";
import type { Cells } from "./cells";
import type { Head } from "./heads";
import type { Profile } from "./profile";
import { type Stamp, stamp } from "./stamp";

/** Parts of a cell to which places are told apart. */
const PARTS = 1e9;
/** Cells of stamps that are kept for other heads. */
const KEPT_CELLS = 2_000_000;

/** What heads bring to a bed. */
export interface Coverage {
  cells: Cells;
  /** Rate at the centre of each cell [mm/h]. */
  rates: Grid;
  /** Water that lands in the bed [L/h]. */
  inside: number;
  /** Water that lands beside it [L/h]. */
  outside: number;
}

/**
 * Overlap of heads.
 *
 *     rate at a cell = sum over the heads of t p(r)        r: distance from the head to the cell's centre; p: profile
 *
 * The cells beside the bed are of the same size. Each head visits only the cells that it wets; heads that are placed alike in
 * their cells share one stamp.
 *
 * @param cells Cells of the bed
 * @param heads Heads; t is their `times`
 * @param profile Profile of a head that throws a full circle
 * @returns Rates [mm/h], and the water inside and outside [L/h]
 * @source Christiansen (1942), patterns of single heads added up, from memory
 * @example overlap(cellsOfBed(1, 1, 1), [], namedProfile("uniform", 1, 1)).inside // 0
 */
export function overlap(cells: Cells, heads: Head[], profile: Profile): Coverage {
  const { rows, columns, cellWidth, cellLength } = cells;
  const values = new Float64Array(rows * columns);
  const stamps = new Map<string, Stamp>();
  let kept = 0;
  let beside = 0;
  for (const { x, y, times, across, along } of heads) {
    const column = Math.floor(x / cellWidth + 1 / PARTS);
    const row = Math.floor(y / cellLength + 1 / PARTS);
    const place = { x: x - column * cellWidth, y: y - row * cellLength, across, along };
    const alike = `${Math.round((place.x / cellWidth) * PARTS)},${Math.round((place.y / cellLength) * PARTS)}`;
    const name = `${alike},${across},${along}`;
    let shared = stamps.get(name);
    if (!shared) {
      shared = stamp(place, cells, profile);
      kept += shared.rates.length;
      if (kept > KEPT_CELLS) {
        stamps.clear();
        kept = shared.rates.length;
      }
      stamps.set(name, shared);
    }
    beside += lay(values, cells, shared, row, column, times);
  }
  const area = cellWidth * cellLength;
  let within = 0;
  for (let cell = 0; cell < values.length; cell += 1) within += values[cell] as number;
  return { cells, rates: { rows, columns, values }, inside: within * area, outside: beside * area };
}

/** Adds a stamp to the bed, and gives the sum of the rates beside it. */
function lay(values: Float64Array, cells: Cells, { rates, ...box }: Stamp, row: number, column: number, times: number) {
  const left = column + box.firstColumn;
  const from = Math.min(box.columns, Math.max(0, -left));
  const to = Math.max(from, Math.min(box.columns, cells.columns - left));
  let beside = 0;
  for (let r = 0; r < box.rows; r += 1) {
    const bedRow = row + box.firstRow + r;
    const start = r * box.columns;
    const inBed = bedRow >= 0 && bedRow < cells.rows;
    const first = inBed ? from : box.columns;
    const last = inBed ? to : box.columns;
    const shift = bedRow * cells.columns + left - start;
    for (let i = start; i < start + first; i += 1) beside += rates[i] as number;
    for (let i = start + first; i < start + last; i += 1) {
      values[i + shift] = (values[i + shift] as number) + times * (rates[i] as number);
    }
    for (let i = start + last; i < start + box.columns; i += 1) beside += rates[i] as number;
  }
  return times * beside;
}
