import { CanceledError, ICommandService } from "@univerjs/core";
import type { Grid } from "../../hosts/desk/grid";

/** What is said where the file says that its sheets stay as they are. */
export const LOCKED =
  "The structure of this workbook is locked: no sheet can be added, deleted, copied, renamed, moved, hidden or shown";

const ACTS = new Set([
  "sheet.operation.rename-sheet",
  ...[
    "insert-sheet",
    "remove-sheet-confirm",
    "remove-sheet",
    "copy-sheet",
    "set-worksheet-name",
    "set-worksheet-order",
    "set-worksheet-hidden",
    "set-worksheet-show",
    "set-tab-color",
  ].map((name) => `sheet.command.${name}`),
]);

const TAB = '[data-u-comp="slide-tab-item"]';

/** Refuses to change the list of sheets as long as it is locked. */
export function keepStructure(grid: Grid, isLocked: () => boolean, refuse: (sentence: string) => void): void {
  grid.injector.get(ICommandService).beforeCommandExecuted(({ id }) => {
    if (!ACTS.has(id) || !isLocked()) return;
    refuse(LOCKED);
    throw new CanceledError();
  });
  document.addEventListener(
    "dblclick",
    (event) => {
      // a name that is typed into its tab would stay there
      if (!(event.target instanceof Element && event.target.closest(TAB)) || !isLocked()) return;
      event.stopPropagation();
      refuse(LOCKED);
    },
    { capture: true },
  );
}
