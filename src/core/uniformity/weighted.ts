import { within } from "../checks";
import { InputError } from "../errors";
import { cansByArea } from "./areas";
import { areaDistribution, countedChristiansen, countedMean, lowestCounted } from "./counted";
import { QUARTER_NEEDS } from "./distribution";
import { SHARE_SLACK, schedulingCoefficient } from "./scheduling-coefficient";

/**
 * Mean catch over the ground.
 *
 *     m = sum(a x) / sum(a)        x: catch; a: area that its can is for
 *
 * @param readings Catch in each can, x, any one unit, each 0 or more; not all 0
 * @param areas Area of each can, a, any one unit, more than 0
 * @param atLeast How many cans the caller needs
 * @returns Mean [unit of the readings], more than 0; the mean of the cans where all areas are equal
 * @throws InputError if a reading is out of range, there are too few, all are 0, or the areas do not fit
 * @source arithmetic: the mean of a surface that is level within each area
 * @example weightedMean([8, 12], [1, 3]) // 11
 */
export function weightedMean(readings: ArrayLike<number>, areas: ArrayLike<number>, atLeast = 1): number {
  const cans = cansByArea(readings, areas, atLeast);
  return countedMean(cans.sorted, cans.areas, cans.total);
}

/**
 * Christiansen's coefficient of uniformity over the ground.
 *
 *     CU = 100 (1 - sum(a |x - m|) / (m sum(a)))        x: catch; a: area of its can; m: mean over the ground
 *
 * @param readings Catch in each can, x, any one unit, each 0 or more; at least 2, not all 0
 * @param areas Area of each can, a, any one unit, more than 0
 * @returns CU [%], at most 100; that of Christiansen where all areas are equal
 * @throws InputError if a reading is out of range, fewer than 2 are given, all are 0, or the areas do not fit
 * @source Christiansen (1942); areas for counts: own reasoning
 * @example weightedChristiansen([8, 12], [1, 3]) // 86.36
 */
export function weightedChristiansen(readings: ArrayLike<number>, areas: ArrayLike<number>): number {
  const cans = cansByArea(readings, areas, 2);
  return countedChristiansen(cans.sorted, cans.areas, cans.total);
}

/**
 * Mean catch of the driest quarter of the ground.
 *
 *     q = sum(b x) / (A / 4)        A: whole area; b: areas of the driest cans up to A / 4, of the last one only a part
 *
 * @param readings Catch in each can, x, any one unit, each 0 or more; at least 4, not all 0
 * @param areas Area of each can, any one unit, more than 0
 * @returns Mean [unit of the readings], 0 or more; 0 where the driest quarter is dry
 * @throws InputError if a reading is out of range, fewer than 4 are given, all are 0, or the areas do not fit
 * @source Merriam and Keller (1978) for the quarter; areas for counts: own reasoning
 * @example weightedLowQuarter([10, 2, 8, 12], [1, 1, 1, 5]) // 5
 */
export function weightedLowQuarter(readings: ArrayLike<number>, areas: ArrayLike<number>): number {
  const cans = cansByArea(readings, areas, QUARTER_NEEDS);
  return lowestCounted(cans.sorted, cans.areas, cans.total / 4);
}

/**
 * Distribution uniformity of the driest quarter of the ground.
 *
 *     DU = 100 q / m        q: mean catch of the driest quarter of the ground; m: mean over the ground
 *
 * With equal areas it is that of the cans where they divide by four; else the quarter ends inside a can, while
 * `distributionUniformity` takes the nearest whole number of cans.
 *
 * @param readings Catch in each can, any one unit, each 0 or more; at least 4, not all 0
 * @param areas Area of each can, any one unit, more than 0
 * @returns DU [%], from 0 to 100; 100 when all catches are equal, 0 when the driest quarter is dry
 * @throws InputError if a reading is out of range, fewer than 4 are given, all are 0, or the areas do not fit
 * @source Merriam and Keller (1978) for the quarter; areas for counts: own reasoning
 * @example weightedDistribution([10, 2, 8, 12], [1, 1, 1, 5]) // 50
 */
export function weightedDistribution(readings: ArrayLike<number>, areas: ArrayLike<number>): number {
  const cans = cansByArea(readings, areas, QUARTER_NEEDS);
  return areaDistribution(cans.sorted, cans.areas, cans.total);
}

/**
 * Scheduling coefficient of the driest can, with the mean over the ground.
 *
 *     SC = m / x(1)        m: mean over the ground; x(1): the lowest catch
 *
 * @param readings Catch in each can, any one unit, each more than 0; at least 2
 * @param areas Area of each can, any one unit, more than 0
 * @returns SC, at least 1; 1 when all catches are equal
 * @throws InputError if a reading is out of range, fewer than 2 are given, a can is dry, or the areas do not fit
 * @source Sammis, Soils 456, answer 5.10, for equal areas; areas for counts: own reasoning
 * @example weightedSchedulingCoefficient([8, 12], [1, 3]) // 1.375
 */
export function weightedSchedulingCoefficient(readings: ArrayLike<number>, areas: ArrayLike<number>): number {
  return schedulingCoefficient(readings, weightedMean(readings, areas, 2));
}

/**
 * Scheduling coefficient of the driest quarter of the ground.
 *
 *     SC = m / q        m: mean over the ground; q: mean catch of its driest quarter
 *
 * @param readings Catch in each can, any one unit, each 0 or more; at least 4
 * @param areas Area of each can, any one unit, more than 0
 * @returns SC, at least 1; 1 when all catches are equal
 * @throws InputError if a reading is out of range, fewer than 4 are given, the driest quarter is dry, or the areas do not fit
 * @source SCIRP paper 123518 for equal areas; areas for counts: own reasoning
 * @example weightedQuarterSchedulingCoefficient([10, 2, 8, 12], [1, 1, 1, 5]) // 2
 */
export function weightedQuarterSchedulingCoefficient(readings: ArrayLike<number>, areas: ArrayLike<number>): number {
  const quarter = weightedLowQuarter(readings, areas);
  if (!(quarter > 0)) throw new InputError("readings", "have a low quarter above 0", 0, { missing: true });
  return weightedMean(readings, areas) / quarter;
}

/**
 * Scheduling coefficient of a share of the ground.
 *
 *     SC = m / y        m: mean over the ground; y: the largest catch that cans of at least `share` of the area reach
 *
 * Areas this close under the share reach it: 1e-9 of the mean area of a can, as for a number of cans.
 *
 * @param readings Catch in each can, any one unit, each 0 or more; at least 2
 * @param areas Area of each can, any one unit, more than 0
 * @param share Share of the ground that must get the mean, 0.5 to 1
 * @returns SC, more than 0; 1 when all catches are equal; under 1 where most of the ground lies above the mean
 * @throws InputError if a reading is out of range, fewer than 2 are given, less than that share is wet, or the areas do not fit
 * @source own reasoning
 * @example weightedShareSchedulingCoefficient([8, 12], [1, 3], 0.75) // 0.9167
 */
export function weightedShareSchedulingCoefficient(
  readings: ArrayLike<number>,
  areas: ArrayLike<number>,
  share: number,
): number {
  within("share", share, 0.5, 1);
  const cans = cansByArea(readings, areas, 2);
  let last = cans.sorted.length - 1;
  const wanted = share * cans.total - (SHARE_SLACK * cans.total) / cans.sorted.length;
  for (let reached = cans.areas[last]!; last > 0 && reached < wanted; reached += cans.areas[last]!) last -= 1;
  const catchReached = cans.sorted[last]!;
  if (!(catchReached > 0)) {
    throw new InputError("readings", `have a catch above 0 on ${share} of the area`, 0, { missing: true });
  }
  return countedMean(cans.sorted, cans.areas, cans.total) / catchReached;
}
