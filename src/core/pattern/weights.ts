import { aboveZero } from "../checks";
import { InputError } from "../errors";
import { enough, mean, numbers } from "../readings";
import { strips } from "./strips";

const QUARTER = 1 / 4;
const QUARTER_NEEDS = 4;
/** A rest of the quarter this small against the whole area is rounding. */
const SLACK = 1e-12;

/**
 * Area that each can of a grid stands for.
 *
 *     a = (width of its column's strip) (width of its row's strip)
 *
 * @param across Places of the columns that hold readings [m from the left edge], ascending, within the bed
 * @param along Places of the rows that hold readings [m from the top edge], ascending, within the bed
 * @param width Width of the bed [m], more than 0
 * @param length Length of the bed [m], more than 0
 * @returns Areas [m2], row after row; together they are the bed
 * @throws InputError if places do not ascend or lie beyond the bed, or a side is not more than 0
 * @source common practice
 * @example areaWeights([1, 3], [2], 6, 5)[0] // [10, 20]
 */
export function areaWeights(
  across: readonly number[],
  along: readonly number[],
  width: number,
  length: number,
): number[][] {
  const columns = strips(across, width);
  return strips(along, length).map((row) => columns.map(({ from, to }) => (to - from) * (row.to - row.from)));
}

function total(weights: ArrayLike<number>, count: number): number {
  if (weights.length !== count)
    throw new InputError("weights", `be one for each of the ${count} readings`, weights.length);
  let sum = 0;
  for (let i = 0; i < count; i += 1) sum += aboveZero("weights", weights[i], "m²");
  return sum;
}

/**
 * Mean catch over the ground.
 *
 *     m = sum(a x) / sum(a)        x: catch; a: area that its can stands for
 *
 * @param readings Catch in each can, x, any one unit, each 0 or more; not all 0
 * @param weights Area of each can, a [m2], more than 0
 * @returns Mean [unit of the readings], more than 0; the plain mean where all areas are equal
 * @throws InputError if a reading is out of range, all are 0, an area is not more than 0, or there is not one for each
 * @source common practice
 * @example weightedMean([8, 12], [1, 3]) // 11
 */
export function weightedMean(readings: ArrayLike<number>, weights: ArrayLike<number>): number {
  mean(readings, 1);
  const area = total(weights, readings.length);
  return numbers(readings).reduce((sum, x, i) => sum + x * weights[i]!, 0) / area;
}

/**
 * Christiansen's coefficient of uniformity over the ground.
 *
 *     CU = 100 (1 - sum(a |x - m|) / (m sum(a)))        x: catch; a: area of its can; m: mean over the ground
 *
 * @param readings Catch in each can, x, any one unit, each 0 or more; at least 2, not all 0
 * @param weights Area of each can, a [m2], more than 0
 * @returns CU [%], at most 100; that of Christiansen where all areas are equal
 * @throws InputError if a reading is out of range, fewer than 2 are given, all are 0, or the areas do not fit
 * @source Christiansen (1942), with areas for counts: common practice
 * @example weightedChristiansen([8, 12], [1, 3]) // 86.36
 */
export function weightedChristiansen(readings: ArrayLike<number>, weights: ArrayLike<number>): number {
  enough(readings.length, 2);
  const m = weightedMean(readings, weights);
  const deviations = numbers(readings).reduce((sum, x, i) => sum + weights[i]! * Math.abs(x - m), 0);
  return 100 * (1 - deviations / (m * total(weights, readings.length)));
}

/**
 * Mean catch of the driest quarter of the ground.
 *
 *     q = sum(b x) / (A / 4)        A: whole area; b: areas of the driest cans up to A / 4, of the last one only a part
 *
 * @param readings Catch in each can, x, any one unit, each 0 or more; at least 4, not all 0
 * @param weights Area of each can [m2], more than 0
 * @returns Mean [unit of the readings], 0 or more; 0 where the driest quarter is dry
 * @throws InputError if a reading is out of range, fewer than 4 are given, all are 0, or the areas do not fit
 * @source Merriam and Keller (1978) for the quarter, with areas for counts: common practice
 * @example weightedLowQuarter([10, 2, 8, 12], [1, 1, 1, 5]) // 5
 */
export function weightedLowQuarter(readings: ArrayLike<number>, weights: ArrayLike<number>): number {
  mean(readings, QUARTER_NEEDS);
  const quarter = QUARTER * total(weights, readings.length);
  const driestFirst = Array.from(readings, (x, i) => ({ x, area: weights[i]! })).sort((one, other) => one.x - other.x);
  let left = quarter;
  let caught = 0;
  for (const { x, area } of driestFirst) {
    if (left <= SLACK * quarter) break;
    const taken = Math.min(area, left);
    caught += taken * x;
    left -= taken;
  }
  return caught / quarter;
}
