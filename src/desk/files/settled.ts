import type { Grid } from "../../hosts/desk/grid";
import { endTyping } from "./typing";

/** How long a file that is saved or opened waits for its figures [ms]. */
export const FILE_MS = 3000;

/** Whether every figure follows the inputs after at most `limit` [ms]. */
export async function isCurrent({ calculation, api }: Grid, limit: number): Promise<boolean> {
  if (!(await calculation.settledWithin(limit))) return false;
  // What is typed while the grid calculates can leave formulas behind: every one is calculated before a file is made.
  api.getFormula().executeCalculation();
  return calculation.settledWithin(limit);
}

/** Takes what is half typed, and prepares what a file is to keep once figures follow it. */
export async function ready(grid: Grid, prepare: () => Promise<void>): Promise<void> {
  await endTyping(grid);
  if (await grid.calculation.settledWithin(FILE_MS)) await prepare();
}
