import type { Worksheet } from "@cj-tech-master/excelts";
import type { Cell, Input } from "../../cells/cell";
import { columnLetters, columnNumber } from "../../cells/letters";
import { cellAt } from "../../cells/places";
import { addressParts, areaOf } from "../../cells/sheet-area";
import type { FileCell, SheetContent } from "../parts/file-cell";
import type { BookCell, BookNote, BookPicture, BookSheet, Look } from "./book";
import { colourOf } from "./colour";
import { conditionsOf } from "./condition";
import { DAYS_TO_1904, showsDays } from "./day-format";
import type { ReadSheet } from "./desk-limits";
import { typedFormula } from "./formula";
import { lookOf } from "./look";
import { extentOf } from "./place";
import { validationsOf } from "./validation";

const PIXELS_A_CHARACTER = 7;
const CELL_PADDING_PX = 5;
const PIXELS_A_POINT = 4 / 3;
const USUAL = { characters: 8.43, points: 15 };

const pixels = (characters: number): number => Math.round(characters * PIXELS_A_CHARACTER + CELL_PADDING_PX);

const DAY_MS = 86_400_000;
const DAY_0 = Date.UTC(1899, 11, 30);

/** A date of the strict form, such as 2026-01-02T00:00:00, as days. */
function days(text: string): number | string {
  const time = Date.parse(/Z$|[+-]\d\d:\d\d$/.test(text) ? text : `${text}${text.includes("T") ? "" : "T00:00:00"}Z`);
  return Number.isNaN(time) ? text : (time - DAY_0) / DAY_MS;
}

/** What a cell shows; days of a file that counts them from 1904 are `late`. */
function shownIn({ value: held, error, given }: FileCell, late: boolean): Cell {
  if (error !== undefined) return { error };
  if (given.get("t") === "d" && typeof held === "string") return days(held);
  return late && typeof held === "number" ? held + DAYS_TO_1904 : held;
}

/** What is typed in a cell, and what its formula gave. */
function contentOf(cell: FileCell, late: boolean): Pick<BookCell, "input" | "cached"> {
  const { formula = "", error } = cell;
  const shown = shownIn(cell, late);
  if (formula !== "") return { input: typedFormula(formula), cached: shown };
  return { input: error ?? (shown as Input) ?? "" };
}

const NOTHING = { input: "" };

/** What the cells show that a formula fills. */
function bodyOf(fills: string, held: SheetContent["cells"], late: boolean): Cell[][] {
  const area = areaOf(fills, "");
  if (!area) return [];
  return Array.from({ length: area.bottom - area.top + 1 }, (_, i) =>
    Array.from({ length: area.right - area.left + 1 }, (_, j) => {
      const cell = held.get(cellAt(area.top + i, area.left + j));
      return cell ? shownIn(cell, late) : null;
    }),
  );
}

function cellsOf(sheet: Worksheet, held: SheetContent["cells"], from1904: boolean): BookCell[] {
  const bodies = new Set<string>();
  for (const [address, { fills }] of held) {
    if (fills?.includes(":")) for (const one of addresses(fills)) bodies.add(one);
    if (fills) bodies.delete(address);
  }
  const looks = new Map<string, Look>();
  const covered = new Set<string>();
  sheet.eachRow({ includeEmpty: false }, (row) => {
    row.eachCell({ includeEmpty: true }, (cell) => {
      const look = lookOf(cell);
      if (look) looks.set(cell.address, look);
      if (cell.isMerged && cell.master !== cell) covered.add(cell.address);
    });
  });
  const cells: BookCell[] = [];
  for (const address of new Set([...held.keys(), ...looks.keys()])) {
    const cell = held.get(address);
    const look = looks.get(address);
    const shown = cell && !bodies.has(address) && !covered.has(address);
    const late = from1904 && showsDays(look?.format);
    const content = shown ? contentOf(cell, late) : NOTHING;
    if (content.input === "" && !look) continue;
    const { row, column } = addressParts(address);
    const body = shown && cell.fills?.includes(":") && bodyOf(cell.fills, held, late);
    cells.push({ row: row - 1, column: column - 1, ...content, ...(look && { look }), ...(body && { body }) });
  }
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

/** What the desk shows of a file's sheet: looks and shapes as the grid's library reads them, cells by our own reader. */
export function sheetOf(
  sheet: Worksheet,
  key: string,
  { cells, root }: ReadSheet,
  pictures: BookPicture[],
  from1904: boolean,
): Omit<BookSheet, "ownNames"> {
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
    validations: validationsOf(root, extentOf(sheet), from1904),
    conditions: conditionsOf(sheet),
    notes: notesOf(sheet),
    pictures,
    unlocked: unlockedOf(sheet),
    cells: cellsOf(sheet, cells, from1904),
  };
}

/** Every address of a rectangle such as `A1:B2`. */
function addresses(ref: string): string[] {
  const parts = /^\$?([A-Z]+)\$?(\d+):\$?([A-Z]+)\$?(\d+)$/i.exec(ref);
  if (!parts) return [ref];
  const [left, right] = [columnNumber(parts[1]!), columnNumber(parts[3]!)];
  const all: string[] = [];
  for (let row = Number(parts[2]); row <= Number(parts[4]); row++) {
    for (let column = left; column <= right; column++) all.push(`${columnLetters(column)}${row}`);
  }
  return all;
}
