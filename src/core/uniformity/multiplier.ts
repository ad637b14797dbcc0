import { InputError } from "../errors";
import {
  quarterSchedulingCoefficient,
  schedulingCoefficient,
  shareSchedulingCoefficient,
} from "./scheduling-coefficient";
import {
  weightedQuarterSchedulingCoefficient,
  weightedSchedulingCoefficient,
  weightedShareSchedulingCoefficient,
} from "./weighted";

/** What sets the run time: the driest can, the low quarter, or the share of cans that must get the depth. */
export type Basis = "can" | "quarter" | number;

/** The basis that a person typed, or the rule that it breaks. */
export function parseBasis(value: unknown): Basis {
  if (value === "can" || value === "quarter") return value;
  if (typeof value === "number" && value >= 0.5 && value <= 1) return value;
  throw new InputError("basis", 'be "can", "quarter" or a share of the cans from 0.5 to 1', value);
}

/**
 * Multiplier of the run time.
 *
 *     "can": SC of the driest can; "quarter": SC of the low quarter; a number: SC of that share of the cans
 *
 * @param readings Depth or volume in each can, any one unit, each 0 or more
 * @param basis "can", "quarter", or the share of cans that must get the depth, 0.5 to 1
 * @param areas Area of each can, any one unit, more than 0; left out: equal weight
 * @returns Multiplier, more than 0; 1 when all catches are equal
 * @throws InputError if the basis is another one, or as the scheduling coefficient that it names
 * @source Solomon, Irrigation Notes 880802 (1988): run time is base time times SC; the bases: own reasoning
 * @example multiplier([8, 10, 12, 10], "quarter") // 1.25
 */
export function multiplier(readings: ArrayLike<number>, basis: Basis, areas?: ArrayLike<number>): number {
  const known = parseBasis(basis);
  if (areas) return weightedMultiplier(readings, known, areas);
  if (known === "can") return schedulingCoefficient(readings);
  if (known === "quarter") return quarterSchedulingCoefficient(readings);
  return shareSchedulingCoefficient(readings, known);
}

function weightedMultiplier(readings: ArrayLike<number>, basis: Basis, areas: ArrayLike<number>): number {
  if (basis === "can") return weightedSchedulingCoefficient(readings, areas);
  if (basis === "quarter") return weightedQuarterSchedulingCoefficient(readings, areas);
  return weightedShareSchedulingCoefficient(readings, areas, basis);
}
