import { bedHeads } from "../../../src/core/bed/bed-heads";
import type { BedInput } from "../../../src/core/bed/read-bed";
import { canPlan } from "../../../src/core/layout/cans/plan";
import { weightedChristiansen, weightedDistribution, weightedMean } from "../../../src/core/uniformity/weighted";
import { normalDeviate, randomNumbers } from "../../support/random";

/** Places across and along at which the true bed is taken. */
const FINE = 60;
/** How far the typed throw is from the true one: standard deviation of the logarithm. */
const TYPED_SD = 0.06;
const MEAN_CATCH = 10;

export type Indices = Record<"MEAN" | "CU.CHRISTIANSEN" | "DU.QUARTER", number>;

/** A simulated bed: what its user types, and what is true of all its ground. */
export interface TrialBed {
  input: BedInput;
  truth: Indices;
}

/** A head of a simulated bed. */
export interface TrialHead {
  x: number;
  y: number;
  /** Output over that of a sound one, and rate over that of a full circle. */
  output: number;
}

/** What a world is asked for. */
export interface Weather {
  /** Least and most wind, in a unit of the world's own: 0 to 1 is light. */
  wind: [number, number];
}

/** A way that water falls: makes the rate over a bed, and reads a can. */
export interface World {
  /** Rate at a place, any unit, for heads of a throw. */
  rates(heads: TrialHead[], reach: number, weather: Weather, random: () => number): (x: number, y: number) => number;
  /** A reading of a rate whose mean over the bed is 1. */
  read(rate: number, random: () => number): number;
}

/** Which beds are made. */
export interface Case {
  arrangement: "border" | "inset";
  arcs?: "full" | "matched";
  cans: number;
  weather?: Weather;
  /** Output of one head, chosen by chance, over that of the others. */
  weak?: number;
}

const LIGHT: Weather = { wind: [0, 1] };
const MOST_HEADS = 40;

/** Bed, heads and cans by the can plan, exactly as many as the case asks for. */
function ground({ arrangement, arcs = "full", cans }: Case, random: () => number) {
  for (;;) {
    const spacing = 3 + 3 * random();
    const rowSpacing = spacing * (0.9 + 0.2 * random());
    const width = spacing * (1 + Math.floor(4 * random()));
    const length = rowSpacing * (1 + Math.floor(7 * random()));
    if (width > length * 1.2) continue;
    const heads = bedHeads({ width, length, spacing, rowSpacing, arrangement, arcs });
    const plan = canPlan({ width, length, headSpacing: spacing, headRowSpacing: rowSpacing });
    if (plan.count !== cans || plan.warnings.length > 0 || heads.length < 2 || heads.length > MOST_HEADS) continue;
    return { width, length, spacing, rowSpacing, arrangement, arcs, heads, across: plan.across, along: plan.along };
  }
}

/** The indices of all the ground of a bed. */
function truthOf(rates: Float64Array): Indices {
  const equal = new Float64Array(rates.length).fill(1);
  return {
    MEAN: weightedMean(rates, equal),
    "CU.CHRISTIANSEN": weightedChristiansen(rates, equal),
    "DU.QUARTER": weightedDistribution(rates, equal),
  };
}

/** The bed of a seed. */
export function trialBed(world: World, given: Case, seed: number): TrialBed {
  const random = randomNumbers(1 + ((seed * 7_919) % 2_147_483_000));
  for (let i = 0; i < 20; i += 1) random();
  const { heads, ...stand } = ground(given, random);
  const reach = stand.spacing * (0.95 + 0.4 * random());
  const weak = given.weak === undefined ? -1 : Math.floor(random() * heads.length);
  const trialHeads = heads.map(({ x, y, times }, k) => ({
    x,
    y,
    output: times * (1 + 0.05 * normalDeviate(random)) * (k === weak ? given.weak! : 1),
  }));
  const rate = world.rates(trialHeads, reach, given.weather ?? LIGHT, random);
  const fine = Float64Array.from({ length: FINE * FINE }, (_, i) =>
    rate((((i % FINE) + 0.5) * stand.width) / FINE, ((Math.floor(i / FINE) + 0.5) * stand.length) / FINE),
  );
  const mean = fine.reduce((sum, value) => sum + value, 0) / fine.length;
  const grid = stand.along.map((y) =>
    stand.across.map((x) => MEAN_CATCH * Math.max(0, world.read(rate(x, y) / mean, random))),
  );
  const radius = reach * Math.exp(TYPED_SD * normalDeviate(random));
  return { input: { ...stand, grid, radius }, truth: truthOf(fine.map((value) => (MEAN_CATCH * value) / mean)) };
}
