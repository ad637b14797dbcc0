import { InputError } from "../core/errors";
import { strips } from "../core/pattern/strips";
import { cellsOf, placeOf, plain } from "./cells";

/** Places in one row or one column; an error about the nth of them names its cell. */
export function placesIn(parameter: string, range: unknown, size: number): number[] {
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
