import { aboveZero, positive, within, zeroOrMore } from "../checks";
import { InputError } from "../errors";

/** Most that a target may be: beyond it nearly all water would run through. */
const HIGHEST_TARGET = 0.9;

/** What a pot in a pot was given and lost. */
export interface PotWater {
  /** [mL] */
  applied: number;
  /** [mL] */
  drained: number;
}

/** A run time corrected by a leaching test. */
export interface CorrectedRunTime {
  /** [min] */
  minutes: number;
  /** True where nothing drained: the right run time is at least this, and how much longer the test cannot tell */
  floor: boolean;
}

/**
 * Water that a planted pot was given and lost, from three weighings inside a pot without holes.
 *
 *     A = w2 - w1        D = w2 - w3        1 g is 1 mL
 *     w1, w2: both pots before and after the run; w3: after the drained water was poured off
 *
 * An empty pot does not give A under sprinklers, since the canopy leads water into a pot or past it.
 *
 * @param before w1 [g], more than 0
 * @param after w2 [g], more than w1
 * @param poured w3 [g], from w1 to w2
 * @returns Applied and drained [mL]; drained is 0 where nothing was poured off
 * @throws InputError if a weight is out of its range
 * @source Million and Yeager, Monitoring leaching fraction, UF/IFAS EP529
 * @example potWater(4120, 4640, 4510) // { applied: 520, drained: 130 }
 */
export function potWater(before: number, after: number, poured: number): PotWater {
  const first = positive("before", before, "g");
  if (!(positive("after", after, "g") > first))
    throw new InputError("after", `be more than the ${first} g before`, after);
  if (!(positive("poured", poured, "g") >= first && poured <= after)) {
    throw new InputError("poured", `be from ${first} to ${after} g`, poured);
  }
  return { applied: after - first, drained: after - poured };
}

/**
 * Leaching fraction.
 *
 *     LF = D / A        D: drained from the pot; A: applied to it
 *
 * @param applied Water that a planted pot at the driest can was given [mL], more than 0
 * @param drained Water that ran out of it [mL], from 0 to the applied
 * @returns LF, from 0 to 1; 0 where nothing drained
 * @throws InputError if a value is out of its range
 * @source Million and Yeager, Monitoring leaching fraction, UF/IFAS EP529
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
 * @source own reasoning: what stayed in the pot, (1 - LF) t, is what it needs
 * @example correctedRunTime(60, 0.32, 0.15) // { minutes: 48, floor: false }
 */
export function correctedRunTime(runTime: number, measured: number, target: number): CorrectedRunTime {
  if (typeof measured !== "number" || !(measured >= 0 && measured < 1)) {
    throw new InputError("measured", "be from 0 and under 1", measured);
  }
  const kept = aboveZero("run_time", runTime, "min") * (1 - measured);
  return { minutes: kept / (1 - within("target", target, 0, HIGHEST_TARGET)), floor: measured === 0 };
}
