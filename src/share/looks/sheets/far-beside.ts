import { columnLetters } from "../../../cells/letters";
import { addressParts } from "../../../cells/sheet-area";
import { isMain } from "../../../xlsx/parts/namespaces";
import type { BookSheet } from "../../../xlsx/parts/workbook-file";
import { childOf, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { type Finding, misleading } from "../../finding";
import type { FileLooks } from "../cells/file-looks";
import { columnsOf, USUAL_HEIGHT } from "./hidden";
import type { OwnSheet } from "./own-sheet";

/** How many times the room of a sheet its page may have before its letters are too small to read. */
const MOST_TIMES = 2.5;
export const FAR = "lies so far beside the cells that its pages shrink to hold it";

const total = (sizes: readonly number[]) => sizes.reduce((sum, size) => sum + size, 0);

/** Whether a page that holds a cell is so much larger than the sheet that what is printed on it cannot be read. */
export function isFarOff(own: OwnSheet, sheet: BookSheet, frame: XmlElement, row: number, column: number): boolean {
  if (own.printed !== null) return false;
  const [lastRow, lastColumn] = [
    Math.max(...own.used.map((used) => used.row)),
    Math.max(...own.used.map((used) => used.column)),
  ];
  if (column > lastColumn) {
    const widths = columnsOf(frame, column).map(({ width }) => width);
    if (total(widths) > MOST_TIMES * total(widths.slice(0, lastColumn))) return true;
  }
  if (own.manyPages || row <= lastRow) return false;
  const usual = Number(childOf(frame, isMain, "sheetFormatPr")?.given.get("defaultRowHeight") ?? USUAL_HEIGHT);
  const heights = new Map(sheet.rows.map(({ number, given }) => [number, Number(given.get("ht") ?? usual)]));
  const until = (last: number) => total(Array.from({ length: last }, (_, i) => heights.get(i + 1) ?? usual));
  return until(row) > MOST_TIMES * until(lastRow);
}

/** Cells with lines or fills far beside the sheet's own, for which its pages are made small. */
export function farFindings(own: OwnSheet, sheet: BookSheet, frame: XmlElement, { cells }: FileLooks): Finding[] {
  const drawn = [...sheet.cells]
    .filter(([address, { given }]) => !own.places.has(address) && cells[Number(given.get("s") ?? 0)]?.drawn)
    .map(([address]) => addressParts(address));
  const row = drawn.reduce((last, one) => Math.max(last, one.row), 1);
  const column = drawn.reduce((last, one) => Math.max(last, one.column), 1);
  return isFarOff(own, sheet, frame, row, column)
    ? [misleading(own.name, `a line or a fill in row ${row} or column ${columnLetters(column)} ${FAR}`)]
    : [];
}
