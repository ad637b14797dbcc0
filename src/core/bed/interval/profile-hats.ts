import { cholesky } from "../cholesky";
import { type Shape, valueAt } from "./shapes";

/** Hats over distance over throw: one each STEP, from the head outwards. */
const STEP = 0.09;
export const HATS = 14;
/** How far over the throw a profile's error is alike, and how near to the head it is larger. */
const CORRELATED = 0.2;
/** Rate under which the profile is no surer; a sound one is about 1 at the head. */
const LEAST_RATE = 0.12;
const JITTER = 1e-6;

const LIKENESS = cholesky(
  Float64Array.from({ length: HATS * HATS }, (_, i) => {
    const apart = (STEP * (Math.floor(i / HATS) - (i % HATS))) / CORRELATED;
    return Math.exp(-(apart ** 2) / 2) + (apart === 0 ? JITTER : 0);
  }),
  HATS,
);

/** Adds water at a distance over throw to the hats on either side of it. */
export function addHat(hats: Float64Array, v: number, given: number): void {
  const place = v / STEP;
  const j = Math.floor(place);
  if (j >= HATS) return;
  const share = place - j;
  hats[j]! += given * (1 - share);
  if (j + 1 < HATS) hats[j + 1]! += given * share;
}

/**
 * What standard normal numbers are multiplied by to give the hats of a profile that is not quite the shape.
 *
 *     diag(sd) L        sd = max(p, 0.12) (1 + exp(-(v / 0.2)^2)); L L' = exp(-((u - v) / 0.2)^2 / 2)
 */
export function hatFactors(shape: Shape): Float64Array {
  return LIKENESS.map((factor, at) => {
    const v = Math.floor(at / HATS) * STEP;
    return factor * Math.max(valueAt(shape.rates, v), LEAST_RATE) * (1 + Math.exp(-((v / CORRELATED) ** 2)));
  });
}
