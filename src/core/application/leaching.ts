import { aboveZero, positive, within, zeroOrMore } from "../checks";
import { InputError } from "../errors";

/** Most that a target may be: beyond it nearly all water would run through. */
const HIGHEST_TARGET = 0.9;

/** A run time corrected by a leaching test. */
export interface CorrectedRunTime {
  /** [min] */
  minutes: number;
  /** True where nothing drained: the right run time is at least this, and how much longer the test cannot tell */
  floor: boolean;
}

/**
 * Leaching fraction.
 *
 *     LF = D / A        D: drained from the pot; A: applied to it
 *
 * @param applied Water that a pot at the driest can was given [mL], more than 0
 * @param drained Water that ran out of it [mL], from 0 to the applied
 * @returns LF, from 0 to 1; 0 where nothing drained
 * @throws InputError if a value is out of its range
 * @source Million and Yeager, Monitoring leaching fraction, UF EP529
 * @example leachingFraction(500, 75) // 0.15
 */
export function leachingFraction(applied: number, drained: number): number {
  const given = positive("applied", applied, "mL");
  const lost = zeroOrMore("drained", drained, "mL");
  if (!(lost <= given)) throw new InputError("drained", `be at most the ${given} mL applied`, drained);
  return lost / given;
}

/**
 * Run time that would leave the wanted leaching fraction.
 *
 *     t = told (1 - LFmeasured) / (1 - LFtarget)
 *
 * @param runTime Run time of the test [min], more than 0
 * @param measured Leaching fraction measured, from 0 and under 1
 * @param target Leaching fraction wanted, from 0 to 0.9
 * @returns Run time [min], the same where measured is target; a floor only where nothing drained
 * @throws InputError if a value is out of its range
 * @source common practice: what stayed in the pot, (1 - LF) t, is what it needs
 * @example correctedRunTime(60, 0.32, 0.15) // { minutes: 48, floor: false }
 */
export function correctedRunTime(runTime: number, measured: number, target: number): CorrectedRunTime {
  if (typeof measured !== "number" || !(measured >= 0 && measured < 1)) {
    throw new InputError("measured", "be from 0 and under 1", measured);
  }
  const kept = aboveZero("run_time", runTime, "min") * (1 - measured);
  return { minutes: kept / (1 - within("target", target, 0, HIGHEST_TARGET)), floor: measured === 0 };
}
