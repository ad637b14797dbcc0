import { InputError } from "../errors";
import type { DRY_SPOTS, Judgement } from "./judgement";

const BASES = ["driest", "quarter"] as const;

/** Which part of the bed must get the depth: the driest cell or the low quarter. */
export type LayoutBasis = (typeof BASES)[number];

/** The basis that a person chose. */
export function parseLayoutBasis(value: unknown): LayoutBasis {
  const known = BASES.find((basis) => basis === value);
  if (known) return known;
  throw new InputError("basis", 'be "driest" or "quarter"', value);
}

/** The multiplier of a layout's run time; "dry spots" where there is none. */
export function layoutMultiplier(judgement: Judgement, basis: LayoutBasis): number | typeof DRY_SPOTS {
  return parseLayoutBasis(basis) === "driest" ? judgement.driestCoefficient : judgement.quarterCoefficient;
}

/** The water that the heads throw over what the basis gets; "dry spots" where it gets next to nothing. */
export function waterFactor(judgement: Judgement, basis: LayoutBasis): number | typeof DRY_SPOTS {
  return parseLayoutBasis(basis) === "driest" ? judgement.driestWater : judgement.quarterWater;
}
