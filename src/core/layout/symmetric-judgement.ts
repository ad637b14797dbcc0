import type { Cells } from "./cells";
import { checkedCells, type Plan } from "./coverage";
import { headCounts, heads } from "./heads";
import { type Judgement, judged } from "./judgement";
import { overlap } from "./overlap";

/** A place this close to the middle counts as on it [m]. */
const SLACK = 1e-9;

/**
 * Judgement of a layout, from a quarter of its heads and its bed.
 *
 *     rate at a cell = sum over its mirror images of the rates by the heads of one half        those on the middle: half
 *
 * The heads are placed alike from either end and either side; a side with an odd number of cells is not halved, nor the
 * length where staggered rows are an even number, since then one end is shifted and the other is not.
 *
 * @param plan As for `coverage`
 * @returns As `judgement(coverage(plan))`, but for the last digits; about four times as fast
 * @throws InputError as `coverage` and `judgement`
 * @source own reasoning: mirror images get the same water
 * @example symmetricJudgement({ width: 4, length: 4, spacing: 4, rowSpacing: 4, arrangement: "border", arcs: "full",
 *   profile: namedProfile("triangular", 4, 400), cell: 0.5 }).heads // 4
 */
export function symmetricJudgement(plan: Plan): Judgement {
  const cells = checkedCells(plan);
  const placed = heads(plan, plan.profile.flow);
  const sides = cells.columns % 2 === 0 ? 2 : 1;
  const oneEndShifted = plan.arrangement === "staggered" && headCounts(plan)[1] % 2 === 0;
  const ends = cells.rows % 2 === 0 && !oneEndShifted ? 2 : 1;
  const counted = placed.flatMap((head) => {
    const part = partOf(head.x, plan.width, sides) * partOf(head.y, plan.length, ends);
    return part === 0 ? [] : [{ ...head, times: head.times * part }];
  });
  const { rates, inside, outside } = overlap(cells, counted, plan.profile);
  return judged(folded(rates.values, cells, sides, ends), cells, sides * ends, {
    heads: placed.length,
    flow: placed.reduce((sum, head) => sum + head.flow, 0),
    inBedShare: inside / (inside + outside),
  });
}

/** How much of a head is for itself, where its mirror image is for the rest. */
function partOf(place: number, size: number, folds: number): number {
  const beyond = place - size / 2;
  if (folds === 1 || beyond < -SLACK) return 1;
  return beyond > SLACK ? 0 : 1 / 2;
}

/** The part of the bed next to the corner, with what falls on its mirror images. */
function folded(values: Float64Array, { rows, columns }: Cells, sides: number, ends: number): Float64Array {
  const [wide, long] = [columns / sides, rows / ends];
  const part = new Float64Array(wide * long);
  for (let row = 0; row < rows; row += 1) {
    const start = wide * Math.min(row, ends === 2 ? rows - 1 - row : row);
    for (let column = 0; column < wide; column += 1) {
      const near = values[row * columns + column] as number;
      const mirrored = sides === 2 ? (values[(row + 1) * columns - 1 - column] as number) : 0;
      part[start + column] = (part[start + column] as number) + near + mirrored;
    }
  }
  return part;
}
