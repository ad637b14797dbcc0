import { strips } from "./strips";

/**
 * Area that each can of a grid is for.
 *
 *     a = (width of its column's strip) (width of its row's strip)
 *
 * @param across Places of the columns that hold readings [m from the left edge], ascending, within the bed
 * @param along Places of the rows that hold readings [m from the top edge], ascending, within the bed
 * @param width Width of the bed [m], more than 0
 * @param length Length of the bed [m], more than 0
 * @returns Areas [m2], row after row; together they are the bed
 * @throws InputError if places do not ascend or lie beyond the bed, or a side is not more than 0
 * @source own reasoning: each point of the bed belongs to the nearest column and the nearest row
 * @example canAreas([1, 3], [2], 6, 5)[0] // [10, 20]
 */
export function canAreas(
  across: readonly number[],
  along: readonly number[],
  width: number,
  length: number,
): number[][] {
  const columns = strips(across, width);
  return strips(along, length).map((row) => columns.map(({ from, to }) => (to - from) * (row.to - row.from)));
}
