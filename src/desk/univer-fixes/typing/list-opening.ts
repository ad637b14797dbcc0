import { toDisposable } from "@univerjs/core";
import {
  IEditorBridgeService,
  ISheetCellDropdownManagerService,
  SheetsSelectionsService,
} from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

/** Only its arrow opens a list, and it closes when somebody types, goes on or presses Escape. */
export const listOpening: Fix = {
  name: "list-opening",
  wrong: "The grid opens a list as soon as somebody types into its cell, and the list takes the keys.",
  seen: "0.25.1",
  members: ({ injector }) => [
    ["ISheetCellDropdownManagerService", injector.get(ISheetCellDropdownManagerService), "showDropdown"],
    ["IEditorBridgeService", injector.get(IEditorBridgeService), "visible$"],
    ["SheetsSelectionsService", injector.get(SheetsSelectionsService), "selectionMoveEnd$"],
  ],
  mend({ injector }) {
    const editor = injector.get(IEditorBridgeService);
    const dropdowns = injector.get(ISheetCellDropdownManagerService);
    const { showDropdown } = dropdowns;
    let close = () => {};
    dropdowns.showDropdown = (asked) => {
      if (asked.type !== "list") return showDropdown.call(dropdowns, asked);
      if (editor.isVisible().visible) return toDisposable(() => {});
      const { row, col } = asked.location;
      const shown = showDropdown.call(dropdowns, asked);
      const moves = injector.get(SheetsSelectionsService).selectionMoveEnd$.subscribe((selections) => {
        const cell = selections.at(-1)?.primary;
        if (cell && (cell.actualRow !== row || cell.actualColumn !== col)) close();
      });
      close = () => {
        moves.unsubscribe();
        shown.dispose();
      };
      return toDisposable(() => close());
    };
    editor.visible$.subscribe(({ visible }) => visible && close());
    document.addEventListener("keydown", ({ key }) => key === "Escape" && close(), { capture: true });
  },
};
