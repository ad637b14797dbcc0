import type { Cell as FileCell, Workbook, Worksheet } from "@cj-tech-master/excelts";
import type { Cell, Input } from "../../cells/cell";
import { columnLetters, columnNumber } from "../../cells/letters";
import type { BookCell, BookName, BookNote, BookPicture, BookSheet } from "./book";
import { colourOf } from "./colour";
import { conditionsOf } from "./condition";
import { typedFormula } from "./formula";
import { lookOf } from "./look";
import { validationsOf } from "./validation";
import { cellValue } from "./value";

const PIXELS_A_CHARACTER = 7;
const CELL_PADDING_PX = 5;
const PIXELS_A_POINT = 4 / 3;
const USUAL = { characters: 8.43, points: 15 };

const pixels = (characters: number): number => Math.round(characters * PIXELS_A_CHARACTER + CELL_PADDING_PX);

function inputOf(cell: FileCell): { input: Input; cached?: Cell } {
  if (cell.formula) return { input: typedFormula(cell.formula), cached: cellValue(cell.result) };
  const value = cellValue(cell.value);
  if (value !== null && typeof value === "object") return { input: value.error };
  return { input: value ?? "" };
}

/** The rectangle that an array formula fills, as the file says. */
export function filled(cell: FileCell): string | undefined {
  const value = cell.value as { shareType?: string; ref?: string } | null;
  return value?.shareType === "array" ? value.ref : undefined;
}

function cellsOf(sheet: Worksheet): BookCell[] {
  const cells: BookCell[] = [];
  const bodies = new Set<string>();
  sheet.eachRow({ includeEmpty: false }, (row) => {
    row.eachCell({ includeEmpty: true }, (cell) => {
      const ref = filled(cell);
      if (ref?.includes(":")) for (const address of addresses(ref)) bodies.add(address);
      if (ref) bodies.delete(cell.address);
      const look = lookOf(cell);
      const covered = bodies.has(cell.address) || (cell.isMerged && cell.master !== cell);
      const content: ReturnType<typeof inputOf> = covered ? { input: "" } : inputOf(cell);
      if (content.input === "" && !look) return;
      cells.push({ row: Number(cell.row) - 1, column: Number(cell.col) - 1, ...content, ...(look && { look }) });
    });
  });
  return cells;
}

function notesOf(sheet: Worksheet): BookNote[] {
  const notes: BookNote[] = [];
  sheet.eachRow((row) => {
    row.eachCell({ includeEmpty: true }, (cell) => {
      const { note } = cell;
      const text = typeof note === "string" ? note : note?.texts?.map((part) => part.text).join("");
      if (text) notes.push({ row: Number(cell.row) - 1, column: Number(cell.col) - 1, text });
    });
  });
  return notes;
}

function unlockedOf(sheet: Worksheet): string[] | null {
  if (!sheet.sheetProtection?.sheet) return null;
  const places: string[] = [];
  sheet.eachRow((row) => {
    row.eachCell({ includeEmpty: true }, (cell) => {
      if (cell.protection?.locked === false) places.push(`${Number(cell.row) - 1} ${Number(cell.col) - 1}`);
    });
  });
  return places;
}

/** Sizes in pixels, and what is hidden. */
function columnsOf(sheet: Worksheet): Pick<BookSheet, "widths" | "hiddenColumns"> {
  const widths: Record<number, number> = {};
  const hiddenColumns: number[] = [];
  for (let column = 0; column < sheet.columns.length; column++) {
    const { width, hidden } = sheet.getColumn(column + 1);
    if (width) widths[column] = pixels(width);
    if (hidden) hiddenColumns.push(column);
  }
  return { widths, hiddenColumns };
}

function rowsOf(sheet: Worksheet): Pick<BookSheet, "heights" | "hiddenRows"> {
  const heights: Record<number, number> = {};
  const hiddenRows: number[] = [];
  sheet.eachRow({ includeEmpty: false }, ({ height, hidden }, number) => {
    if (height) heights[number - 1] = Math.round(height * PIXELS_A_POINT);
    if (hidden) hiddenRows.push(number - 1);
  });
  return { heights, hiddenRows };
}

/** What the desk shows of a file's sheet. */
export function sheetOf(sheet: Worksheet, key: string, pictures: BookPicture[]): BookSheet {
  const view = sheet.views?.[0];
  const frozen = view?.state === "frozen" ? { rows: view.ySplit ?? 0, columns: view.xSplit ?? 0 } : undefined;
  const { defaultColWidth = USUAL.characters, defaultRowHeight = USUAL.points, tabColor } = sheet.properties;
  const tab = colourOf(tabColor);
  return {
    key,
    name: sheet.name,
    hidden: sheet.state !== "visible",
    rows: sheet.rowCount,
    columns: sheet.columnCount,
    ...columnsOf(sheet),
    ...rowsOf(sheet),
    usual: { width: pixels(defaultColWidth), height: Math.round(defaultRowHeight * PIXELS_A_POINT) },
    frozen: frozen ?? { rows: 0, columns: 0 },
    gridLines: view?.showGridLines ?? true,
    ...(tab && { tab }),
    merges: sheet.mergedRegions.map(({ top, left, bottom, right }) => ({
      startRow: top - 1,
      endRow: bottom - 1,
      startColumn: left - 1,
      endColumn: right - 1,
    })),
    validations: validationsOf(sheet),
    conditions: conditionsOf(sheet),
    notes: notesOf(sheet),
    pictures,
    unlocked: unlockedOf(sheet),
    cells: cellsOf(sheet),
  };
}

/** Every address of a rectangle such as `A1:B2`. */
export function addresses(ref: string): string[] {
  const parts = /^\$?([A-Z]+)\$?(\d+):\$?([A-Z]+)\$?(\d+)$/i.exec(ref);
  if (!parts) return [ref];
  const [left, right] = [columnNumber(parts[1]!), columnNumber(parts[3]!)];
  const all: string[] = [];
  for (let row = Number(parts[2]); row <= Number(parts[4]); row++) {
    for (let column = left; column <= right; column++) all.push(`${columnLetters(column)}${row}`);
  }
  return all;
}

/** The defined names of the whole workbook that mean one rectangle. */
export function namesOf(workbook: Workbook): BookName[] {
  return workbook.definedNames
    .getAllEntries()
    .filter(({ ranges, localSheetId }) => ranges?.length === 1 && localSheetId === undefined)
    .map(({ name, ranges }) => ({ name, reference: ranges[0]! }))
    .filter(({ name }) => !name.startsWith("_xlnm."));
}
