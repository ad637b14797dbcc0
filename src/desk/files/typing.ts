import { IEditorBridgeService, ILayoutService } from "@univerjs/preset-sheets-core";
import { bookOf, type Grid } from "../../hosts/desk/grid";

/** True while a cell is open with text that was not there before. */
export function halfTyped({ injector }: Grid): boolean {
  const editor = injector.get(IEditorBridgeService);
  return editor.isVisible().visible && editor.getEditorDirty();
}

/** Enters what is half typed. */
export async function endTyping(grid: Grid): Promise<void> {
  if (halfTyped(grid)) await bookOf(grid).endEditingAsync(true);
}

/** Gives the keys to the grid. */
export const focusGrid = ({ injector }: Grid): void => injector.get(ILayoutService).focus();
