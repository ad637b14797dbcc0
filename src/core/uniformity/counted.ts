import { InputError } from "../errors";
import { dryCans } from "../readings";
import { quarterCount } from "./distribution";

/**
 * An index of readings in rising order of which the i-th counts counts[i] times, `total` times in all. A count may be an
 * area: any weight above 0, or 0 for a can that is left out.
 */
export type CountedIndex = (sorted: Float64Array, counts: Float64Array, total: number) => number;

/** What is left of a wanted weight when only rounding is left, against the whole of it. */
const ROUNDING = 1e-12;

/** Mean catch. */
export function countedMean(sorted: Float64Array, counts: Float64Array, total: number): number {
  const low = sorted[0] as number;
  let even = 0;
  let odd = 0;
  let i = 0;
  for (; i + 1 < sorted.length; i += 2) {
    even += (counts[i] as number) * ((sorted[i] as number) - low);
    odd += (counts[i + 1] as number) * ((sorted[i + 1] as number) - low);
  }
  if (i < sorted.length) even += (counts[i] as number) * ((sorted[i] as number) - low);
  return low + (even + odd) / total;
}

/** Christiansen's CU [%]: the catches under the mean lie as far from it, in sum, as those above. */
export function countedChristiansen(sorted: Float64Array, counts: Float64Array, total: number): number {
  const mean = wetMean(sorted, counts, total);
  let below = 0;
  for (let i = 0; i < sorted.length && (sorted[i] as number) < mean; i += 1) {
    below += (counts[i] as number) * (mean - (sorted[i] as number));
  }
  return 100 * (1 - (2 * below) / (total * mean));
}

/** Low-quarter DU [%], the quarter a whole number of cans. */
export function countedDistribution(sorted: Float64Array, counts: Float64Array, total: number): number {
  return 100 * (lowestCounted(sorted, counts, quarterCount(total)) / wetMean(sorted, counts, total));
}

/** Low-quarter DU [%] where counts are areas: the quarter is cut through the can in which it ends. */
export function areaDistribution(sorted: Float64Array, areas: Float64Array, total: number): number {
  return 100 * (lowestCounted(sorted, areas, total / 4) / wetMean(sorted, areas, total));
}

/** Mean of the lowest catches that together count `wanted` times, of the last one only a part. */
export function lowestCounted(sorted: Float64Array, counts: Float64Array, wanted: number): number {
  const low = sorted[0] as number;
  let left = wanted;
  let sum = 0;
  for (let i = 0; left > ROUNDING * wanted; i += 1) {
    const taken = Math.min(left, counts[i] as number);
    sum += taken * ((sorted[i] as number) - low);
    left -= taken;
  }
  return low + sum / wanted;
}

function wetMean(sorted: Float64Array, counts: Float64Array, total: number): number {
  const mean = countedMean(sorted, counts, total);
  if (mean > 0) return mean;
  const wet = sorted.length - dryCans(sorted);
  throw new InputError("readings", "have more wet cans for an interval", wet, { missing: true });
}
