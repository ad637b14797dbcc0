import type { HeadColumns } from "./head-columns";
import type { Setting } from "./settings";

/** Rate under which nothing is read, or is even, more exactly; the mean is 1. */
const LEAST_RATE = 0.25;

/** What the readings of a model have in common, in parts that a setting scales: lower triangles, row after row. */
export interface Covariances {
  size: number;
  shared: Float64Array;
  outputs: Float64Array;
  profile: Float64Array;
  field: Float64Array;
  /** Variance of a reading for an error of 1. */
  reading: Float64Array;
}

/** J J' of the columns of the first places, from one column to before another. */
function gram({ columns, width }: HeadColumns, size: number, from: number, to: number): Float64Array {
  const product = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = 0;
      for (let k = from; k < to; k += 1) sum += columns[i * width + k]! * columns[j * width + k]!;
      product[i * size + j] = sum;
    }
  }
  return product;
}

/** Rates, none under a quarter of the mean: what unevenness and error of reading are in proportion to. */
export function floored(base: Float64Array): Float64Array {
  return base.map((rate) => Math.max(rate, LEAST_RATE));
}

/** Covariances of the readings under a model whose first places are the cans; `alike`: smooth unevenness, can by can. */
export function covariances(model: HeadColumns, alike: Float64Array, size: number): Covariances {
  const level = floored(model.base.subarray(0, size));
  const field = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) field[i * size + j] = alike[i * size + j]! * level[i]! * level[j]!;
  }
  return {
    size,
    shared: gram(model, size, 0, model.outputsFrom),
    outputs: gram(model, size, model.outputsFrom, model.profileFrom),
    profile: gram(model, size, model.profileFrom, model.width),
    field,
    reading: level.map((rate) => rate ** 2),
  };
}

/** V of a setting. */
export function covariance(parts: Covariances, { output, profile, field, reading }: Setting): Float64Array {
  const { size } = parts;
  const [h, t, d, s] = [output ** 2, profile ** 2, field ** 2, reading ** 2];
  const sum = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (let at = i * size; at <= i * size + i; at += 1) {
      sum[at] = parts.shared[at]! + h * parts.outputs[at]! + t * parts.profile[at]! + d * parts.field[at]!;
    }
    sum[i * size + i]! += s * parts.reading[i]!;
  }
  return sum;
}
