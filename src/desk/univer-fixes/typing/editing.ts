import { IEditorBridgeService } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

/** What is being typed stays. */
export const editing: Fix = {
  name: "editing",
  wrong:
    "When formulas of any sheet are calculated, the grid takes what is being typed for outdated if one of them is in the same row and column, and puts the old content in its place.",
  seen: "0.25.1",
  members: ({ injector }) =>
    ["refreshEditCellState", "isVisible"].map((name) => [
      "IEditorBridgeService",
      injector.get(IEditorBridgeService),
      name,
    ]),
  mend({ injector }) {
    const editor = injector.get(IEditorBridgeService);
    const { refreshEditCellState } = editor;
    editor.refreshEditCellState = () => {
      if (!editor.isVisible().visible) refreshEditCellState.call(editor);
    };
  },
};
