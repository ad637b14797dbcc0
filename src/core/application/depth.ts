import { positive } from "../checks";
import { reading } from "../readings";

/**
 * Depth caught in a can.
 *
 *     d = 1000 v / (pi D^2 / 4)        v: volume [mL]; D: inside diameter of the mouth [mm]; 1 mL = 1000 mm3
 *
 * @param volume Volume in the can [mL], 0 or more
 * @param mouth Inside diameter of the can's mouth [mm], more than 0
 * @returns Depth [mm]; 0 for a dry can
 * @throws InputError if the volume is below 0 or the mouth is not more than 0
 * @source University of Maryland, nursery irrigation course, 4.7: volume over the area of the opening
 * @example caughtDepth(25 * Math.PI, 100) // 10
 */
export function caughtDepth(volume: number, mouth: number): number {
  positive("mouth", mouth, "mm");
  return (1000 * reading(volume)) / ((Math.PI * mouth * mouth) / 4);
}
