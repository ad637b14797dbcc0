import { mean } from "../readings";
import { type CanField, ratesRead } from "./can-field";

/** Times the mean of its neighbours above which a reading is asked about: common practice, no source. */
const TIMES = 9.9;
/** Times the mean of all cans under which none is. */
const TIMES_OF_ALL = 3;
const AROUND = [-1, 0, 1];

/** A can that reads far more than those beside it. */
export interface FarAbove {
  row: number;
  column: number;
  value: number;
  /** Mean of its neighbours. */
  around: number;
}

/**
 * The first can that reads ten times its neighbours: a typing error, or a leak that filled it.
 *
 *     r > 9.9 n and r > 3 m        r: its reading; n: mean of the cans beside it, corners included; m: mean of all
 *
 * @param field Cans of a bed, as read
 * @returns Its place in the grid, what it reads, and the mean of its neighbours; undefined where there is none
 * @source common practice, no source
 * @example farAbove({ across: [0, 1, 2], along: [0, 1], rates: [[60, 610, 62], [61, 59, 60]] }).value // 610
 */
export function farAbove(field: Pick<CanField, "rates" | "across" | "along">): FarAbove | undefined {
  const read = ratesRead(field);
  if (read.length < 3) return undefined;
  const all = mean(read, 2);
  for (const [row, line] of field.rates.entries()) {
    for (const [column, value] of line.entries()) {
      if (value === null || value <= TIMES_OF_ALL * all) continue;
      const beside = AROUND.flatMap((down) =>
        AROUND.map((right) => (down === 0 && right === 0 ? null : field.rates[row + down]?.[column + right])),
      ).filter((rate) => rate !== null && rate !== undefined);
      const around = beside.reduce((sum, rate) => sum + rate, 0) / beside.length;
      if (value > TIMES * around) return { row, column, value, around };
    }
  }
  return undefined;
}
