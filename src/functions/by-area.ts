import { Described, InputError } from "../core/errors";
import { canArea } from "../core/uniformity/areas";
import { cellsOf, isSkipped, over, placeOf, plain, type Readings } from "./cells";

/** Rows and columns in words. */
function shape(rows: unknown[][]): string {
  const count = (number: number, what: string) => `${number} ${what}${number === 1 ? "" : "s"}`;
  return `${count(rows.length, "row")} and ${count(rows[0]!.length, "column")}`;
}

/** The area of each counted can, in the order of the readings; undefined where no areas are given. */
export function areasOf(readings: Readings, range: unknown): Float64Array | undefined {
  if (range === null || range === undefined || range === "") return undefined;
  const rows = cellsOf("areas", range);
  const [height, width] = [readings.rows.length, readings.rows[0]!.length];
  if (rows.length !== height || rows[0]!.length !== width) {
    const place =
      rows[0]!.length === width
        ? placeOf(Math.min(rows.length, height), 0)
        : placeOf(0, Math.min(rows[0]!.length, width));
    const got = new Described(`${shape(rows)}, unlike from ${place} on`);
    throw new InputError("areas", `have the shape of the readings, ${shape(readings.rows)}`, got);
  }
  const areas = new Float64Array(readings.values.length);
  let count = 0;
  readings.rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      if (!isSkipped(plain(cell))) areas[count++] = areaIn(rows[r]![c], placeOf(r, c));
    });
  });
  return areas;
}

function areaIn(cell: unknown, place: string): number {
  const value = plain(cell);
  if (typeof value === "string" || typeof value === "boolean") {
    throw new InputError("areas", "be numbers", value, { place });
  }
  try {
    return canArea(value);
  } catch (error) {
    throw error instanceof InputError ? error.at(place) : error;
  }
}

/** Works on the counted readings: with the area of each can where areas are given, else with equal weight. */
export function overCans<T>(
  readings: Readings,
  areas: unknown,
  equal: (values: Float64Array) => T,
  byArea: (values: Float64Array, areas: Float64Array) => T,
): T {
  const given = areasOf(readings, areas);
  return over(readings, (values) => (given ? byArea(values, given) : equal(values)));
}
