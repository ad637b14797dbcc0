import { positive } from "../checks";

/**
 * Share of the water on the bed that reaches the pots; the rest falls between them.
 *
 *     r = min(1, c A / p^2)        A: area of a pot's top; p: pot spacing, on a square grid; c: capture factor
 *
 * @param area Area of a pot's top, A [mm²], more than 0
 * @param spacing From the middle of a pot to the middle of the next, p [mm], more than 0
 * @param capture Water that reaches the mix with the plant there over that without it, c, more than 0
 * @returns r, above 0; 1 where tops and leaves take all the water
 * @throws InputError if a value is out of its range
 * @source own reasoning: areas on a square grid; capture factor: Million and Yeager, HortScience (2015)
 * @example reachedShare((Math.PI * 190 ** 2) / 4, 240, 1.5) // 0.7384
 */
export function reachedShare(area: number, spacing: number, capture: number): number {
  const round = positive("area", area, "mm²") / positive("spacing", spacing, "mm") ** 2;
  return Math.min(1, positive("capture", capture, "") * round);
}
