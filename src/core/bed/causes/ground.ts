import type { BedPlace } from "../bed-heads";
import { overlapColumns } from "../overlap-columns";
import type { ReadBed } from "../read-bed";
import type { Fitted } from "./setting";

/** Places each way over the ground of a bed. */
export const GROUND_SIDE = 24;

/** Middles of equal cells over the bed, row after row. */
export function groundOf({ width, length }: Pick<ReadBed, "width" | "length">): BedPlace[] {
  const part = (i: number) => (i + 0.5) / GROUND_SIDE;
  return Array.from({ length: GROUND_SIDE ** 2 }, (_, i) => ({
    x: width * part(i % GROUND_SIDE),
    y: length * part(Math.floor(i / GROUND_SIDE)),
  }));
}

/** What a fit gives at places, over the mean of the cans. */
export function fittedAt(bed: ReadBed, fitted: Fitted, places: readonly BedPlace[]): Float64Array {
  const columns = overlapColumns(bed.heads, places, fitted, fitted.shapes);
  return Float64Array.from(places, (_, i) =>
    columns.reduce((sum, column, s) => sum + fitted.amounts[s]! * column[i]!, 0),
  );
}
