import { within } from "../checks";
import { InputError } from "../errors";
import { kthSmallest, lowestMean } from "../order";
import { mean, numbers } from "../readings";
import { QUARTER_NEEDS, quarterCount } from "./distribution";

/** Products this close above a whole number of cans count as that number. */
export const SHARE_SLACK = 1e-9;

/**
 * Scheduling coefficient of the driest can.
 *
 *     SC = m / x(1)        m: mean catch; x(1): the lowest catch
 *
 * @param readings Depth or volume in each can, any one unit, each more than 0; at least 2
 * @param m Their mean, where the caller has it already
 * @returns SC, at least 1; 1 when all catches are equal. It rises with the number of cans
 * @throws InputError if a reading is below 0, fewer than 2 are given, or a can is dry
 * @source Sammis, Soils 456, answer 5.10, New Mexico State University: mean over the lowest can
 * @example schedulingCoefficient([8, 10, 12, 10]) // 1.25
 */
export function schedulingCoefficient(readings: ArrayLike<number>, m = mean(readings, 2)): number {
  const catches = numbers(readings);
  const driest = lowest(catches);
  if (!(driest > 0)) {
    const rule = "have no dry can (mark a can that was not read with x)";
    throw new InputError("readings", rule, 0, { place: `reading ${catches.indexOf(0) + 1}`, missing: true });
  }
  return m / driest;
}

function lowest(catches: Float64Array): number {
  let low = Infinity;
  for (let i = 0; i < catches.length; i += 1) {
    const x = catches[i] as number;
    if (x < low) low = x;
  }
  return low;
}

/**
 * Scheduling coefficient of the low quarter.
 *
 *     SC = m / q        m: mean catch; q: mean of the k lowest; k: n/4 to the nearest whole, halves up
 *
 * @param readings Depth or volume in each can, any one unit, each 0 or more; at least 4
 * @returns SC, at least 1; 1 when all catches are equal
 * @throws InputError if a reading is below 0, fewer than 4 are given, or the whole low quarter is dry
 * @source Demonstration of center pivot uniformity evaluation and retrofit, SCIRP paper 123518: its SC is 100/DU
 * @example quarterSchedulingCoefficient([8, 10, 12, 10]) // 1.25
 */
export function quarterSchedulingCoefficient(readings: ArrayLike<number>): number {
  const m = mean(readings, QUARTER_NEEDS);
  const quarter = lowestMean(readings, quarterCount(readings.length));
  if (!(quarter > 0)) throw new InputError("readings", "have a low quarter above 0", 0, { missing: true });
  return m / quarter;
}

/**
 * Scheduling coefficient of a share of the cans.
 *
 *     SC = m / y(c)        m: mean catch; y(c): the c-th largest of n; c = share n, rounded up
 *
 * @param readings Depth or volume in each can, any one unit, each 0 or more; at least 2
 * @param share Share of the cans that must get the mean, 0.5 to 1
 * @returns SC, more than 0; 1 when all catches are equal; under 1 where most cans lie above the mean
 * @throws InputError if a reading is below 0, fewer than 2 are given, or fewer than that share of the cans are wet
 * @source own reasoning: the question of what share of the pots must get enough
 * @example shareSchedulingCoefficient([8, 10, 12, 10], 0.75) // 1
 */
export function shareSchedulingCoefficient(readings: ArrayLike<number>, share: number): number {
  within("share", share, 0.5, 1);
  const m = mean(readings, 2);
  const reached = Math.max(1, Math.ceil(share * readings.length - SHARE_SLACK));
  const catchReached = kthSmallest(readings, readings.length - reached + 1);
  if (!(catchReached > 0)) {
    throw new InputError("readings", `have a catch above 0 in ${reached} cans`, 0, { missing: true });
  }
  return m / catchReached;
}
