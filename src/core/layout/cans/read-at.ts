import { InputError } from "../../errors";
import type { Coverage } from "../overlap";

/** A place on a bed [m], counted from a corner. */
export interface Place {
  x: number;
  y: number;
}

/**
 * Rates of a layout at the places of cans.
 *
 *     r = (1 - v) ((1 - u) a + u b) + v ((1 - u) c + u d)
 *     a, b, c, d: rates at the four centres of cells about the place; u, v: its share of the way between them
 *
 * Between the outer centres and the edge, half a cell, the outer centre counts.
 *
 * @param coverage Coverage of the layout
 * @param places Places on the bed [m], from the corner where x and y are 0
 * @returns Rates [mm/h], one a place
 * @throws InputError if a place is not on the bed
 * @source bilinear interpolation, from memory
 * @example readAt(coverage({ width: 4, length: 4, spacing: 4, rowSpacing: 4, arrangement: "border", arcs: "full",
 *   profile: namedProfile("uniform", 9, 81 * Math.PI), cell: 0.5 }), [{ x: 1, y: 0.1 }]) // Float64Array.of(4)
 */
export function readAt({ cells, rates }: Coverage, places: Place[]): Float64Array {
  const { rows, columns, cellWidth, cellLength } = cells;
  const rate = (row: number, column: number) => rates.values[row * columns + column] as number;
  return Float64Array.from(places, ({ x, y }, i) => {
    const [left, right, u] = between("x", x, cellWidth, columns, i);
    const [low, high, v] = between("y", y, cellLength, rows, i);
    const near = (1 - u) * rate(low, left) + u * rate(low, right);
    const far = (1 - u) * rate(high, left) + u * rate(high, right);
    return (1 - v) * near + v * far;
  });
}

/** The centres on either side of a place, and its share of the way between them. */
function between(name: string, place: number, cell: number, count: number, i: number): [number, number, number] {
  if (!(place >= 0 && place <= count * cell * (1 + Number.EPSILON))) {
    throw new InputError(name, `be from 0 to ${count * cell} m`, place, { place: `can ${i + 1}` });
  }
  const centre = Math.min(count - 1, Math.max(0, place / cell - 0.5));
  const first = Math.floor(centre);
  return [first, Math.min(count - 1, first + 1), centre - first];
}
