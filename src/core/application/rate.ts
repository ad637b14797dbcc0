import { positive } from "../checks";
import { InputError } from "../errors";

const MINUTES_AN_HOUR = 60;

/**
 * Application rate at a can.
 *
 *     r = 60 d / t        d: depth caught [mm]; t: length of the test [min]
 *
 * @param depth Depth caught [mm], 0 or more
 * @param minutes Length of the test [min], more than 0
 * @returns Rate [mm/h]; 0 for a dry can
 * @throws InputError if the depth is below 0 or the minutes are not more than 0
 * @source University of Maryland, nursery irrigation course, 4.7; in mm and minutes without a constant
 * @example caughtRate(3, 15) // 12
 */
export function caughtRate(depth: number, minutes: number): number {
  if (!(depth >= 0 && depth < Infinity)) throw new InputError("depth", "be 0 mm or more", depth);
  return (depth * MINUTES_AN_HOUR) / positive("minutes", minutes, "min");
}

/**
 * Application rate of heads on a regular layout.
 *
 *     r = q / (S L)        q: flow of one head [L/h]; S, L: spacing in the row and between rows [m]; 1 L/m2 = 1 mm
 *
 * @param flow Flow of one head [L/h], more than 0
 * @param spacing Spacing of heads along the row [m], more than 0
 * @param rowSpacing Spacing between rows [m], more than 0
 * @returns Rate [mm/h], more than 0, were all the water to land between the heads
 * @throws InputError if a value is not more than 0
 * @source Sammis, Soils 456 chapter 5: P = 96.3 q / A; L/h over m2 needs no constant
 * @example headRate(480, 8, 6) // 10
 */
export function headRate(flow: number, spacing: number, rowSpacing: number): number {
  const area = positive("spacing", spacing, "m") * positive("row_spacing", rowSpacing, "m");
  return positive("flow", flow, "L/h") / area;
}
