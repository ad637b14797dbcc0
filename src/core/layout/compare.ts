import { checkedCells, coverage, type Plan } from "./coverage";
import type { Arcs, Arrangement } from "./heads";
import { type Judgement, judgement } from "./judgement";

/** Layouts that are compared. */
const LAYOUTS: { layout: string; arrangement: Arrangement; arcs: Arcs }[] = [
  { layout: "border, full circles", arrangement: "border", arcs: "full" },
  { layout: "border, matched arcs", arrangement: "border", arcs: "matched" },
  { layout: "inset", arrangement: "inset", arcs: "full" },
  { layout: "centre line", arrangement: "centre", arcs: "full" },
  { layout: "staggered", arrangement: "staggered", arcs: "full" },
];

/** One of the layouts and its figures. */
export interface Compared extends Judgement {
  layout: string;
}

/**
 * Five layouts of the same heads over the same bed.
 *
 *     border with full circles, border with matched arcs, inset, one line down the middle, and staggered with full circles,
 *     each with the same cell
 *
 * @param plan Bed [m], spacings [m], profile and cell [m]
 * @returns Their figures, in this order
 * @throws InputError as `coverage` and `judgement`, before any work where one of them is too much
 * @source own reasoning
 * @example compare({ width: 4, length: 4, spacing: 4, rowSpacing: 4,
 *   profile: namedProfile("triangular", 4, 400), cell: 0.5 }).length // 5
 */
export function compare(plan: Omit<Plan, "arrangement" | "arcs">): Compared[] {
  const plans = LAYOUTS.map(({ layout, ...stand }) => ({ layout, plan: { ...plan, ...stand } }));
  for (const each of plans) checkedCells(each.plan);
  return plans.map((each) => ({ layout: each.layout, ...judgement(coverage(each.plan)) }));
}
