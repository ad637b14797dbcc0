import { checkedCells, type Plan } from "./coverage";
import { heads } from "./heads";
import { type Judgement, judged } from "./judgement";
import { overlap } from "./overlap";

/**
 * Judgement of a layout, from a part of its bed.
 *
 *     the heads stand alike from either end and either side, so that a side with an even number of cells needs one half
 *
 * @param plan As for `coverage`
 * @returns As `judgement(coverage(plan))`, but for the last digits; about four times as fast
 * @throws InputError as `coverage` and `judgement`
 * @source common practice
 * @example symmetricJudgement({ width: 4, length: 4, spacing: 4, rowSpacing: 4, arrangement: "border", arcs: "full",
 *   profile: namedProfile("triangular", 4, 400), cell: 0.5 }).heads // 4
 */
export function symmetricJudgement(plan: Plan): Judgement {
  const cells = checkedCells(plan);
  const placed = heads(plan, plan.profile.flow);
  const ends = cells.rows % 2 === 0 ? 2 : 1;
  const sides = cells.columns % 2 === 0 ? 2 : 1;
  const part = { ...cells, rows: cells.rows / ends, columns: cells.columns / sides };
  const { rates, inside, outside } = overlap(part, placed, plan.profile);
  return judged(rates.values, cells, ends * sides, {
    heads: placed.length,
    flow: placed.reduce((sum, head) => sum + head.flow, 0),
    inBedShare: (ends * sides * inside) / (inside + outside),
  });
}
