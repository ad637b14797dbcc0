import { columnLetters, columnNumber } from "./letters";

const parts = (address: string): [number, number] => {
  const [, letters = "", row = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  return [Number(row), columnNumber(letters)];
};

/** `C5` of `C5:F7`. */
export function firstCell(range: string): string {
  const end = range.indexOf(":");
  return end < 0 ? range : range.slice(0, end);
}

/** The cell at a row and a column, both from 1. */
export const cellAt = (row: number, column: number): string => `${columnLetters(column)}${row}`;

/** Every cell of a rectangle, row after row. */
export function placesOf(range: string): string[] {
  const [top, left] = parts(firstCell(range));
  const [bottom, right] = parts(range.split(":")[1] ?? range);
  const places: string[] = [];
  for (let row = top; row <= bottom; row++) {
    for (let column = left; column <= right; column++) places.push(cellAt(row, column));
  }
  return places;
}

const RANGE = /^[A-Z]{1,3}[1-9]\d{0,6}(:[A-Z]{1,3}[1-9]\d{0,6})?$/;
const MOST_PLACES = 100_000;

/** Whether a text is a rectangle of cells, and not of more than a sheet of ours could hold. */
export function isRange(text: string): boolean {
  if (!RANGE.test(text)) return false;
  const [top, left] = parts(firstCell(text));
  const [bottom, right] = parts(text.split(":")[1] ?? text);
  return bottom >= top && right >= left && (bottom - top + 1) * (right - left + 1) <= MOST_PLACES;
}

/** `$C$5:$F$7` of `C5:F7`. */
export const absolute = (range: string): string => range.replace(/\$?([A-Z]+)\$?(\d+)/g, "$$$1$$$2");
