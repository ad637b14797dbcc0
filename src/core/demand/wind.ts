import { aboveZero } from "../checks";
import { InputError } from "../errors";
import { windOf } from "./weather";

/**
 * Wind speed at 2 m from wind measured higher or lower.
 *
 *     u2 = uz 4.87 / ln(67.8 z - 5.42)        uz: wind at the height z [m] over short grass
 *
 * @param wind Wind speed measured [m/s], from 0 to 100
 * @param height Height of the measurement above the ground [m], at least 0.5
 * @returns Wind speed at 2 m [m/s]
 * @throws InputError if a value is out of its range
 * @source FAO-56 (1998), eq. 47
 * @example windAtTwoMetres(3.2, 10) // 2.4
 */
export function windAtTwoMetres(wind: number, height: number): number {
  const z = aboveZero("height", height, "m");
  if (!(z >= 0.5)) throw new InputError("height", "be at least 0.5 m", height);
  return (windOf(wind) * 4.87) / Math.log(67.8 * z - 5.42); // eq. 47
}
