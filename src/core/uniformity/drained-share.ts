import { aboveZero } from "../checks";
import { type CansByArea, cansByArea } from "./areas";
import { countedMean } from "./counted";

/**
 * Share of the water that drains from the pots.
 *
 *     s = sum(a max(0, K D x/m - D)) / sum(a K D x/m) = sum(a max(0, x - m/K)) / (m sum(a))
 *     x: catch; a: area of its can; m: mean; D: depth wanted, which falls out; K: run-time multiplier
 *
 * Each pot keeps at most the depth wanted. Where K waters the driest can, every can reaches m/K and s is 1 - 1/K; else s is
 * larger than that.
 *
 * @param readings Catch in each can, x, any one unit, each 0 or more; at least 2, not all 0
 * @param multiplier K, such as SC or a leaching multiplier, more than 0
 * @param areas Area of each can, a, any one unit, more than 0; left out: equal weight
 * @returns s, from 0 and under 1; 0 where no pot gets more than the depth wanted
 * @throws InputError if a reading is out of range, the multiplier is not more than 0, or the areas do not fit
 * @source own reasoning: a balance over the cans
 * @example drainedShare([4, 8, 12], 1.5) // 0.3889
 */
export function drainedShare(readings: ArrayLike<number>, multiplier: number, areas?: ArrayLike<number>): number {
  return shareAbove(weighed(readings, areas), 1 / aboveZero("multiplier", multiplier, ""));
}

/** The multipliers of a change. */
export interface ChangedMultipliers {
  /** What sets the run time now, by its basis, without leaching. */
  now: number;
  /** The same after the change; at least 1. */
  after: number;
  /** After the change, with leaching. */
  gross: number;
}

/**
 * Share of the water that drains after a change, whose cans are not known.
 *
 *     x'/m' - 1 = f (x/m - 1)        f = (1 - 1/after) / (1 - 1/now)        then as for the cans of now
 *
 * The pattern keeps its shape and only its spread changes, so that the multiplier comes out as typed. Watered to the driest
 * can it is 1 - 1/gross, whatever the shape. Where the bed is even now, or the change asks for a
 * spread that would take catches below 0, no shape can be kept: then 1 - 1/gross, or 0.
 *
 * @param readings Catch in each can now, any one unit, each 0 or more; at least 2, not all 0
 * @param multipliers Now and after
 * @param areas Area of each can, any one unit, more than 0; left out: equal weight
 * @returns Share, from 0 and under 1
 * @throws InputError if a reading is out of range, a multiplier is not more than 0, or the areas do not fit
 * @source own reasoning: the shape of the pattern is kept
 * @example drainedShareAfter([4, 8, 12], { now: 2, after: 1.25, gross: 1.25 }) // 0.2
 */
export function drainedShareAfter(
  readings: ArrayLike<number>,
  { now, after, gross }: ChangedMultipliers,
  areas?: ArrayLike<number>,
): number {
  const cans = weighed(readings, areas);
  const kept = 1 / aboveZero("multiplier", gross, "");
  const spread = (1 - 1 / aboveZero("after", after, "")) / (1 - 1 / aboveZero("now", now, ""));
  const m = countedMean(cans.sorted, cans.areas, cans.total);
  const keepsShape = now > 1 && spread > 0 && spread * (m - cans.sorted[0]!) <= m;
  if (!keepsShape) return Math.max(0, 1 - kept);
  return spread * shareAbove(cans, 1 + (kept - 1) / spread);
}

function weighed(readings: ArrayLike<number>, areas?: ArrayLike<number>): CansByArea {
  return cansByArea(readings, areas ?? new Float64Array(readings.length).fill(1), 2);
}

/** What lies above a part of the mean, over the whole. */
function shareAbove({ sorted, areas, total }: CansByArea, part: number): number {
  const m = countedMean(sorted, areas, total);
  let above = 0;
  for (let i = 0; i < sorted.length; i += 1) above += areas[i]! * Math.max(0, sorted[i]! - part * m);
  return above / (m * total);
}
