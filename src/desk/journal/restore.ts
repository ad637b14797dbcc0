import { DOCS_NORMAL_EDITOR_UNIT_ID_KEY, type ICellData, ICommandService } from "@univerjs/core";
import {
  DeviceInputEventType,
  IEditorService,
  KeyCode,
  SetCellEditVisibleOperation,
  SetRangeValuesCommand,
} from "@univerjs/preset-sheets-core";
import { entered } from "../../hosts/desk/cells";
import { bookOf, type Grid, type Sheet, selectCells } from "../../hosts/desk/grid";
import type { Shift } from "../../xlsx/desk-file/book";
import type { Files } from "../files/files";
import { otherName } from "../files/saving/save-question";
import type { ProtectedCells } from "../protected-cells";
import type { Draft, Edit, Store, Work } from "./store";

type Cells = Record<number, Record<number, ICellData>>;

/** The edits up to each that moves cells, which comes first of its own. */
function stretches(edits: Edit[]): Edit[][] {
  const all: Edit[][] = [[]];
  for (const edit of edits) {
    if (edit.shift) all.push([edit]);
    else all.at(-1)!.push(edit);
  }
  return all;
}

/** What each cell was given last, by sheet, row and column. */
function lastOf(edits: Edit[]): Map<string, Cells> {
  const sheets = new Map<string, Cells>();
  for (const { sheet, cells } of edits) {
    const known = sheets.get(sheet) ?? {};
    sheets.set(sheet, known);
    for (const [row, column, input] of cells) known[row] = { ...known[row], [column]: entered(input) };
  }
  return sheets;
}

function moveCells(sheet: Sheet, { axis, at, count }: Shift): void {
  if (axis === "rows") count > 0 ? sheet.insertRowsBefore(at, count) : sheet.deleteRows(at, -count);
  else count > 0 ? sheet.insertColumnsBefore(at, count) : sheet.deleteColumns(at, -count);
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

const sameBytes = (one: Uint8Array, other: Uint8Array): boolean =>
  one.length === other.length && one.every((byte, i) => byte === other[i]);

/** Opens a work that was left behind, as it was; under another name where the open file of its name is another now. */
export async function restore(
  grid: Grid,
  files: Files,
  cells: ProtectedCells,
  store: Store,
  work: Work,
): Promise<string> {
  const newer = files.name === work.name && files.base !== null && !sameBytes(files.base, work.base);
  const [edits, draft] = await Promise.all([store.edits(work.id), store.draftOf(work.id)]);
  const name = newer ? otherName(work.name) : work.name;
  await files.load(work.base, name);
  await cells.freely(async () => {
    const book = bookOf(grid);
    for (const some of stretches(edits)) {
      const [{ shift, sheet: moved } = { shift: undefined, sheet: "" }] = some;
      const shifted = shift && book.getSheetByName(moved);
      if (shifted) {
        book.setActiveSheet(shifted); // the grid lets the formulas of the sheet in front follow, whichever loses rows
        moveCells(shifted, shift);
      }
      for (const [name, value] of lastOf(some)) {
        const sheet = book.getSheetByName(name);
        if (!sheet) continue;
        const place = { unitId: book.getId(), subUnitId: sheet.getSheetId() };
        await grid.injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, { ...place, value });
      }
    }
  });
  if (draft) typeAgain(grid, draft);
  await store.drop(work.id);
  return newer ? `${name}: the work goes on from ${work.name} as it was before it changed` : name;
}
