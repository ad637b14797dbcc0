import { FormulaCalculationSessionService } from "@univerjs/preset-sheets-core";
import type { Grid } from "./desk-grid";

const CALCULATION_LIMIT_MS = 60_000;
/** How long the grid may take to begin calculating after a change. */
const START_LIMIT_MS = 150;

/** Resolves when the grid has calculated every formula. */
export const settled = (grid: Grid): Promise<void> =>
  grid.injector.get(FormulaCalculationSessionService).waitForLatestApplied(CALCULATION_LIMIT_MS, START_LIMIT_MS);
