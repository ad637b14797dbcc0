import { cellAt } from "../../cells/places";
import type { SheetArea } from "../../cells/sheet-area";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import type { FileLooks } from "./file-looks";
import { shownText } from "./shown";

/** What the first cell of a rectangle shows a reader, in the format that the file gives it. */
export function shownAt(book: FileBook, { sheet, top, left }: SheetArea, { cells: looks }: FileLooks): string {
  const cell = book.sheets.find(({ name }) => name === sheet)?.cells.get(cellAt(top, left));
  if (!cell) return "";
  return cell.error ?? shownText(cell.value, looks[Number(cell.given.get("s") ?? 0)]?.format ?? "General");
}
