import { aboveZero } from "../checks";
import { InputError } from "../errors";
import { mean, numbers } from "../readings";
import type { CountedIndex } from "./counted";

/** Least and most that an area may be, in whatever unit it has. */
const LEAST = 1e-100;
const MOST = 1e100;

/** Cans from the driest to the wettest, each with the area that it is for. */
export interface CansByArea {
  sorted: Float64Array;
  areas: Float64Array;
  total: number;
}

/** One area, any unit: more than 0, and from 1e-100 to 1e100. */
export function canArea(value: unknown): number {
  const area = aboveZero("areas", value, "");
  if (area < LEAST) throw new InputError("areas", "be at least 1e-100", value);
  if (area > MOST) throw new InputError("areas", "be at most 1e100", value);
  return area;
}

/** Readings in rising order with their areas, equal readings by area, so that the order of the cans changes nothing. */
export function cansByArea(readings: ArrayLike<number>, areas: ArrayLike<number>, atLeast: number): CansByArea {
  mean(readings, atLeast);
  const catches = numbers(readings);
  if (areas.length !== catches.length) {
    throw new InputError("areas", `be one for each of the ${catches.length} readings`, areas.length);
  }
  const checked = Float64Array.from(areas, canArea);
  const order = Uint32Array.from(checked.keys()).sort(
    (one, other) => catches[one]! - catches[other]! || checked[one]! - checked[other]!,
  );
  return {
    sorted: Float64Array.from(order, (i) => catches[i]!),
    areas: Float64Array.from(order, (i) => checked[i]!),
    total: checked.reduce((sum, area) => sum + area, 0),
  };
}

/** An index of cans that each count for their area as often as they are drawn. */
export function countedByArea(index: CountedIndex, areas: Float64Array): CountedIndex {
  const weights = new Float64Array(areas.length);
  return (sorted, counts) => {
    let total = 0;
    for (let i = 0; i < areas.length; i += 1) {
      const weight = areas[i]! * counts[i]!;
      weights[i] = weight;
      total += weight;
    }
    return index(sorted, weights, total);
  };
}
