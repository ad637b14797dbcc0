import { mean } from "../../readings";
import { christiansen } from "../../uniformity/christiansen";
import { distributionUniformity } from "../../uniformity/distribution";
import { type DRY_SPOTS, overDriest } from "../judgement";

const FEWEST = 4;

/** What a test reads. */
export interface CanIndices {
  /** Mean rate [mm/h]. */
  meanRate: number;
  /** CU [%]. */
  christiansen: number;
  /** DU of the low quarter [%]. */
  distribution: number;
  /** Mean over driest can or cell. */
  driestCoefficient: number | typeof DRY_SPOTS;
}

/**
 * Indices of the rates at cans, or at all cells of a bed.
 *
 *     mean rate, CU, DU of the low quarter and SC of the driest, equal weight
 *
 * @param rates Rates [mm/h], each 0 or more; at least 4, not all 0
 * @returns Indices; "dry spots" where the driest gets under a twentieth of the mean
 * @throws InputError if a rate is below 0, fewer than 4 are given, or all are 0
 * @source Christiansen (1942); Merriam and Keller (1978); Sammis, Soils 456, answer 5.10
 * @example canIndices(Float64Array.of(8, 10, 12, 10)) // { meanRate: 10, christiansen: 90, distribution: 80, driestCoefficient: 1.25 }
 */
export function canIndices(rates: Float64Array): CanIndices {
  const meanRate = mean(rates, FEWEST);
  return {
    meanRate,
    christiansen: christiansen(rates, meanRate),
    distribution: distributionUniformity(rates, meanRate),
    driestCoefficient: overDriest(meanRate, lowest(rates)),
  };
}

/** The lowest of the rates. */
export function lowest(rates: Float64Array): number {
  return rates.reduce((low, rate) => Math.min(low, rate), Infinity);
}
