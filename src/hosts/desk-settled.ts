import { FormulaCalculationSessionService, TriggerCalculationController } from "@univerjs/preset-sheets-core";
import type { Grid } from "./desk-grid";

const CALCULATION_LIMIT_MS = 60_000;
/** How long the grid may take to begin calculating after a change. */
const START_LIMIT_MS = 150;

/** What the grid keeps of changes that formulas have not followed yet. */
interface Trigger {
  _waitingCommandQueue: unknown[];
  _executionInProgressParams: unknown;
}

/** Resolves when the grid has calculated every formula. */
export async function settled({ injector }: Grid): Promise<void> {
  const session = injector.get(FormulaCalculationSessionService);
  const trigger = injector.get(TriggerCalculationController) as unknown as Trigger;
  const end = Date.now() + CALCULATION_LIMIT_MS;
  do {
    await session.waitForLatestApplied(CALCULATION_LIMIT_MS, START_LIMIT_MS);
    if (Date.now() > end) throw new Error(`the grid is still calculating after ${CALCULATION_LIMIT_MS / 1000} s`);
  } while (trigger._waitingCommandQueue.length > 0 || trigger._executionInProgressParams !== null);
}
