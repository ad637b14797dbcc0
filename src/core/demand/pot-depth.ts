import { positive, zeroOrMore } from "../checks";

/**
 * Net depth that replaces what a pot drinks.
 *
 *     d = 1000 v / (pi D^2 / 4) / c        v: volume [mL]; D: diameter of the pot's top [mm]; c: capture factor
 *
 * @param volume Water that one pot uses [mL a day], 0 or more
 * @param top Inside diameter of the pot's top [mm], more than 0
 * @param capture Water that reaches the mix with the plant there over that without it, more than 0
 * @returns Depth [mm a day]; 0 where the pot uses nothing
 * @throws InputError if the volume is below 0, or the top or the capture factor is not more than 0
 * @source Million and Yeager, HortScience (2015), for the capture factor; the depth: arithmetic
 * @example potDepth(25 * Math.PI, 100, 2) // 5
 */
export function potDepth(volume: number, top: number, capture: number): number {
  const area = (Math.PI * positive("top", top, "mm") ** 2) / 4;
  return (1000 * zeroOrMore("volume", volume, "mL")) / area / positive("capture", capture, "");
}
