import { WHOLE_BED_INDICES, type WholeBedIndex, wholeBed } from "../../src/core/bed/interval/whole-bed";
import { readBed } from "../../src/core/bed/read-bed";
import { InputError } from "../../src/core/errors";
import { canAreas } from "../../src/core/pattern/can-areas";
import { interval } from "../../src/core/uniformity/interval";
import { DROP_WORLD } from "./trial-beds/drop-world";
import { POWER_WORLD } from "./trial-beds/power-world";
import { type Case, trialBed } from "./trial-beds/trial-bed";

export const METHODS = ["by fit", "bootstrap by area", "bootstrap, equal weight"] as const;
type Method = (typeof METHODS)[number];
const WORLDS = { G1: POWER_WORLD, G2: DROP_WORLD };
export type WorldName = keyof typeof WORLDS;

/** How often intervals held the true value, and how wide they were. */
export interface Tally {
  beds: number;
  /** Beds on which an interval was given. */
  given: number;
  held: Record<WholeBedIndex, number>;
  widths: Record<WholeBedIndex, number[]>;
}

export type Tallies = Record<Method, Tally>;

function empty(): Tally {
  return {
    beds: 0,
    given: 0,
    held: { MEAN: 0, "CU.CHRISTIANSEN": 0, "DU.QUARTER": 0 },
    widths: { MEAN: [], "CU.CHRISTIANSEN": [], "DU.QUARTER": [] },
  };
}

/** The tallies of two worlds together. */
export function pooled(one: Tally, other: Tally): Tally {
  const sum = empty();
  for (const part of [one, other]) {
    sum.beds += part.beds;
    sum.given += part.given;
    for (const index of WHOLE_BED_INDICES) {
      sum.held[index] += part.held[index];
      sum.widths[index].push(...part.widths[index]);
    }
  }
  return sum;
}

/** Intervals of 90 % on beds of a case, by the fit and by resampling the cans. */
export function tallied(world: WorldName, given: Case, beds: number, firstSeed: number): Tallies {
  const tallies: Tallies = { "by fit": empty(), "bootstrap by area": empty(), "bootstrap, equal weight": empty() };
  for (let i = 0; i < beds; i += 1) {
    const { input, truth } = trialBed(WORLDS[world], given, firstSeed + i);
    const bed = readBed(input);
    const catches = bed.cans.map(({ caught }) => caught);
    const grid = canAreas(bed.across, bed.along, bed.width, bed.length);
    const areas = bed.cans.map(({ row, column }) => grid[row]![column]!);
    const ways: Record<Method, () => (index: WholeBedIndex) => [number, number]> = {
      "by fit": () => {
        const whole = wholeBed(bed);
        return (index) => [whole[index].low, whole[index].high];
      },
      "bootstrap by area": () => (index) => interval(catches, index, 0.9, areas),
      "bootstrap, equal weight": () => (index) => interval(catches, index, 0.9),
    };
    for (const method of METHODS) {
      const tally = tallies[method];
      tally.beds += 1;
      try {
        const ends = WHOLE_BED_INDICES.map(ways[method]());
        for (const [place, index] of WHOLE_BED_INDICES.entries()) {
          const [low, high] = ends[place]!;
          if (low <= truth[index] && truth[index] <= high) tally.held[index] += 1;
          tally.widths[index].push(index === "MEAN" ? (100 * (high - low)) / truth.MEAN : high - low);
        }
        tally.given += 1;
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
      }
    }
  }
  return tallies;
}
