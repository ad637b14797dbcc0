import type { FUniver } from "@univerjs/core/facade";
import type { DeskCalculation } from "../hosts/desk/grid";
import { pause } from "../hosts/pause";

/** How long the grid starts nothing new before it counts as settled. */
const QUIET_MS = 300;

/** The grid's calculation as it is of its own: all that can be known is when it last spoke. */
export function plainCalculation(api: FUniver): DeskCalculation {
  let spoke = 0;
  const formulas = api.getFormula();
  const speak = () => {
    spoke = performance.now();
  };
  formulas.calculationStart(speak);
  formulas.calculationProcessing(speak);
  formulas.calculationEnd(speak);
  const isRunning = () => performance.now() < spoke + QUIET_MS;
  const settled = async () => {
    speak();
    while (isRunning()) await pause(QUIET_MS / 10);
  };
  return {
    hold: () => () => {},
    keyPressed: speak,
    settled,
    isRunning,
    settledWithin: async () => settled().then(() => true),
    failed: () => {},
    say: () => {},
    follow: () => {},
  };
}
