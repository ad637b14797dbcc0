import { positive, within, zeroOrMore } from "../checks";

/**
 * Water that a pot uses, from the weather.
 *
 *     v = 1000 K ETo A        K: coefficient; A: the area that K refers to, of one pot; 1 mm on 1 m2 is 1 L
 *
 * A coefficient means nothing without its area: container coefficients run from under 1 to over 5, as they refer to the
 * pot's top, to the canopy, or to the ground that a pot is on.
 *
 * @param et0 Reference evapotranspiration ETo [mm/day], from 0 to 30; typed, or by one of the FAO-56 formulas
 * @param coefficient K of the crop on that area, more than 0
 * @param area A, of one pot [m2], more than 0
 * @returns v [mL a day]
 * @throws InputError if a value is out of its range
 * @source FAO-56 (1998), eq. 58, with an area; Water conservation in container nurseries (Oregon State)
 * @example weatherUse(5, 1.2, 0.1) // 600
 */
export function weatherUse(et0: number, coefficient: number, area: number): number {
  const depth = within("et0", et0, 0, 30, "mm/day") * positive("coefficient", coefficient, "");
  return 1000 * depth * positive("area", area, "m²");
}

/**
 * Depth to water, less the rain that counts.
 *
 *     d = dneeded - P, and 0 where the rain is enough        P: useful rain; it reaches the mix as sprinkled water does
 *
 * @param needed Depth that the pot needs [mm a day], 0 or more
 * @param rain Useful rain: what neither ran off nor drained through [mm a day], 0 or more
 * @returns d [mm a day]; 0 where the rain is enough, for what is over is not kept for another month
 * @throws InputError if a value is below 0
 * @source own reasoning
 * @example lessRain(9.4, 1.4) // 8
 */
export function lessRain(needed: number, rain: number): number {
  return Math.max(0, zeroOrMore("needed", needed, "mm") - zeroOrMore("rain", rain, "mm"));
}
