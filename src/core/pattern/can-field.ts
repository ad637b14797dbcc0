import { InputError } from "../errors";
import { reading } from "../readings";

/** Most cans across the width and along the length of a bed. */
export const MOST_ACROSS = 20;
export const MOST_ALONG = 30;

/** Rates of the cans of a bed, laid out as in the bed; null where a can was not read. */
export interface CanField {
  /** Place of each column of cans across the width [m], ascending. */
  across: readonly number[];
  /** Place of each row of cans along the length [m], ascending. */
  along: readonly number[];
  /** Row after row along the length, each from left to right [mm/h]. */
  rates: readonly (readonly (number | null)[])[];
}

/** One can of a list. */
export interface CanPoint {
  x: number;
  y: number;
  rate: number | null;
}

function ascending(parameter: string, positions: readonly number[]): void {
  positions.forEach((position, index) => {
    const place = `place ${index + 1}`;
    if (!Number.isFinite(position)) throw new InputError(parameter, "be numbers", position, { place });
    if (index > 0 && !(position > positions[index - 1]!)) {
      throw new InputError(parameter, "ascend from place to place", position, { place });
    }
  });
}

/** A field of cans whose rows and columns have these places; refuses what does not fit together. */
export function canField(
  rates: readonly (readonly (number | null)[])[],
  across: readonly number[],
  along: readonly number[],
): CanField {
  if (!(across.length <= MOST_ACROSS && along.length <= MOST_ALONG)) {
    const rule = `form a grid of at most ${MOST_ACROSS} across and ${MOST_ALONG} along`;
    throw new InputError("cans", rule, `${across.length} across and ${along.length} along`);
  }
  ascending("positions across", across);
  ascending("positions along", along);
  if (rates.length !== along.length) {
    throw new InputError("positions along", `be one for each of the ${rates.length} rows`, along.length);
  }
  rates.forEach((line, row) => {
    if (line.length !== across.length) {
      throw new InputError("positions across", `be one for each of the ${line.length} columns`, across.length);
    }
    line.forEach((rate, column) => {
      if (rate !== null) reading(rate, `row ${row + 1}, column ${column + 1}`);
    });
  });
  if (!rates.some((line) => line.some((rate) => rate !== null && rate > 0))) {
    throw new InputError("readings", "have a mean above 0", 0, { missing: true });
  }
  return { across, along, rates };
}

/** A field from a list of cans: every x makes a column and every y a row; places without a can are not read. */
export function canFieldOfList(points: readonly CanPoint[]): CanField {
  const sorted = (values: number[]) => [...new Set(values)].sort((one, other) => one - other);
  const across = sorted(points.map(({ x }) => x));
  const along = sorted(points.map(({ y }) => y));
  const rates: (number | null)[][] =
    across.length > MOST_ACROSS || along.length > MOST_ALONG ? [] : along.map(() => across.map(() => null));
  const taken = new Set<string>();
  points.forEach(({ x, y, rate }, index) => {
    const place = `line ${index + 1}`;
    if (taken.has(`${x} ${y}`)) throw new InputError("cans", "be at different places", `${x}, ${y}`, { place });
    taken.add(`${x} ${y}`);
    const line = rates[along.indexOf(y)];
    if (line) line[across.indexOf(x)] = rate;
  });
  return canField(rates, across, along);
}

/** The rates that were read, row after row. */
export function ratesRead({ rates }: CanField): number[] {
  return rates.flat().filter((rate) => rate !== null);
}
