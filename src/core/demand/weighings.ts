import { positive, zeroOrMore } from "../checks";
import { InputError } from "../errors";

const HOURS_A_DAY = 24;
/** Fewer pots than this are too few to represent their group. */
const ENOUGH_POTS = 5;

/** What pots of a group use, by weighing. */
export interface PotUse {
  /** Mean use of a pot [mL a day] */
  volume: number;
  /** Standard error of the mean [mL a day] */
  error: number;
  /** Pots weighed */
  pots: number;
  /** True under five pots: then the mean may be far off for the group */
  few: boolean;
}

/**
 * Water that a pot uses, from two weighings without watering between.
 *
 *     v = 24 (m1 - m2) / h        m1, m2: mass before and after [g]; h: hours between; 1 g of water is 1 mL
 *
 * @param before Mass at the first weighing, drained [g], more than 0
 * @param after Mass at the second weighing [g], more than 0 and at most the first
 * @param hours Hours between, more than 0
 * @returns v [mL a day]; 0 where nothing was lost
 * @throws InputError if a value is out of its range or the pot grew heavier
 * @source arithmetic: a gram lost is a millilitre used
 * @example weighedUse(5200, 4800, 24) // 400
 */
export function weighedUse(before: number, after: number, hours: number): number {
  const first = positive("before", before, "g");
  const second = positive("after", after, "g");
  if (!(second <= first)) throw new InputError("after", `be at most the ${first} g before`, after);
  return (HOURS_A_DAY * (first - second)) / positive("hours", hours, "h");
}

/**
 * Mean use of the pots of a group, and how sure it is.
 *
 *     m = sum(v) / n;  SE = (sum((v - m)^2) / (n - 1))^0.5 / n^0.5        v: use of each of the n pots
 *
 * @param volumes Use of each pot weighed [mL a day], each 0 or more; five to ten pots, at least 2
 * @returns Mean and standard error [mL a day], pots, and whether they are few; error 0 when all are equal
 * @throws InputError if a volume is out of its range or fewer than 2 are given
 * @source arithmetic; standard error of a mean: s / sqrt(n)
 * @example potUse([380, 400, 420]) // { volume: 400, error: 20 / Math.sqrt(3), pots: 3, few: true }
 */
export function potUse(volumes: readonly number[]): PotUse {
  const pots = volumes.length;
  if (pots < 2) throw new InputError("volumes", "be of at least 2 pots", pots, { missing: true });
  const each = volumes.map((volume, i) => {
    if (!(volume >= 0)) throw new InputError("volumes", "be 0 mL or more", volume, { place: `pot ${i + 1}` });
    return zeroOrMore("volumes", volume, "mL");
  });
  const mean = each.reduce((sum, volume) => sum + volume, 0) / pots;
  const squares = each.reduce((sum, volume) => sum + (volume - mean) ** 2, 0);
  return { volume: mean, error: Math.sqrt(squares / (pots - 1) / pots), pots, few: pots < ENOUGH_POTS };
}
