import { LEAST, MOST, positive, zeroOrMore } from "../checks";
import { InputError } from "../errors";

/** Relative rate at the ends of straight lines, against distance over throw. */
const SHAPES = {
  triangular: { distances: [0, 1], rates: [1, 0] },
  uniform: { distances: [0, 1], rates: [1, 1] },
  ring: { distances: [0, 0.7, 1], rates: [0.4, 1, 0] },
};
/** Highest rate that one head may give anywhere [mm/h]. */
const MOST_RATE = 1e6;

export type ShapeName = keyof typeof SHAPES;

/** Rate against distance of one head that throws a full circle: straight lines between the points, 0 beyond the last. */
export interface Profile {
  /** Distances from the head [m], rising from 0; the last is the throw. */
  distances: Float64Array;
  /** Rates at these distances [mm/h]. */
  rates: Float64Array;
  /** Flow of the head [L/h]. */
  flow: number;
}

/** The shape that a person typed. */
export function parseShape(value: unknown): ShapeName {
  if (typeof value === "string" && Object.hasOwn(SHAPES, value)) return value as ShapeName;
  throw new InputError("profile", 'be "triangular", "uniform", "ring" or two columns, distance and rate', value);
}

/**
 * Profile of a head by the name of its shape.
 *
 *     triangular: p = p0 (1 - r/R), p0 = 3 Q / (pi R2)        r: distance; R: throw; Q: flow; 1 L/m2 = 1 mm
 *     uniform: p = Q / (pi R2)        ring: 0.4 at the head, 1 at 0.7 R, 0 at R, scaled to Q
 *
 * @param shape "triangular", "uniform" or "ring"
 * @param radius Throw, R [m], more than 0
 * @param flow Flow of a head that throws a full circle, Q [L/h], more than 0
 * @returns Rates [mm/h] against distances [m]
 * @throws InputError if the shape is another one, or a number is not more than 0
 * @source own shapes; the volume under them: geometry of a cone and a ring
 * @example namedProfile("triangular", 2, 4 * Math.PI).rates[0] // 3
 */
export function namedProfile(shape: ShapeName, radius: number, flow: number): Profile {
  const { distances, rates } = SHAPES[parseShape(shape)];
  const reach = positive("radius", radius, "m");
  return scaled(
    Float64Array.from(distances, (distance) => distance * reach),
    Float64Array.from(rates),
    flow,
  );
}

/**
 * Profile of a head from rates measured along a line of cans.
 *
 *     Q = integral of 2 pi r p dr, which sets the scale of the rates p at the distances r
 *
 * @param distances Distances from the head [m], from 0 upwards
 * @param rates Rate at each, any one unit, each 0 or more, not all 0
 * @param flow Flow of a head that throws a full circle, Q [L/h], more than 0
 * @returns Rates [mm/h] against distances [m], without the rows beyond the throw
 * @throws InputError if distances do not start at 0 or do not rise, a rate is below 0, or all the rates are 0
 * @source the volume of a solid of revolution, piece by piece: geometry
 * @example measuredProfile([0, 2], [10, 0], 4 * Math.PI).rates[0] // 3
 */
export function measuredProfile(distances: ArrayLike<number>, rates: ArrayLike<number>, flow: number): Profile {
  if (!(distances.length >= 2)) throw new InputError("profile", "have at least 2 rows", distances.length);
  if (rates.length !== distances.length) {
    throw new InputError("profile", `have ${distances.length} rates, one a distance`, rates.length);
  }
  const reaches = Float64Array.from(distances);
  reaches.forEach((reach, i) => {
    const place = `row ${i + 1}, column 1`;
    if (i === 0 && reach !== 0) throw new InputError("profile", "start at distance 0 m", reach, { place });
    if (i > 0 && !(reach > (reaches[i - 1] as number))) {
      throw new InputError("profile", "have distances that rise from row to row", reach, { place });
    }
    zeroOrMore("distance", reach, "m");
  });
  const heights = Float64Array.from(rates);
  heights.forEach((rate, i) => {
    if (rate !== 0 && !(rate >= LEAST && rate <= MOST)) {
      throw new InputError("profile", "have rates of 0 or from 1e-9 to 1e9", rate, { place: `row ${i + 1}, column 2` });
    }
  });
  const wetRows = heights.reduce((last, rate, i) => (rate > 0 ? i : last), 0) + 2;
  return scaled(reaches.subarray(0, wetRows), heights.subarray(0, wetRows), flow);
}

/**
 * Rate of one head at a distance.
 *
 *     p = p1 + (p2 - p1) (r - r1) / (r2 - r1)        r1, r2: the profile's distances about r
 *
 * @param profile The head's profile
 * @param distance Distance from the head, r [m], 0 or more
 * @returns Rate [mm/h]; 0 beyond the throw
 * @throws InputError if the distance is below 0
 * @source linear interpolation: arithmetic
 * @example rateAt(namedProfile("triangular", 2, 4 * Math.PI), 1) // 1.5
 */
export function rateAt({ distances, rates }: Profile, distance: number): number {
  const r = zeroOrMore("distance", distance, "m");
  const end = distances.findIndex((reach, i) => i > 0 && reach >= r);
  if (end < 0) return 0;
  const start = distances[end - 1] as number;
  const share = (r - start) / ((distances[end] as number) - start);
  return (rates[end - 1] as number) * (1 - share) + (rates[end] as number) * share;
}

function scaled(distances: Float64Array, relative: Float64Array, flow: number): Profile {
  const stated = positive("flow", flow, "L/h");
  let volume = 0;
  for (let i = 1; i < distances.length; i += 1) {
    const [a, b] = [distances[i - 1] as number, distances[i] as number];
    const [u, v] = [relative[i - 1] as number, relative[i] as number];
    volume += ((Math.PI * (b - a)) / 3) * (u * (2 * a + b) + v * (a + 2 * b));
  }
  if (!(volume > 0)) throw new InputError("profile", "have a rate above 0", 0);
  const rates = relative.map((rate) => (rate * stated) / volume);
  if (!(rates.reduce((most, rate) => Math.max(most, rate), 0) <= MOST_RATE)) {
    throw new InputError("flow", "be smaller or the throw longer (at most 1e6 mm/h near a head)", flow);
  }
  return { distances, rates, flow: stated };
}
