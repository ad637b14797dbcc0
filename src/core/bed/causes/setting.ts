import { cholesky, LEAST_PIVOT, lowerSolved } from "../cholesky";
import { type Amounts, dot, nonNegative } from "../least-squares";
import { covariance, readingVariances } from "../nuisance";
import { type HeadState, overlapColumns, type Wind } from "../overlap-columns";
import type { ReadBed } from "../read-bed";
import { ALL_SHAPES, type Shape, SOUND_SHAPES } from "../shapes";
import { type Claim, Evidence } from "./evidence";
import type { Measured } from "./measured";

/** Cans that the spread of the rest is taken to rest on beforehand. */
const PRIOR_CANS = 12;
/** How sure the typed throw is, as standard deviation of its logarithm. Common practice, no source. */
const THROW_SD = 0.15;
const LEAST_RATIO = 0.65;
const THROWS = 16;
/** Shifts by light wind that are tried [parts of the throw], and directions; what taking one on costs. */
const LIGHT_SHIFTS = [0.05, 0.1];
const LIGHT_TURNS = 8;
const LIGHT_WIND_PENALTY = 7;

/** Ratios of the throw over the typed one that are tried, equal steps of the logarithm. */
export const RATIOS: readonly number[] = Array.from(
  { length: THROWS },
  (_, i) => LEAST_RATIO * ((2 - LEAST_RATIO) / LEAST_RATIO) ** (i / (THROWS - 1)),
);

/** An overlap that was fitted under a hypothesis. */
export interface Fitted extends HeadState {
  shapes: readonly Shape[];
  amounts: Float64Array;
  /** Throw at full pressure over the typed one. */
  ratio: number;
  /** Sum of squares that it leaves, without the correlations of a sound bed. */
  rest: number;
  /** The lower the likelier: twice the negative log likelihood, with what the search and the throw cost. */
  score: number;
}

/** What a light wind costs that is taken on. */
export function lightWindPenalty(cans: number): number {
  return 2 * Math.log(cans) + LIGHT_WIND_PENALTY;
}

/** The light winds that a sound bed may have. */
export function lightWinds(): Wind[] {
  return LIGHT_SHIFTS.flatMap((shift) =>
    Array.from({ length: LIGHT_TURNS }, (_, turn) => {
      const angle = (turn * 2 * Math.PI) / LIGHT_TURNS;
      return { x: shift * Math.cos(angle), y: shift * Math.sin(angle), drift: 0 };
    }),
  );
}

/** A bed whose catches are freed of what sound beds differ by, the same for every hypothesis. */
export class Setting {
  readonly bed: ReadBed;
  readonly count: number;
  /** Shapes of heads that are not under their pressure: hollow ones too where a gauge says that it is right. */
  readonly shapes: readonly Shape[];
  readonly evidence: Evidence;
  /** Shift of a sound bed's water, where it is clearly seen. */
  lightWind: Wind | undefined;
  readonly #lower: Float64Array;
  readonly #catches: Float64Array;
  readonly #total: number;

  constructor(bed: ReadBed, measured?: Measured) {
    this.bed = bed;
    this.evidence = new Evidence(bed.heads, measured);
    this.shapes = this.evidence.rightPressure ? ALL_SHAPES : SOUND_SHAPES;
    this.count = bed.cans.length;
    const y = Float64Array.from(bed.cans, ({ caught }) => caught / bed.mean);
    const first = firstFit(bed, y);
    this.#lower = cholesky(covariance(bed, first), this.count, LEAST_PIVOT);
    this.#catches = lowerSolved(this.#lower, y);
    this.#total = dot(this.#catches, this.#catches);
    this.#findLightWind();
  }

  /** A column without the correlations. */
  free(column: Float64Array): Float64Array {
    return lowerSolved(this.#lower, column);
  }

  /** Normal numbers with the correlations of a sound bed. */
  correlated(normal: Float64Array): Float64Array {
    const n = this.count;
    return normal.map((_, i) => {
      let sum = 0;
      for (let k = 0; k <= i; k += 1) sum += (this.#lower[i * n + k] as number) * (normal[k] as number);
      return sum;
    });
  }

  get catches(): Float64Array {
    return this.#catches;
  }

  get total(): number {
    return this.#total;
  }

  /** The score of a rest at a throw, with what the search costs and what was measured at the heads says. */
  score(rest: number, ratio: number, penalty: number, claim: Claim): number {
    const size = this.count + PRIOR_CANS;
    const cans = size * Math.log((rest + PRIOR_CANS) / size) + (Math.log(ratio) / THROW_SD) ** 2;
    return cans + penalty + this.evidence.cost(claim);
  }

  /** Non-negative amounts of columns that are free of the correlations. */
  amounts(columns: readonly Float64Array[]): Amounts {
    return nonNegative(
      gramOf(columns),
      Float64Array.from(columns, (column) => dot(column, this.#catches)),
      this.#total,
    );
  }

  /** The best overlap of heads in a given state. */
  fit(
    state: HeadState,
    shapes: readonly Shape[],
    ratio: number,
    penalty: number,
    claim: Omit<Claim, "outputs" | "wind"> = {},
  ): Fitted {
    const columns = overlapColumns(this.bed.heads, this.bed.cans, state, shapes).map((column) => this.free(column));
    const { amounts, rest } = this.amounts(columns);
    return { ...state, shapes, amounts, ratio, rest, score: this.score(rest, ratio, penalty, { ...claim, ...state }) };
  }

  /** Heads that are all alike, under the light wind of the test. */
  alike(ratio: number, wind = this.lightWind): HeadState {
    const { heads, radius } = this.bed;
    return { outputs: heads.map(() => 1), throws: heads.map(() => radius * ratio), ...(wind && { wind }) };
  }

  /** Finds the wind that a sound bed may have: a small shift, taken on only where it is clearly seen. */
  #findLightWind(): void {
    const fits = RATIOS.map((ratio) => this.fit(this.alike(ratio), this.shapes, ratio, 0));
    let best = fits.reduce((lowest, fit) => (fit.score < lowest.score ? fit : lowest));
    const { ratio } = best;
    const penalty = lightWindPenalty(this.count);
    for (const wind of lightWinds()) {
      const fitted = this.fit(this.alike(ratio, wind), this.shapes, ratio, penalty);
      if (fitted.score < best.score) best = fitted;
    }
    this.lightWind = best.wind;
  }
}

/** Products of columns with each other, row after row. */
export function gramOf(columns: readonly Float64Array[], others = columns): Float64Array {
  const gram = new Float64Array(columns.length * others.length);
  columns.forEach((one, i) => {
    others.forEach((other, j) => {
      gram[i * others.length + j] = dot(one, other);
    });
  });
  return gram;
}

/** The plain overlap that fits best when only reading errs: what the covariance is taken about. */
function firstFit(bed: ReadBed, y: Float64Array) {
  const weights = readingVariances(bed).map((variance, i) => 1 / Math.sqrt(variance + 0.01 * y[i]! ** 2 + 0.002));
  const weighted = (column: Float64Array) => column.map((value, i) => value * weights[i]!);
  const catches = weighted(y);
  const total = dot(catches, catches);
  const fits = RATIOS.map((ratio) => {
    const throwM = bed.radius * ratio;
    const state = { outputs: bed.heads.map(() => 1), throws: bed.heads.map(() => throwM) };
    const columns = overlapColumns(bed.heads, bed.cans, state, ALL_SHAPES).map(weighted);
    const { amounts, rest } = nonNegative(
      gramOf(columns),
      Float64Array.from(columns, (column) => dot(column, catches)),
      total,
    );
    const size = bed.cans.length + PRIOR_CANS;
    const score = size * Math.log((rest + PRIOR_CANS) / size) + (Math.log(ratio) / THROW_SD) ** 2;
    return { shapes: ALL_SHAPES, amounts, throwM, score };
  });
  return fits.reduce((best, fit) => (fit.score < best.score ? fit : best));
}
