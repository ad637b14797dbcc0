import { ALL_SHAPES, shapeAt } from "../shapes";
import { type Fitted, RATIOS, type Setting } from "./setting";

const PENALTY = 5;
/** A pattern is hollow where the rate about the head is under this part of that further out. */
const HOLLOW = 0.78;

/** Mean rate of a fitted profile over the ground between two parts of the throw. */
function density({ shapes, amounts }: Fitted, from: number, to: number): number {
  let water = 0;
  let ground = 0;
  for (let u = from + 0.0125; u < to; u += 0.025) {
    ground += u;
    shapes.forEach((shape, s) => {
      water += u * amounts[s]! * shapeAt(shape, u);
    });
  }
  return water / ground;
}

/** How much water there is about a head against further out. */
export function hollowness(fitted: Fitted): number {
  const ring = density(fitted, 0.55, 0.85);
  return ring > 0 ? density(fitted, 0, 0.4) / ring : 1;
}

/** The best overlap of heads that all throw hollow; undefined where none is hollow. */
export function lowPressure(setting: Setting): Fitted | undefined {
  const fits = RATIOS.map((ratio) => setting.fit(setting.alike(ratio), ALL_SHAPES, ratio, PENALTY, { low: true }));
  return fits.filter((fitted) => hollowness(fitted) < HOLLOW).sort((one, other) => one.score - other.score)[0];
}
