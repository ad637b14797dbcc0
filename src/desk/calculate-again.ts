import type { Grid } from "../hosts/desk-grid";
import { settled } from "../hosts/desk-settled";

/** How long nothing is typed before every formula is calculated once more. */
const QUIET_MS = 700;

const EDITS = new Set([
  "sheet.command.set-range-values",
  "sheet.command.clear-selection-content",
  "sheet.command.clear-selection-all",
  "sheet.command.paste",
  "sheet.command.optional-paste",
  "sheet.command.auto-fill",
  "univer.command.undo",
  "univer.command.redo",
]);

/** The grid may lose a change that is made while it calculates: once the typing rests it calculates every formula. */
export function calculateAgain(grid: Grid): void {
  let pause: ReturnType<typeof setTimeout> | undefined;
  grid.api.onCommandExecuted(({ id }) => {
    if (!EDITS.has(id)) return;
    clearTimeout(pause);
    pause = setTimeout(async () => {
      await settled(grid);
      grid.api.getFormula().executeCalculation();
    }, QUIET_MS);
  });
}
