import type { Grid } from "../grid";
import type { Cells } from "./cells";
import type { Head, Side } from "./heads";
import type { Profile } from "./profile";

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
 * The cells beside the bed are of the same size. Each head visits only the cells that it wets.
 *
 * @param cells Cells of the bed
 * @param heads Heads; t is their `times`
 * @param profile Profile of a head that throws a full circle
 * @returns Rates [mm/h], and the water inside and outside [L/h]
 * @source common practice
 * @example overlap(cellsOfBed(1, 1, 1), [], namedProfile("uniform", 1, 1)).inside // 0
 */
export function overlap(cells: Cells, heads: Head[], profile: Profile): Coverage {
  const { rows, columns, cellWidth, cellLength } = cells;
  const values = new Float64Array(rows * columns);
  let beside = 0;
  for (const head of heads) beside += wet(values, cells, head, profile);
  const area = cellWidth * cellLength;
  const within = values.reduce((sum, rate) => sum + rate, 0);
  return { cells, rates: { rows, columns, values }, inside: within * area, outside: beside * area };
}

/** Adds the rates of one head to the bed, and gives the sum of those beside it. */
function wet(values: Float64Array, cells: Cells, head: Head, profile: Profile): number {
  const { rows, columns, cellWidth, cellLength } = cells;
  const { distances, rates } = profile;
  const reach = distances[distances.length - 1] as number;
  const [firstRow, lastRow] = span(head.y, reach, cellLength, head.along);
  let beside = 0;
  let line = 0;
  for (let row = firstRow; row <= lastRow; row += 1) {
    const dy = (row + 0.5) * cellLength - head.y;
    const chord = Math.sqrt(Math.max(0, reach * reach - dy * dy));
    const [first, last] = span(head.x, chord, cellWidth, head.across);
    const inRow = row >= 0 && row < rows;
    for (let column = first; column <= last; column += 1) {
      const dx = (column + 0.5) * cellWidth - head.x;
      const r = Math.min(reach, Math.sqrt(dx * dx + dy * dy));
      while (r < (distances[line] as number)) line -= 1;
      while (r > (distances[line + 1] as number)) line += 1;
      const start = distances[line] as number;
      const share = (r - start) / ((distances[line + 1] as number) - start);
      const rate = head.times * ((rates[line] as number) * (1 - share) + (rates[line + 1] as number) * share);
      if (inRow && column >= 0 && column < columns) {
        const cell = row * columns + column;
        values[cell] = (values[cell] as number) + rate;
      } else beside += rate;
    }
  }
  return beside;
}

/** First and last of the cells whose centres lie within reach of a place, on the side that gets water. */
function span(place: number, reach: number, cell: number, side: Side): [number, number] {
  const low = side > 0 ? place : place - reach;
  const high = side < 0 ? place : place + reach;
  return [Math.ceil(low / cell - 0.5), Math.floor(high / cell - 0.5)];
}
