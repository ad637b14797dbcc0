import type { Limit } from "../figures/limits";

export const FEWEST = 16;
const INDICATIVE_UNDER = 24;

/** Digits behind the point, so that a value which is its limit but for rounding is within. */
const DIGITS = 9;

export type Ends = readonly [low: number, high: number];

/**
 * Where a measure lies against its limit.
 *
 * @param ends Both ends of its interval, or its value twice where there is no interval
 * @param limit What it should be; the limit itself is within
 * @param cans Cans counted
 * @returns "within", "outside" or "too close to call", from 16 to 23 cans with " (indicative)"; under 16 "too few cans"
 */
export function verdict([low, high]: Ends, limit: Limit, cans: number): string {
  if (cans < FEWEST) return "too few cans";
  return place(rounded(low), rounded(high), limit) + (cans < INDICATIVE_UNDER ? " (indicative)" : "");
}

const rounded = (value: number) => Number(value.toFixed(DIGITS));

function place(low: number, high: number, limit: Limit): string {
  const least = limit.low ?? -Infinity;
  const most = limit.high ?? Infinity;
  if (low >= least && high <= most) return "within";
  return high < least || low > most ? "outside" : "too close to call";
}
