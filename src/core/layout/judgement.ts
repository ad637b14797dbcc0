import { InputError } from "../errors";
import { lowestMean } from "../order";
import { mean } from "../readings";
import { christiansen } from "../uniformity/christiansen";
import { quarterCount } from "../uniformity/distribution";
import type { Cells } from "./cells";
import type { PlannedCoverage } from "./coverage";

/** What is in place of a figure that the driest spot would make meaningless. */
export const DRY_SPOTS = "dry spots";
/** Part of the mean under which the driest cell counts as a dry spot. */
export const DRY_SHARE = 1 / 20;
/** Part of the mean under which the low quarter counts as dry, since sums round. */
const NOTHING = 1e-9;
const FEWEST_CELLS = 4;

/** How a layout waters its bed. */
export interface Judgement {
  heads: number;
  /** Flow of all heads [L/h]. */
  flow: number;
  /** Mean application rate in the bed [mm/h]. */
  meanRate: number;
  /** CU [%]. */
  christiansen: number;
  /** DU of the low quarter [%]. */
  distribution: number;
  /** Mean over driest cell. */
  driestCoefficient: number | typeof DRY_SPOTS;
  /** Mean over low quarter. */
  quarterCoefficient: number | typeof DRY_SPOTS;
  /** Share of the water that lands in the bed, 0 to 1. */
  inBedShare: number;
  /** Water that the heads throw over what the driest cell gets. */
  driestWater: number | typeof DRY_SPOTS;
  /** Water that the heads throw over what the low quarter gets. */
  quarterWater: number | typeof DRY_SPOTS;
}

/**
 * Judgement of a layout.
 *
 *     SC = m / d        water factor = (Q / A) / d        m: mean rate; d: rate at the driest cell, or of the low quarter
 *     in-bed share = inside / (inside + outside)        Q: flow of all heads; A: area of the bed
 *
 * SC of the driest cell rises as cells shrink: compare only layouts with the same cell.
 *
 * @param coverage Coverage of the layout, at least 4 cells
 * @returns Its figures; "dry spots" where the driest cell gets under a twentieth of the mean, or the low quarter nothing
 * @throws InputError if there are fewer cells, or the bed gets no water
 * @source Sammis, Soils 456, answer 5.10, for SC; Christiansen (1942) for CU; Merriam and Keller (1978) for DU; water
 * factor: own reasoning
 * @example judgement(coverage({ width: 4, length: 4, spacing: 4, rowSpacing: 4, arrangement: "border", arcs: "full",
 *   profile: namedProfile("triangular", 4, 400), cell: 0.5 })).heads // 4
 */
export function judgement({ heads, rates, cells, inside, outside }: PlannedCoverage): Judgement {
  const flow = heads.reduce((sum, head) => sum + head.flow, 0);
  const share = inside / (inside + outside);
  return judged(rates.values, cells, 1, { heads: heads.length, flow, inBedShare: share });
}

/** The judgement of a bed of which each of the values is for `times` cells. */
export function judged(
  values: Float64Array,
  cells: Cells,
  times: number,
  known: Pick<Judgement, "heads" | "flow" | "inBedShare">,
): Judgement {
  checkWet(values, cells);
  const meanRate = mean(values, 1);
  const thrown = known.flow / (times * values.length * cells.cellWidth * cells.cellLength);
  const quarter = lowestMean(values, quarterCount(times * values.length) / times);
  let driest = Infinity;
  for (let cell = 0; cell < values.length; cell += 1) driest = Math.min(driest, values[cell] as number);
  const dryQuarter = quarter < NOTHING * meanRate;
  return {
    ...known,
    meanRate,
    christiansen: christiansen(values, meanRate),
    distribution: 100 * (quarter / meanRate),
    driestCoefficient: overDriest(meanRate, driest),
    quarterCoefficient: dryQuarter ? DRY_SPOTS : meanRate / quarter,
    driestWater: driest < DRY_SHARE * meanRate ? DRY_SPOTS : thrown / driest,
    quarterWater: dryQuarter ? DRY_SPOTS : thrown / quarter,
  };
}

/** A mean over the driest, or the words that are in its place. */
export function overDriest(meanRate: number, driest: number): number | typeof DRY_SPOTS {
  return driest < DRY_SHARE * meanRate ? DRY_SPOTS : meanRate / driest;
}

/** Refuses a bed of too few cells, and one that gets no water. */
export function checkWet(values: Float64Array, { rows, columns, cellWidth, cellLength }: Cells): void {
  if (rows * columns < FEWEST_CELLS) {
    const rule = "be smaller (at least 4 cells over the bed)";
    throw new InputError("cell", rule, Math.max(cellWidth, cellLength));
  }
  if (!values.some((rate) => rate > 0)) throw new InputError("layout", "wet the bed", 0, { missing: true });
}
