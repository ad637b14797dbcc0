import { positive } from "../checks";

/** How much wider than asked for a gap may come out. */
const STRETCH = 1.05;
/** Sizes this close above a whole number of gaps count as that number. */
const SLACK = 1e-9;

/**
 * Number of equal gaps between heads along one side of the bed.
 *
 *     n = max(1, ceil(size / (1.05 spacing) - 1e-9)), so that a gap is at most 5 % wider than asked for
 *
 * @param size Side of the bed [m], more than 0
 * @param spacing Distance between heads that is asked for [m], more than 0
 * @returns n, at least 1
 * @throws InputError if a value is not more than 0
 * @source own reasoning
 * @example gapCount(10.5, 5) // 2
 */
export function gapCount(size: number, spacing: number): number {
  const stretched = STRETCH * positive("spacing", spacing, "m");
  return Math.max(1, Math.ceil(positive("size", size, "m") / stretched - SLACK));
}
