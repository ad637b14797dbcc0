import { InputError } from "../errors";
import { mean } from "../readings";
import { christiansen } from "../uniformity/christiansen";
import { distributionUniformity } from "../uniformity/distribution";
import type { PlannedCoverage } from "./coverage";

/** What stands in place of a figure that the driest spot would make meaningless. */
export const DRY_SPOTS = "dry spots";
/** Part of the mean under which the driest cell counts as a dry spot. */
const DRY_SHARE = 1 / 20;
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
 * @source common practice; CU: Christiansen (1942); DU: Merriam and Keller (1978)
 * @example judgement(coverage({ width: 4, length: 4, spacing: 4, rowSpacing: 4, arrangement: "border", arcs: "full",
 *   profile: namedProfile("triangular", 4, 400), cell: 0.5 })).heads // 4
 */
export function judgement({ heads, rates, cells, inside, outside }: PlannedCoverage): Judgement {
  const { values } = rates;
  if (values.length < FEWEST_CELLS) {
    throw new InputError(
      "cell",
      "be smaller (at least 4 cells over the bed)",
      Math.max(cells.cellWidth, cells.cellLength),
    );
  }
  if (!(inside > 0)) throw new InputError("layout", "wet the bed", 0, { missing: true });
  const flow = heads.reduce((sum, head) => sum + head.flow, 0);
  const meanRate = mean(values, FEWEST_CELLS);
  const thrown = flow / (values.length * cells.cellWidth * cells.cellLength);
  const distribution = distributionUniformity(values, meanRate);
  const quarter = (meanRate * distribution) / 100;
  let driest = Infinity;
  for (let cell = 0; cell < values.length; cell += 1) driest = Math.min(driest, values[cell] as number);
  const dry = driest < DRY_SHARE * meanRate;
  return {
    heads: heads.length,
    flow,
    meanRate,
    christiansen: christiansen(values, meanRate),
    distribution,
    driestCoefficient: dry ? DRY_SPOTS : meanRate / driest,
    quarterCoefficient: quarter > 0 ? meanRate / quarter : DRY_SPOTS,
    inBedShare: inside / (inside + outside),
    driestWater: dry ? DRY_SPOTS : thrown / driest,
    quarterWater: quarter > 0 ? thrown / quarter : DRY_SPOTS,
  };
}
