import { DRY_SPOTS, type Judgement } from "../judgement";
import { type LayoutBasis, layoutMultiplier } from "../multiplier";
import type { SearchLimits } from "./input";

/** A limit by its name; dry spots rule a layout out by themselves. */
export type LimitName = keyof SearchLimits | "drySpots";

/** The limits that a layout breaks; equality keeps one. */
export function brokenLimits(judgement: Judgement, basis: LayoutBasis, limits: SearchLimits): LimitName[] {
  const coefficient = layoutMultiplier(judgement, basis);
  const broken: LimitName[] = [];
  if (coefficient === DRY_SPOTS) broken.push("drySpots");
  else if (coefficient > (limits.coefficient ?? Infinity)) broken.push("coefficient");
  if (judgement.meanRate < (limits.lowRate ?? 0)) broken.push("lowRate");
  if (judgement.meanRate > (limits.highRate ?? Infinity)) broken.push("highRate");
  if (judgement.flow > (limits.flow ?? Infinity)) broken.push("flow");
  return broken;
}
