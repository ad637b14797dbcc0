import { InputError } from "../errors";
import type { CountedIndex } from "./counted";
import { Generator } from "./generator";
import { normalCdf, normalQuantile } from "./normal";

export const RESAMPLES = 2000;
const SEED = 20_240_229;
/** Relative difference up to which two replicates are the same but for rounding. */
const TIE = 1e-12;

/** What the readings themselves say about an index, before any level is chosen. */
export interface Bootstrap {
  value: number;
  /** In rising order. */
  replicates: Float64Array;
  /** True when all replicates equal the value. */
  settled: boolean;
  /** z0, the bias correction; 0 when settled. */
  bias: number;
  /** a, from the jackknife. */
  acceleration: number;
}

/**
 * Resamples an index.
 *
 *     z0 = quantile((less + equal / 2) / B)                      B: resamples; less, equal: against the index itself
 *     a = sum((j - t_i)^3) / (6 sum((j - t_i)^2)^1.5)            t_i: index without reading i; j: their mean
 *
 * @param sorted Readings in rising order, any one unit
 * @param index Any index of counted readings
 * @param resamples B
 * @returns The index, its replicates, z0 and a; the same for the same readings, since the seed is fixed
 * @throws InputError if the index cannot be had from a resample, or no resample lies on one side of it
 * @source Efron (1987); Efron and Tibshirani (1993), eqs. 14.14 and 14.15
 * @example bootstrap(Float64Array.of(7, 7, 7, 7), (x) => x[0], 10).value // 7
 */
export function bootstrap(sorted: Float64Array, index: CountedIndex, resamples = RESAMPLES): Bootstrap {
  const counts = new Float64Array(sorted.length);
  const value = index(sorted, counts.fill(1), sorted.length);
  const acceleration = jackknifeAcceleration(sorted, index, counts);
  const generator = Generator.seeded(SEED);
  const replicates = new Float64Array(resamples);
  const tie = TIE * Math.abs(value);
  let less = 0;
  let equal = 0;
  for (let i = 0; i < resamples; i += 1) {
    generator.draw(counts);
    const replicate = index(sorted, counts, sorted.length);
    replicates[i] = replicate;
    if (Math.abs(replicate - value) <= tie) equal += 1;
    else if (replicate < value) less += 1;
  }
  replicates.sort();
  const settled = equal === resamples;
  const bias = settled ? 0 : normalQuantile(below(less + equal / 2, resamples));
  return { value, replicates, settled, bias, acceleration };
}

/**
 * Ends of the BCa interval: bias-corrected and accelerated.
 *
 *     p = normalCdf(z0 + (z0 + z) / (1 - a (z0 + z)))            z: normal quantile of (1 - level) / 2 and of its twin
 *     end = replicate number p (B - 1), counted from 0, by linear interpolation
 *
 * @param source What `bootstrap` gave
 * @param level Share of such intervals that should hold the true value, more than 0 and less than 1
 * @returns Low and high end [unit of the index]; both the index where all replicates equal it
 * @throws InputError if the acceleration is too large for the level
 * @source Efron and Tibshirani (1993), eqs. 14.9 and 14.10
 * @example bcaEnds(bootstrap(Float64Array.of(7, 7, 7, 7), (x) => x[0]), 0.9)[1] // 7
 */
export function bcaEnds(source: Bootstrap, level: number): [number, number] {
  if (source.settled) return [source.value, source.value];
  const low = bcaShare(source.bias, source.acceleration, (1 - level) / 2);
  const high = bcaShare(source.bias, source.acceleration, (1 + level) / 2);
  return [between(source.replicates, low), between(source.replicates, high)];
}

/**
 * Share of the replicates that lies under an end of the BCa interval.
 *
 *     p = normalCdf(z0 + (z0 + z) / (1 - a (z0 + z)))            z = normalQuantile(alpha)
 *
 * @param bias z0
 * @param acceleration a
 * @param alpha Share without correction, more than 0 and less than 1
 * @returns p, from 0 to 1; alpha when z0 and a are 0
 * @throws InputError if the acceleration is too large
 * @source Efron and Tibshirani (1993), eq. 14.10
 * @example bcaShare(0, 0, 0.5) // 0.5
 */
export function bcaShare(bias: number, acceleration: number, alpha: number): number {
  const z = bias + normalQuantile(alpha);
  const divisor = 1 - acceleration * z;
  if (!(divisor > 0)) {
    throw new InputError("readings", "be less lopsided for an interval", acceleration, { missing: true });
  }
  return normalCdf(bias + z / divisor);
}

function jackknifeAcceleration(sorted: Float64Array, index: CountedIndex, counts: Float64Array): number {
  const without = sorted.map((_, i) => {
    counts[i] = 0;
    const value = index(sorted, counts, sorted.length - 1);
    counts[i] = 1;
    return value;
  });
  const centre = without.reduce((sum, value) => sum + value, 0) / without.length;
  let squares = 0;
  let cubes = 0;
  for (const value of without) {
    const short = centre - value;
    squares += short ** 2;
    cubes += short ** 3;
  }
  const divisor = 6 * squares ** 1.5;
  return divisor > 0 ? cubes / divisor : 0;
}

function below(count: number, resamples: number): number {
  if (count > 0 && count < resamples) return count / resamples;
  throw new InputError("readings", "have resamples on both sides of the index for an interval", 0, { missing: true });
}

function between(sorted: Float64Array, share: number): number {
  const position = share * (sorted.length - 1);
  const lower = Math.floor(position);
  const low = sorted[lower] as number;
  const high = sorted[Math.min(lower + 1, sorted.length - 1)] as number;
  return low + (position - lower) * (high - low);
}
