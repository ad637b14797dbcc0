import { aboveZero, positive } from "../checks";

/**
 * Run time that gives the wanted depth.
 *
 *     t = 60 d M / r        d: net depth [mm]; r: mean application rate [mm/h]; M: multiplier
 *
 * @param depth Net depth wanted in each pot [mm], more than 0
 * @param rate Mean application rate [mm/h], more than 0
 * @param multiplier What the unevenness asks for, such as a scheduling coefficient, more than 0
 * @returns Run time [min], more than 0
 * @throws InputError if a value is not more than 0
 * @source Solomon, Irrigation Notes 880802 (1988): run time = base time x SC
 * @example runTime(5, 10, 1.8) // 54
 */
export function runTime(depth: number, rate: number, multiplier: number): number {
  const baseTime = (60 * positive("depth", depth, "mm")) / aboveZero("rate", rate, "mm/h");
  return baseTime * aboveZero("multiplier", multiplier, "");
}
