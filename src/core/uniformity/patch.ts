import { upTo } from "../checks";
import { InputError } from "../errors";
import type { Grid } from "../grid";
import { mean } from "../readings";
import { QUARTER_NEEDS } from "./distribution";
import { SHARE_SLACK } from "./scheduling-coefficient";

interface Patch {
  row: number;
  column: number;
  height: number;
  width: number;
}

/**
 * Scheduling coefficient of the driest patch.
 *
 *     SC = m / p        m: mean of the N catches; p: lowest mean of all patches of w x h neighbouring catches with
 *                       w h >= share N, while neither (w - 1) h nor w (h - 1) is
 *
 * @param grid Depth or volume in each can as they are in the bed, full, any one unit, each 0 or more; at least 4
 * @param share Least share of the bed that a patch covers, more than 0 and at most 0.5
 * @returns SC, more than 0; 1 when all catches are equal
 * @throws InputError if a reading is below 0, there are fewer than 4, the share is out of range, or the patch is dry
 * @source Solomon, Irrigation Notes 880802 (1988): a contiguous critical area; windows of every proportion instead of
 * squares only, so that a long dry edge is found: own reasoning
 * @example patchSchedulingCoefficient({ rows: 2, columns: 2, values: Float64Array.of(8, 12, 8, 12) }, 0.5) // 1.25
 */
export function patchSchedulingCoefficient(grid: Grid, share: number): number {
  upTo("share", share, 0.5);
  if (grid.rows * grid.columns !== grid.values.length) {
    throw new InputError("grid", `be full with ${grid.rows * grid.columns} readings`, grid.values.length);
  }
  const m = mean(grid.values, QUARTER_NEEDS);
  const driest = patchMean(grid, driestPatch(grid, Math.max(SHARE_SLACK, share * grid.values.length - SHARE_SLACK)));
  if (!(driest > 0)) throw new InputError("readings", "have no dry patch", 0, { missing: true });
  return m / driest;
}

function driestPatch(grid: Grid, cells: number): Patch {
  const { rows, columns } = grid;
  const sums = integral(grid);
  const stride = columns + 1;
  let lowest = Infinity;
  let driest: Patch = { row: 0, column: 0, height: rows, width: columns };
  for (let height = 1; height <= rows; height += 1) {
    const width = Math.max(1, Math.ceil(cells / height));
    if (width > columns || width * (height - 1) >= cells) continue;
    for (let row = 0; row + height <= rows; row += 1) {
      const above = row * stride;
      const below = above + height * stride;
      for (let left = 0; left + width <= columns; left += 1) {
        const right = left + width;
        const inside =
          (sums[below + right] as number) -
          (sums[below + left] as number) -
          (sums[above + right] as number) +
          (sums[above + left] as number);
        const average = inside / (width * height);
        if (average < lowest) {
          lowest = average;
          driest = { row, column: left, height, width };
        }
      }
    }
  }
  return driest;
}

/** Sums of all catches above and to the left of each corner. */
function integral({ rows, columns, values }: Grid): Float64Array {
  const stride = columns + 1;
  const sums = new Float64Array((rows + 1) * stride);
  for (let row = 0; row < rows; row += 1) {
    let line = 0;
    for (let column = 0; column < columns; column += 1) {
      line += values[row * columns + column] as number;
      sums[(row + 1) * stride + column + 1] = line + (sums[row * stride + column + 1] as number);
    }
  }
  return sums;
}

/** Taken from the catches themselves, since differences of large sums would leave a dry patch a little above 0. */
function patchMean({ columns, values }: Grid, patch: Patch): number {
  const first = values[patch.row * columns + patch.column] as number;
  let sum = 0;
  for (let row = patch.row; row < patch.row + patch.height; row += 1) {
    for (let column = patch.column; column < patch.column + patch.width; column += 1) {
      sum += (values[row * columns + column] as number) - first;
    }
  }
  return first + sum / (patch.height * patch.width);
}
