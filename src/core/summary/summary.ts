import { aboveZero } from "../checks";
import { InputError } from "../errors";
import { BUILT_IN_LIMITS, type Limit } from "../figures/limits";
import { MEASURES, type MeasureId } from "../figures/measures";
import { dryCans, mean, numbers } from "../readings";
import { christiansen } from "../uniformity/christiansen";
import { distributionUniformity, QUARTER_NEEDS } from "../uniformity/distribution";
import { INTERVAL_NEEDS, type IntervalIndex, interval } from "../uniformity/interval";
import { schedulingCoefficient } from "../uniformity/scheduling-coefficient";
import { weightedChristiansen, weightedDistribution, weightedMean } from "../uniformity/weighted";
import { type Ends, verdict } from "./verdict";

const LEVEL = 0.9;

/** One row of the summary; "" where a cell has nothing to say. */
export interface SummaryRow {
  measure: string;
  value: number | string;
  unit: string;
  low: number | "";
  high: number | "";
  /** Of the whole bed, by fit: the ends are by fit too; left out where the ends resample the cans. */
  estimate?: number;
  limit: string;
  verdict: string;
}

interface Measured {
  name: string;
  /** The name as shown, where it holds more than the limit's name. */
  shown?: string;
  value: number | string;
  unit: string;
  ends?: Ends | undefined;
  /** The verdict of a value that is a text. */
  fixed?: string;
}

const named = (id: MeasureId) => ({ name: MEASURES[id].name, unit: MEASURES[id].unit });

/**
 * Every measure of a test with its 90 % interval, its limit and where it lies against that.
 *
 * @param readings Depth or volume in each can, any one unit, each 0 or more; at least 2, not all 0
 * @param rateOfOneUnit Application rate [mm/h] that a reading of 1 is for, more than 0
 * @param limits What the measures should be
 * @param options intervals: whether to resample for them; without, verdicts compare values alone. areas: area of each
 * can, any one unit, more than 0; left out: equal weight
 * @returns One row a measure, in the order of LIMITED
 * @throws InputError if a reading is below 0, fewer than 2 are given, all are 0, the rate is not more than 0, or the areas
 * do not fit
 */
export function summary(
  readings: ArrayLike<number>,
  rateOfOneUnit: number,
  limits: readonly Limit[] = BUILT_IN_LIMITS,
  { intervals = true, areas }: { intervals?: boolean; areas?: ArrayLike<number> | undefined } = {},
): SummaryRow[] {
  aboveZero("rate of one unit", rateOfOneUnit, "mm/h");
  const catches = numbers(readings);
  const m = areas ? weightedMean(catches, areas, 2) : mean(catches, 2);
  const endsOf = (index: IntervalIndex) => (intervals ? intervalIfAny(catches, index, areas) : undefined);
  const dry = dryCans(catches);
  const meanEnds = endsOf("MEAN");
  const measured: Measured[] = [
    { ...named("CANS"), value: catches.length },
    { ...named("DRY"), value: dry },
    {
      ...named("MAR"),
      value: m * rateOfOneUnit,
      ends: meanEnds && [meanEnds[0] * rateOfOneUnit, meanEnds[1] * rateOfOneUnit],
    },
    {
      ...named("CU"),
      value: areas ? weightedChristiansen(catches, areas) : christiansen(catches, m),
      ends: endsOf("CU.CHRISTIANSEN"),
    },
    ...quarter(
      catches.length,
      () => (areas ? weightedDistribution(catches, areas) : distributionUniformity(catches, m)),
      endsOf("DU.QUARTER"),
    ),
  ];
  measured.splice(-1, 0, driest(catches, m, dry));
  return measured.map((row) => asRow(row, limits, catches.length));
}

function driest(catches: Float64Array, m: number, dry: number): Measured {
  const driestCan = { ...named("SC_CAN"), shown: `SC (driest of ${catches.length} cans)` };
  if (dry > 0) return { ...driestCan, value: "a can is dry", fixed: "outside" };
  return { ...driestCan, value: schedulingCoefficient(catches, m) };
}

function quarter(cans: number, distribution: () => number, ends: Ends | undefined): [Measured, Measured] {
  const uniformity = named("DU");
  const coefficient = named("SC_QUARTER");
  if (cans < QUARTER_NEEDS) {
    const few = { value: `needs ${QUARTER_NEEDS} cans`, fixed: "too few cans" };
    return [
      { ...uniformity, ...few },
      { ...coefficient, ...few },
    ];
  }
  const value = distribution();
  const inverse: Measured =
    value > 0
      ? { ...coefficient, value: 100 / value, ends: ends && ends[0] > 0 ? [100 / ends[1], 100 / ends[0]] : undefined }
      : { ...coefficient, value: "the low quarter is dry", fixed: "outside" };
  return [{ ...uniformity, value, ends }, inverse];
}

function asRow(
  { name, shown, value, unit, ends, fixed }: Measured,
  limits: readonly Limit[],
  cans: number,
): SummaryRow {
  const limit = limits.find((candidate) => candidate.measure === name);
  const [low, high]: [number | "", number | ""] = ends ? [...ends] : ["", ""];
  const found = limit && (fixed ?? verdict(ends ?? [Number(value), Number(value)], limit, cans));
  return { measure: shown ?? name, value, unit, low, high, limit: limit?.text ?? "", verdict: found ?? "" };
}

function intervalIfAny(
  catches: Float64Array,
  index: IntervalIndex,
  areas: ArrayLike<number> | undefined,
): Ends | undefined {
  if (catches.length < INTERVAL_NEEDS) return undefined;
  try {
    return interval(catches, index, LEVEL, areas);
  } catch (error) {
    if (error instanceof InputError && error.missing) return undefined;
    throw error;
  }
}
