import { within } from "../checks";
import { InputError } from "../errors";
import { mean } from "../readings";
import { cansByArea, countedByArea } from "./areas";
import { type Bootstrap, bcaEnds, bootstrap } from "./bootstrap";
import { areaDistribution, type CountedIndex, countedChristiansen, countedDistribution, countedMean } from "./counted";

/** Cans that an interval needs, and the most that it takes. */
export const INTERVAL_NEEDS = 16;
const INTERVAL_TAKES = 20_000;

const COUNTED = {
  MEAN: countedMean,
  "CU.CHRISTIANSEN": countedChristiansen,
  "DU.QUARTER": countedDistribution,
  "SC.QUARTER": countedDistribution,
} satisfies Record<string, CountedIndex>;

/** The indices that have an interval. */
export type IntervalIndex = keyof typeof COUNTED;

/**
 * Interval of an index: bias-corrected and accelerated bootstrap with 2,000 resamples.
 *
 *     ends as in `bcaEnds`; for "SC.QUARTER" 100 over the ends for "DU.QUARTER"
 *
 * @param readings Depth or volume in each can, any one unit, each 0 or more; 16 to 20,000, not all 0
 * @param index "MEAN", "CU.CHRISTIANSEN", "DU.QUARTER" or "SC.QUARTER"
 * @param level Share of such intervals that should hold the true value, 0.5 to 0.99
 * @param areas Area of each can, any one unit, more than 0; pairs of catch and area are resampled; left out: equal weight
 * @returns Low and high end [unit of the index]; both the index itself when all catches are equal
 * @throws InputError if the index is another one, the level is out of range, a reading is below 0, or the readings are
 * too few, too many, too dry or too lopsided
 * @source Efron (1987); Efron and Tibshirani (1993), ch. 14
 * @example interval([7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7], "MEAN", 0.9)[0] // 7
 */
export function interval(
  readings: ArrayLike<number>,
  index: IntervalIndex,
  level: number,
  areas?: ArrayLike<number>,
): [number, number] {
  const counted = indexCalled(index);
  within("level", level, 0.5, 0.99);
  if (readings.length > INTERVAL_TAKES) {
    const rule = `have at most ${INTERVAL_TAKES} cans for an interval`;
    throw new InputError("readings", rule, readings.length, { missing: true });
  }
  mean(readings, INTERVAL_NEEDS);
  const resampled = areas
    ? bootstrapByArea(readings, areas, counted)
    : bootstrap(Float64Array.from(readings).sort(), counted);
  const [low, high] = bcaEnds(resampled, level);
  return index === "SC.QUARTER" ? coefficientEnds(low, high) : [low, high];
}

function bootstrapByArea(readings: ArrayLike<number>, areas: ArrayLike<number>, counted: CountedIndex): Bootstrap {
  const cans = cansByArea(readings, areas, INTERVAL_NEEDS);
  const index = counted === countedDistribution ? areaDistribution : counted;
  return bootstrap(cans.sorted, countedByArea(index, cans.areas));
}

function indexCalled(name: unknown): CountedIndex {
  if (typeof name === "string" && Object.hasOwn(COUNTED, name)) return COUNTED[name as IntervalIndex];
  const names = 'be "MEAN", "CU.CHRISTIANSEN", "DU.QUARTER" or "SC.QUARTER"';
  const reason = name === "SC.CAN" ? " (the lowest can has no dependable interval)" : "";
  throw new InputError("index", names + reason, name);
}

function coefficientEnds(low: number, high: number): [number, number] {
  if (!(low > 0)) {
    throw new InputError("readings", "have a low quarter above 0 for an interval", 0, { missing: true });
  }
  return [100 / high, 100 / low];
}
