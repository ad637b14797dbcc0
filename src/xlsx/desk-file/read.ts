import type { Worksheet } from "@cj-tech-master/excelts";
import type { Cell, Input } from "../../cells/cell";
import { DAYS_TO_1904 } from "../../cells/day-number";
import { cellAt } from "../../cells/places";
import { addressParts, areaOf } from "../../cells/sheet-area";
import type { FileCell, SheetContent } from "../parts/file-cell";
import type { BookCell, BookNote, BookPicture, BookSheet } from "./book";
import { colourOf } from "./colour";
import { conditionsOf } from "./condition";
import { showsDays } from "./day-format";
import { typedFormula } from "./formula";
import { placeNumber, type ReadSheet } from "./limits/desk-limits";
import { columnsOf, rowsOf, usualSize } from "./lines";
import type { Dress } from "./palette";
import { type Extent, extentOf } from "./place";
import { validationsOf } from "./validation";

/** What a cell shows; days of a file that counts them from 1904 are `late`. */
function shownIn({ value: held, error, given }: FileCell, late: boolean): Cell {
  if (error !== undefined) return { error };
  return late && given.get("t") !== "d" && typeof held === "number" ? held + DAYS_TO_1904 : held;
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

/** The cells that formulas fill beside the one that each is in. */
function filledBeside(held: SheetContent["cells"]): Set<number> {
  const filled = new Set<number>();
  for (const [address, { fills }] of held) {
    const area = fills?.includes(":") ? areaOf(fills, "") : null;
    if (!area) continue;
    for (let row = area.top; row <= area.bottom; row += 1) {
      for (let column = area.left; column <= area.right; column += 1) filled.add(placeNumber(row, column));
    }
    const own = addressParts(address);
    filled.delete(placeNumber(own.row, own.column));
  }
  return filled;
}

const MOST_GAPS = 200_000;

/** A cell of a sheet, one that the file leaves out of a row with cells behind it too. */
interface DressedCell {
  row: number;
  column: number;
  held?: FileCell;
  dress: Dress | undefined;
}

function* everyColumn(end: number, dress: Dress): Generator<[column: number, dress: Dress]> {
  for (let column = 1; column < end; column += 1) yield [column, dress];
}

/** The cells that a file holds, and those between them that have the style of their row or column. */
function dressed({ cells, rows, columns }: ReadSheet, palette: ReadonlyMap<string, Dress>): DressedCell[] {
  const all: DressedCell[] = [];
  const last = new Map<number, number>();
  for (const [address, held] of cells) {
    const { row, column } = addressParts(address);
    all.push({ row, column, held, dress: palette.get(held.given.get("s") ?? "") });
    last.set(row, Math.max(column, last.get(row) ?? 0));
  }
  const ofColumns = new Map<number, Dress>();
  for (const { given } of columns) {
    const dress = palette.get(given.get("style") ?? "");
    if (!dress) continue;
    for (let column = Number(given.get("min")); column <= Number(given.get("max")); column += 1) {
      ofColumns.set(column, dress);
    }
  }
  const inOrder = [...ofColumns].sort(([a], [b]) => a - b);
  let left = MOST_GAPS;
  for (const { number: row, style } of rows) {
    const end = last.get(row) ?? 0;
    const ofRow = style === undefined ? undefined : palette.get(String(style));
    for (const [column, dress] of ofRow ? everyColumn(end, ofRow) : inOrder) {
      if (column >= end || left === 0) break;
      if (cells.has(cellAt(row, column))) continue;
      all.push({ row, column, dress });
      left -= 1;
    }
  }
  return all;
}

function cellsOf(all: readonly DressedCell[], { cells: held, covered }: ReadSheet, from1904: boolean): BookCell[] {
  const filled = filledBeside(held);
  return all.flatMap(({ row, column, held: cell, dress }) => {
    const place = placeNumber(row, column);
    const shown = cell && !filled.has(place) && !covered.has(place);
    const look = dress?.look;
    const late = from1904 && showsDays(look?.format);
    const content = shown ? contentOf(cell, late) : NOTHING;
    if (content.input === "" && !look) return [];
    const body = shown && cell.fills?.includes(":") && bodyOf(cell.fills, held, late);
    return [{ row: row - 1, column: column - 1, ...content, ...(look && { look }), ...(body && { body }) }];
  });
}

/** What the desk shows of a file's sheet: looks as the grid's library reads them, all else by our own reader. */
export function sheetOf(
  sheet: Worksheet,
  key: string,
  read: ReadSheet,
  palette: ReadonlyMap<string, Dress>,
  pictures: BookPicture[],
  notes: (extent: Extent) => BookNote[],
  from1904: boolean,
): Omit<BookSheet, "ownNames"> {
  const all = dressed(read, palette);
  const { size } = read;
  const extent = extentOf(size);
  const view = sheet.views?.[0];
  const frozen = view?.state === "frozen" ? { rows: view.ySplit ?? 0, columns: view.xSplit ?? 0 } : undefined;
  const tab = colourOf(sheet.properties.tabColor);
  const unlocked = all.filter(({ dress }) => dress?.unlocked).map(({ row, column }) => `${row - 1} ${column - 1}`);
  return {
    key,
    name: sheet.name,
    hidden: sheet.state !== "visible",
    ...size,
    ...columnsOf(read),
    ...rowsOf(read, extent),
    usual: usualSize(read.root),
    frozen: frozen ?? { rows: 0, columns: 0 },
    gridLines: view?.showGridLines ?? true,
    ...(tab && { tab }),
    merges: read.merges.map(({ top, left, bottom, right }) => ({
      startRow: top - 1,
      endRow: bottom - 1,
      startColumn: left - 1,
      endColumn: right - 1,
    })),
    validations: validationsOf(read.root, extent, from1904),
    conditions: conditionsOf(sheet, extent),
    notes: notes(extent),
    pictures,
    unlocked: sheet.sheetProtection?.sheet ? unlocked : null,
    cells: cellsOf(all, read, from1904),
  };
}
