import { upTo } from "../checks";
import { InputError } from "../errors";
import { patchSchedulingCoefficient } from "../uniformity/patch";
import { checkWet, DRY_SHARE, DRY_SPOTS } from "./judgement";
import type { Coverage } from "./overlap";

/**
 * Scheduling coefficient of the driest patch of a layout.
 *
 *     SC = m / p        m: mean rate; p: mean of the driest rectangle of cells that covers the share of the bed
 *
 * Slow on many cells: for a few layouts only.
 *
 * @param coverage Coverage of the layout, at least 4 cells, not all dry
 * @param share Least share of the bed that a patch covers, more than 0 and at most 0.5
 * @returns SC, at least 1; "dry spots" where the patch gets under a twentieth of the mean
 * @throws InputError if there are fewer cells, all are dry, or the share is out of range
 * @source Solomon, Irrigation Notes 880802 (1988): a contiguous critical area; rectangles of every proportion: own
 * reasoning
 * @example driestPatchCoefficient(coverage({ width: 4, length: 4, spacing: 4, rowSpacing: 4, arrangement: "border",
 *   arcs: "full", profile: namedProfile("uniform", 9, 400), cell: 0.5 }), 0.1) // 1
 */
export function driestPatchCoefficient({ rates, cells }: Coverage, share: number): number | typeof DRY_SPOTS {
  upTo("share", share, 0.5);
  checkWet(rates.values, cells);
  try {
    const coefficient = patchSchedulingCoefficient(rates, share);
    return coefficient > 1 / DRY_SHARE ? DRY_SPOTS : coefficient;
  } catch (error) {
    if (error instanceof InputError && error.missing) return DRY_SPOTS;
    throw error;
  }
}
