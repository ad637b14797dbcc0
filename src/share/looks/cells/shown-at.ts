import { DAYS_TO_1904 } from "../../../cells/day-number";
import { cellAt } from "../../../cells/places";
import type { SheetArea } from "../../../cells/sheet-area";
import type { FileBook } from "../../../xlsx/parts/workbook-file";
import type { FileLooks } from "./file-looks";
import { isDay, shownText } from "./shown";

/** What the first cell of a rectangle shows a reader, in the format that the file gives it. */
export function shownAt(
  book: FileBook,
  { sheet, top, left }: SheetArea,
  { cells: looks, from1904 }: FileLooks,
): string {
  const cell = book.sheets.find(({ name }) => name === sheet)?.cells.get(cellAt(top, left));
  if (!cell) return "";
  const pattern = looks[Number(cell.given.get("s") ?? 0)]?.format ?? "General";
  const moved = from1904 && typeof cell.value === "number" && isDay(pattern) ? cell.value + DAYS_TO_1904 : cell.value;
  return cell.error ?? shownText(moved, pattern);
}
