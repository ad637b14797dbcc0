import { InputError } from "../errors";
import { fitNight, type Night } from "./fit-night";
import type { Program } from "./program";

/** A month of the year and what became of it. */
export interface Month {
  /** From 1 to 12 */
  month: number;
  /** The fitted night; left out where the program is missing or wrong */
  night?: Night;
  /** What is missing or wrong, in words */
  problem?: string;
}

const MONTHS = 12;

/**
 * Fits the program of each month.
 *
 * @param programs A program for each of the twelve months, January first; where there is none, words why, or undefined
 * @param effort Pulses that the fitting of one month may place
 * @returns A generator of twelve months, each with its night or with the problem; `night.fits` is false where it does not fit
 * @throws InputError if there are not twelve entries
 * @source each month by itself, as `fitNight`
 */
export function* twelveMonths(
  programs: readonly (Program | string | undefined)[],
  effort?: number,
): Generator<Month, void> {
  if (programs.length !== MONTHS) throw new InputError("months", "be 12", programs.length, { missing: true });
  for (let month = 1; month <= MONTHS; month += 1) yield fitted(month, programs[month - 1], effort);
}

function fitted(month: number, program: Program | string | undefined, effort?: number): Month {
  if (program === undefined) return { month, problem: `month ${month} is missing` };
  if (typeof program === "string") return { month, problem: program };
  try {
    return { month, night: fitNight(program, effort) };
  } catch (error) {
    if (error instanceof InputError) return { month, problem: error.message };
    throw error;
  }
}
