import { InputError } from "./errors";

/** Least that a reading may be when it is not 0, and most. */
const LEAST = 1e-100;
const MOST = 1e9;

/** One reading: 0, or from 1e-100 to 1e9. */
export function reading(value: number, place?: string): number {
  if (value === 0 || (value >= LEAST && value <= MOST)) return value;
  throw new InputError("readings", brokenRule(value), value, place === undefined ? {} : { place });
}

function brokenRule(value: number): string {
  if (Number.isNaN(value)) return "be numbers";
  if (value < 0) return "be 0 or more";
  return value > MOST ? "be at most 1e9" : "be 0 or at least 1e-100";
}

/**
 * Mean catch.
 *
 *     m = sum(x) / n        x: the n catches
 *
 * @param readings Catch in each can, any one unit, each 0 or from 1e-100 to 1e9
 * @param atLeast How many cans the caller needs
 * @returns Mean [unit of the readings], more than 0; exactly the catch when all are equal
 * @throws InputError if a reading is out of range, there are too few, or all are 0
 * @source arithmetic
 * @example mean([8, 10, 12, 10], 2) // 10
 */
export function mean(readings: ArrayLike<number>, atLeast: number): number {
  const catches = numbers(readings);
  const count = catches.length;
  enough(count, atLeast);
  let sum = 0;
  let low = Infinity;
  let high = 0;
  let least = Infinity;
  for (let i = 0; i < count; i += 1) {
    const x = catches[i] as number;
    sum += x;
    low = Math.min(low, x);
    high = Math.max(high, x);
    if (x < LEAST && x > 0) least = x;
  }
  if (!(low >= 0 && high <= MOST && least >= LEAST)) catches.forEach((x, i) => void reading(x, `reading ${i + 1}`));
  if (!(high > 0)) throw new InputError("readings", "have a mean above 0", 0, { missing: true });
  return low === high ? low : sum / count;
}

/** The readings in the one form that loops over a million of them run fast on; copied only where they must be. */
export function numbers(readings: ArrayLike<number>): Float64Array {
  return readings instanceof Float64Array ? readings : new Float64Array(readings);
}

/** How many readings are 0. */
export function dryCans(readings: ArrayLike<number>): number {
  const catches = numbers(readings);
  let dry = 0;
  for (let i = 0; i < catches.length; i += 1) dry += catches[i] === 0 ? 1 : 0;
  return dry;
}

/** Refuses fewer cans than are needed. */
export function enough(count: number, atLeast: number): void {
  if (count < atLeast) throw new InputError("readings", `have at least ${atLeast} cans`, count, { missing: true });
}
