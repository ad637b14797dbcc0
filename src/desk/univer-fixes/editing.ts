import type { Injector } from "@univerjs/core";
import { IEditorBridgeService } from "@univerjs/preset-sheets-core";

/**
 * When formulas of any sheet are calculated, the grid takes what is being typed for outdated if one of them stands in the
 * same row and column, and puts the old content in its place: what is being typed stays.
 */
export function mendEditing(injector: Injector): void {
  const editor = injector.get(IEditorBridgeService);
  const { refreshEditCellState } = editor;
  editor.refreshEditCellState = () => {
    if (!editor.isVisible().visible) refreshEditCellState.call(editor);
  };
}
