import { aboveZero, positive, upTo } from "../checks";

const LITRES_A_KILOLITRE = 1000;

/**
 * Water applied in a year.
 *
 *     V = A d N M / s / 1000        A: area [m2]; d: depth [mm]; N: days; M: multiplier; s: share landing on the bed
 *
 * @param area Area of the bed [m2], more than 0
 * @param depth Net depth a watering day [mm], more than 0
 * @param days Days watered a year, more than 0 and at most 366
 * @param multiplier What the unevenness asks for, such as a scheduling coefficient, more than 0
 * @param inBedShare Share of the heads' water that lands on the bed, more than 0 and at most 1; at 1 the result is the
 * water falling on the bed only
 * @returns Water [kL a year], more than 0
 * @throws InputError if a value is out of its range
 * @source arithmetic: 1 mm on 1 m2 is 1 L
 * @example annualWater(200, 5, 300, 1.5, 0.75) // 600
 */
export function annualWater(area: number, depth: number, days: number, multiplier: number, inBedShare: number): number {
  const net = positive("area", area, "m²") * positive("depth", depth, "mm") * upTo("days", days, 366);
  const gross = (net * aboveZero("multiplier", multiplier, "")) / upTo("in_bed_share", inBedShare, 1);
  return gross / LITRES_A_KILOLITRE;
}
