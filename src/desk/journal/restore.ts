import { DOCS_NORMAL_EDITOR_UNIT_ID_KEY, type ICellData, ICommandService } from "@univerjs/core";
import {
  DeviceInputEventType,
  IEditorService,
  KeyCode,
  SetCellEditVisibleOperation,
  SetRangeValuesCommand,
} from "@univerjs/preset-sheets-core";
import { entered } from "../../hosts/desk/cells";
import { bookOf, type Grid, selectCells } from "../../hosts/desk/grid";
import type { Files } from "../files/files";
import type { ProtectedCells } from "../protected-cells";
import type { Draft, Edit, Store, Work } from "./store";

/** What each cell was given last, by sheet, row and column. */
function lastOf(edits: Edit[]): Map<string, Record<number, Record<number, ICellData>>> {
  const sheets = new Map<string, Record<number, Record<number, ICellData>>>();
  for (const { sheet, cells } of edits) {
    const known = sheets.get(sheet) ?? {};
    sheets.set(sheet, known);
    for (const [row, column, input] of cells) known[row] = { ...known[row], [column]: entered(input) };
  }
  return sheets;
}

/** Opens the editor of a cell on text that was being typed. */
function typeAgain({ injector, ...grid }: Grid, { sheet: name, row, column, text }: Draft): void {
  const book = bookOf({ injector, ...grid });
  const sheet = book.getSheetByName(name);
  if (!sheet) return;
  book.setActiveSheet(sheet);
  selectCells(sheet, sheet.getRange(row, column));
  injector.get(ICommandService).syncExecuteCommand(SetCellEditVisibleOperation.id, {
    visible: true,
    unitId: book.getId(),
    eventType: DeviceInputEventType.Keyboard,
    keycode: KeyCode.F2,
  });
  const editor = injector.get(IEditorService).getEditor(DOCS_NORMAL_EDITOR_UNIT_ID_KEY);
  editor?.replaceText(text);
  editor?.focus();
}

/** Opens a work that was left behind, as it was. */
export async function restore(
  grid: Grid,
  files: Files,
  cells: ProtectedCells,
  store: Store,
  work: Work,
): Promise<void> {
  const [edits, draft] = await Promise.all([store.edits(work.id), store.draftOf(work.id)]);
  await files.load(work.base, work.name);
  await cells.freely(async () => {
    const book = bookOf(grid);
    for (const [name, cellValue] of lastOf(edits)) {
      const sheet = book.getSheetByName(name);
      if (!sheet) continue;
      const place = { unitId: book.getId(), subUnitId: sheet.getSheetId() };
      await grid.injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, { ...place, value: cellValue });
    }
  });
  if (draft) typeAgain(grid, draft);
  await store.drop(work.id);
}
