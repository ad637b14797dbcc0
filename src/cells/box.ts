import type { Area } from "./area";
import { columnLetters, columnNumber } from "./letters";

/** A rectangle by numbers: row and column of its first cell, from 1, and its size. */
export interface Box {
  row: number;
  column: number;
  rows: number;
  columns: number;
}

/** The last row and column that a sheet can have. */
export const LAST_ROW = 1_048_576;
export const LAST_COLUMN = 16_384;

/** Reads `B2` or `$B$2:D4`; null when the text is not an address or lies outside the sheet. */
export function parseBox(address: string): Box | null {
  const match = /^\$?([A-Z]{1,3})\$?(\d{1,7})(?::\$?([A-Z]{1,3})\$?(\d{1,7}))?$/i.exec(address.trim());
  if (!match) return null;
  const [, firstColumn = "", firstRow = "", lastColumn = firstColumn, lastRow = firstRow] = match;
  const columns = [columnNumber(firstColumn), columnNumber(lastColumn)];
  const rows = [Number(firstRow), Number(lastRow)];
  const [row, bottom] = [Math.min(...rows), Math.max(...rows)];
  const [column, right] = [Math.min(...columns), Math.max(...columns)];
  if (row < 1 || bottom > LAST_ROW || right > LAST_COLUMN) return null;
  return { row, column, rows: bottom - row + 1, columns: right - column + 1 };
}

export function boxAddress({ row, column, rows, columns }: Box): string {
  const first = columnLetters(column) + row;
  return rows * columns === 1 ? first : `${first}:${columnLetters(column + columns - 1)}${row + rows - 1}`;
}

/** Reads `Example!F2`, `'Block 7'!F2` or, on the given sheet, `F2`. */
export function parseArea(text: string, sheet: string): Area | null {
  const match = /^(?:'((?:[^']|'')+)'!|([^'!]+)!)?([^!]+)$/.exec(text.trim());
  if (!match) return null;
  const box = parseBox(match[3] ?? "");
  if (!box) return null;
  const named = match[1]?.replaceAll("''", "'") ?? match[2] ?? sheet;
  return { sheet: named, address: boxAddress(box) };
}

/** The area as a formula on `fromSheet` writes it: the sheet only where it is another one. */
export function reference(area: Area, fromSheet = ""): string {
  if (area.sheet === fromSheet) return area.address;
  const plain =
    /^[A-Za-z_][A-Za-z0-9_]*$/.test(area.sheet) && !parseBox(area.sheet) && !/^R\d*(C\d*)?$/i.test(area.sheet);
  return `${plain ? area.sheet : `'${area.sheet.replaceAll("'", "''")}'`}!${area.address}`;
}

/** The cell at a row and column of the area, counted from 0. */
export function cellAt(area: Area, row: number, column: number): Area {
  return resized({ ...area, address: boxAddress(shifted(area, row, column)) }, 1, 1);
}

/** The area of the given size whose first cell is that of `area`; null where it leaves the sheet. */
export function spill(area: Area, rows: number, columns: number): Area | null {
  const resizedArea = resized(area, rows, columns);
  return parseBox(resizedArea.address) ? resizedArea : null;
}

function resized(area: Area, rows: number, columns: number): Area {
  return { sheet: area.sheet, address: boxAddress({ ...boxOf(area), rows, columns }) };
}

function shifted(area: Area, row: number, column: number): Box {
  const box = boxOf(area);
  return { ...box, row: box.row + row, column: box.column + column };
}

/** The box of an address that a host gave. */
export function boxOf(area: Area): Box {
  const box = parseBox(area.address);
  if (!box) throw new Error(`${area.address} is not an address`);
  return box;
}

/** True when the two areas share a cell. */
export function overlap(one: Area, other: Area): boolean {
  if (one.sheet !== other.sheet) return false;
  const [a, b] = [boxOf(one), boxOf(other)];
  const meet = (start: number, size: number, from: number, length: number) =>
    start < from + length && from < start + size;
  return meet(a.row, a.rows, b.row, b.rows) && meet(a.column, a.columns, b.column, b.columns);
}
