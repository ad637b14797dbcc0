import { mean } from "../readings";
import { type CanField, ratesRead } from "./can-field";

/** Share of the mean from which a neighbour counts as wet. */
const WET_SHARE = 0.25;
const FEWEST_NEIGHBOURS = 2;
const AROUND = [-1, 0, 1];

/** A can that reads 0 while every can beside it is wet. */
export interface LoneZero {
  row: number;
  column: number;
  /** Two of its neighbours, those across where both were read. */
  between: readonly [number, number];
}

/**
 * The first can that reads 0 among wet neighbours: knocked over, a blocked head or a typing error, so it is asked about.
 *
 *     wet where r >= m / 4        r: reading of a neighbour, corners included; m: mean of all
 *
 * @param field Cans of a bed, as read
 * @returns Its place in the grid and what two neighbours read; undefined where there is none
 * @source own rule
 * @example loneZero({ across: [0, 1, 2], along: [0], rates: [[71, 0, 58]] }).between // [71, 58]
 */
export function loneZero(field: Pick<CanField, "rates" | "across" | "along">): LoneZero | undefined {
  const read = ratesRead(field);
  if (read.length < 3) return undefined;
  const wet = WET_SHARE * mean(read, 2);
  const at = (row: number, column: number) => field.rates[row]?.[column] ?? null;
  for (let row = 0; row < field.along.length; row += 1) {
    for (let column = 0; column < field.across.length; column += 1) {
      if (at(row, column) !== 0) continue;
      const beside = AROUND.flatMap((down) =>
        AROUND.map((right) => (down === 0 && right === 0 ? null : at(row + down, column + right))),
      ).filter((rate) => rate !== null);
      if (beside.length < FEWEST_NEIGHBOURS || beside.some((rate) => !(rate >= wet))) continue;
      const [left, right] = [at(row, column - 1), at(row, column + 1)];
      return { row, column, between: left !== null && right !== null ? [left, right] : [beside[0]!, beside[1]!] };
    }
  }
  return undefined;
}
