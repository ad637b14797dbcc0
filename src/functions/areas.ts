import { positive } from "../core/checks";
import { InputError } from "../core/errors";
import { canAreas as areasOfCans } from "../core/pattern/can-areas";
import { strips } from "../core/pattern/strips";
import { answer } from "./answer";
import { cellsOf, placeOf, plain } from "./cells";

/** Places in one row or one column; an error about the nth of them names its cell. */
function placesIn(parameter: string, range: unknown, size: number): number[] {
  const rows = cellsOf(parameter, range);
  const wide = rows[0]!.length > 1;
  if (rows.length > 1 && wide) {
    const shape = `${rows.length} rows and ${rows[0]!.length} columns`;
    throw new InputError(parameter, "be one row or one column of places", shape);
  }
  const cellOf = (index: number) => (wide ? placeOf(0, index) : placeOf(index, 0));
  const places = rows.flat().map((cell, index) => {
    const value = plain(cell);
    if (typeof value === "number" && Number.isFinite(value)) return value;
    throw new InputError(parameter, "be numbers", value, { place: cellOf(index) });
  });
  try {
    strips(places, size);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const nth = Number(/^place (\d+)$/.exec(error.place!)![1]);
    throw new InputError(parameter, error.rule, error.value, { place: cellOf(nth - 1) });
  }
  return places;
}

/**
 * Area that each can is for [m²], from half-way lines to its neighbours and the bed's edges: rows along the length, columns across the width.
 * @customfunction CAN.AREAS
 * @helpurl https://localhost:3000/help.html#can-areas
 * @param across Places of the columns of cans [m from the left edge], one row or column, ascending
 * @param along Places of the rows of cans [m from the top edge], one row or column, ascending
 * @param width Width of the bed [m], more than 0
 * @param length Length of the bed [m], more than 0
 * @returns Areas [m²]
 */
export function canAreas(across: unknown[][], along: unknown[][], width: unknown, length: unknown): number[][] {
  return answer(() => {
    const sides = [positive("width", plain(width), "m"), positive("length", plain(length), "m")] as const;
    return areasOfCans(placesIn("across", across, sides[0]), placesIn("along", along, sides[1]), sides[0], sides[1]);
  });
}
