import { lowestMean } from "../order";
import { enough, mean } from "../readings";

/** How many cans a low quarter needs to be one. */
export const QUARTER_NEEDS = 4;

/**
 * Number of cans in the low quarter.
 *
 *     k = n / 4 to the nearest whole number, halves up; at least 1
 *
 * @param count Cans counted, n
 * @returns k, at least 1
 * @source Merriam and Keller (1978) for the quarter; the rounding: own reasoning
 * @example quarterCount(10) // 3
 */
export function quarterCount(count: number): number {
  return Math.max(1, Math.floor(count / 4 + 0.5));
}

/**
 * Distribution uniformity of the low quarter.
 *
 *     DU = 100 q / m        q: mean of the k lowest catches; m: mean of all n; k: n/4 to the nearest whole, halves up
 *
 * @param readings Depth or volume in each can, any one unit, each 0 or more; at least 4, not all 0
 * @param m Their mean, where the caller has it already
 * @returns DU [%], from 0 to 100; 100 when all catches are equal, 0 when the low quarter is dry
 * @throws InputError if a reading is below 0, fewer than 4 are given, or all are 0
 * @source Merriam and Keller (1978)
 * @example distributionUniformity([8, 10, 12, 10]) // 80
 */
export function distributionUniformity(readings: ArrayLike<number>, m = mean(readings, QUARTER_NEEDS)): number {
  enough(readings.length, QUARTER_NEEDS);
  return 100 * (lowestMean(readings, quarterCount(readings.length)) / m);
}
