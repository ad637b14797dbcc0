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
 * @param programs A program for each of the twelve months, January first; undefined where a month was not given
 * @param effort Pulses that the fitting of one month may place
 * @returns Twelve months, each with its night or with the problem; the months that do not fit have `night.fits` false
 * @throws InputError if there are not twelve entries
 * @source each month by itself, as `fitNight`
 */
export function twelveMonths(programs: readonly (Program | undefined)[], effort?: number): Month[] {
  if (programs.length !== MONTHS) throw new InputError("months", "be 12", programs.length, { missing: true });
  return Array.from(programs, (program, i) => {
    const month = i + 1;
    if (!program) return { month, problem: `month ${month} is missing` };
    try {
      return { month, night: fitNight(program, effort) };
    } catch (error) {
      if (error instanceof InputError) return { month, problem: error.message };
      throw error;
    }
  });
}
