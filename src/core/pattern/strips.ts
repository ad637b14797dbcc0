import { positive } from "../checks";
import { InputError } from "../errors";

/** The ground that a column or a row of cans is for. */
export interface Strip {
  /** [m] */
  from: number;
  /** [m] */
  to: number;
}

/**
 * Strips that columns of cans across a bed, or rows along it, are for.
 *
 *     from the half-way line to the one before, or the bed's edge, to the half-way line to the next, or the other edge
 *
 * @param positions Places from one edge of the bed [m], ascending, each from 0 to the size
 * @param size Side of the bed [m], more than 0
 * @returns One strip a place; together they are the whole side
 * @throws InputError if the places do not ascend or lie beyond the bed, or the size is not more than 0
 * @source own reasoning: ground belongs to the nearest line of cans
 * @example strips([1, 3, 4], 6)[1] // { from: 2, to: 3.5 }
 */
export function strips(positions: readonly number[], size: number): Strip[] {
  positive("size", size, "m");
  positions.forEach((position, index) => {
    const place = `place ${index + 1}`;
    if (!(position >= 0 && position <= size)) {
      throw new InputError("positions", `lie within the bed, from 0 to ${size} m`, position, { place });
    }
    if (index > 0 && !(position > positions[index - 1]!)) {
      throw new InputError("positions", "ascend from place to place", position, { place });
    }
  });
  return positions.map((position, index) => {
    const before = positions[index - 1];
    const after = positions[index + 1];
    return {
      from: before === undefined ? 0 : (before + position) / 2,
      to: after === undefined ? size : (position + after) / 2,
    };
  });
}
