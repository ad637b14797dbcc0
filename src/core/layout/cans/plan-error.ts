import { canAreas } from "../../pattern/can-areas";
import { weightedChristiansen, weightedDistribution, weightedMean } from "../../uniformity/weighted";
import { checkWet, overDriest } from "../judgement";
import type { Coverage } from "../overlap";
import { type CanIndices, canIndices, lowest } from "./indices";
import { canPlaces } from "./places";
import type { CanPlan } from "./plan";
import { readAt } from "./read-at";

/** A plan of cans against the bed that it is to measure. */
export interface CanPlanError {
  /** All cells of the bed. */
  bed: CanIndices;
  /** The cans, each counted alike. */
  plain: CanIndices;
  /** The cans, each weighted by the area that it is for. */
  weighted: CanIndices;
}

/**
 * Simulated error of a plan of cans.
 *
 *     the indices of the rates at the cans, plain and weighted by area, beside those of all cells
 *
 * The rates are read between the centres of the cells about a can; no wind, no error of reading.
 *
 * @param coverage Coverage of the layout over the same bed
 * @param plan Plan of the cans
 * @returns Indices of the bed and of the cans; "dry spots" where the driest gets under a twentieth of the mean
 * @throws InputError if the bed or the cans get no water, or a can is not on the bed
 * @source own reasoning
 * @example canPlanError(coverage({ width: 4, length: 6, spacing: 4, rowSpacing: 4, arrangement: "border", arcs: "full",
 *   profile: namedProfile("uniform", 9, 81 * Math.PI), cell: 0.5 }),
 *   canPlan({ width: 4, length: 6, headSpacing: 4, headRowSpacing: 4 })).weighted.christiansen // 100
 */
export function canPlanError(coverage: Coverage, plan: CanPlan): CanPlanError {
  checkWet(coverage.rates.values, coverage.cells);
  const places = canPlaces(plan);
  const caught = readAt(coverage, places);
  const strips = canAreas(plan.across, plan.along, plan.width, plan.length);
  const areas = places.map(({ column, row }) => strips[row]?.[column] as number);
  const meanRate = weightedMean(caught, areas);
  return {
    bed: canIndices(coverage.rates.values),
    plain: canIndices(caught),
    weighted: {
      meanRate,
      christiansen: weightedChristiansen(caught, areas),
      distribution: weightedDistribution(caught, areas),
      driestCoefficient: overDriest(meanRate, lowest(caught)),
    },
  };
}
