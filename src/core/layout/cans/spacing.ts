/** Part of a head spacing about 1 and 1/2 of it, and about its multiples, that cans stay out of. */
const CLEAR = 0.1;
const HALF = 0.5;

/**
 * Whether cans so far apart keep meeting the same parts of the heads' pattern.
 *
 *     |s/h - 1/2| < 0.05        or |s/h - k| < 0.1 for a whole k        s: between cans; h: between heads
 *
 * @param spacing Distance between cans [m], more than 0
 * @param headSpacing Distance between heads in the same direction [m], more than 0
 * @returns True within 10 % of a half or of the whole of the head spacing, or near a multiple of it
 * @source computed: cans at half the head spacing, though more, did worse than cans at 0.6 of it
 * @example meetsHeads(4.1, 4) // true
 */
export function meetsHeads(spacing: number, headSpacing: number): boolean {
  const ratio = spacing / headSpacing;
  const whole = Math.max(1, Math.round(ratio));
  return Math.abs(ratio - HALF) < CLEAR * HALF || Math.abs(ratio - whole) < CLEAR;
}
