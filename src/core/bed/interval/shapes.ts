/** Distances over throw at which a profile is kept, 0 to FARTHEST in steps of STEP. */
const STEP = 0.01;
const FARTHEST = 1.3;
const KEPT = Math.round(FARTHEST / STEP) + 1;

/** Rate against distance over throw of a head whose throw and volume are 1, and its slope. */
export interface Shape {
  rates: Float64Array;
  slopes: Float64Array;
}

const PROFILES: ((v: number) => number)[] = [
  (v) => 1 - v,
  (v) => (1 + Math.cos(Math.PI * v)) / 2,
  (v) => 1 - v ** 5,
  (v) => (0.45 + 0.9 * v) * (1 - v ** 6),
  (v) => (0.15 + 1.6 * v * v) * (1 - v ** 6),
  (v) => (1 - v) ** 2,
  (v) => 0.3 * (1 - v ** 3) + Math.exp(-v / 0.15),
  (v) => (1 - 0.6 * Math.exp(-((v / 0.2) ** 2))) * (1 - v ** 3),
  (v) => (1 - 0.6 * Math.exp(-((v / 0.2) ** 2))) * (1 - v),
];

function shapeOf(profile: (v: number) => number): Shape {
  const heights = Float64Array.from({ length: KEPT }, (_, i) => (i * STEP < 1 ? Math.max(0, profile(i * STEP)) : 0));
  const volume = heights.reduce((sum, height, i) => sum + 2 * Math.PI * i * STEP * height * STEP, 0);
  const rates = heights.map((height) => height / volume);
  const slopes = rates.map((_, i) => (rates[Math.min(KEPT - 1, i + 1)]! - rates[Math.max(0, i - 1)]!) / (2 * STEP));
  return { rates, slopes };
}

/**
 * Shapes of the profile that a fit starts from.
 *
 *     cone; cosine; flat top; two rings; two cusps; two with a dip at the head        2 pi integral of v p(v) dv = 1
 *
 * @source own reasoning: from peaked to hollow, so that the columns of the profile bridge what lies between
 */
export const SHAPES: readonly Shape[] = PROFILES.map(shapeOf);

/** Value of a kept list at a distance over throw, by straight lines; 0 beyond. */
export function valueAt(list: Float64Array, v: number): number {
  const place = v / STEP;
  const i = Math.floor(place);
  if (i >= KEPT - 1) return 0;
  const low = list[i] as number;
  return low + (place - i) * ((list[i + 1] as number) - low);
}
