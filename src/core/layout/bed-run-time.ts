import { runTime } from "../application/run-time";
import { positive } from "../checks";
import { DRY_SPOTS, type Judgement } from "./judgement";
import { type LayoutBasis, layoutMultiplier } from "./multiplier";

/**
 * Run time of a layout.
 *
 *     t = 60 d M / m        d: net depth [mm]; m: mean rate in the bed [mm/h]; M: SC of the driest cell or low quarter
 *
 * @param judgement Figures of the layout
 * @param depth Net depth that the driest cell or low quarter gets [mm], more than 0
 * @param basis "driest" or "quarter"
 * @returns Run time [min], more than 0; "dry spots" where no run time gives that depth
 * @throws InputError if the depth is not more than 0, or the basis is another one
 * @source Solomon, Irrigation Notes 880802 (1988): run time = base time x SC
 * @example bedRunTime(judgement(coverage({ width: 4, length: 4, spacing: 4, rowSpacing: 4, arrangement: "border",
 *   arcs: "full", profile: namedProfile("uniform", 9, 81 * Math.PI), cell: 0.5 })), 6, "driest") // 90
 */
export function bedRunTime(judgement: Judgement, depth: number, basis: LayoutBasis): number | typeof DRY_SPOTS {
  positive("depth", depth, "mm");
  const multiplier = layoutMultiplier(judgement, basis);
  return multiplier === DRY_SPOTS ? DRY_SPOTS : runTime(depth, judgement.meanRate, multiplier);
}
