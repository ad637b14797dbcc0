import type { Injector } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type {} from "@univerjs/preset-sheets-core";

/** What the desk asks of the grid's calculations. */
export interface DeskCalculation {
  /** Resolves when every formula has been calculated. */
  settled(): Promise<void>;
  /** Resolves when every formula has been calculated, or after `limit` [ms]; answers whether they have been. */
  settledWithin(limit: number): Promise<boolean>;
  /** Whether a formula has not been calculated yet. */
  isRunning(): boolean;
  /** Starts no calculation until what it answers is called. */
  hold(): () => void;
  /** A key was pressed in the grid. */
  keyPressed(key: string): void;
  /** A calculation ended without its figures. */
  failed(reason: string): void;
  /** Something to say of the figures as long as it is true; "" takes it back. */
  say(about: "failure" | "circle" | "kept", sentence: string): void;
  /** From now on tells whether figures have been out of date for a while, and what there is to say of them. */
  follow(told: (late: boolean, sentences: string[]) => void): void;
}

/** The running grid: its outer interface and the services behind it. */
export interface Grid {
  api: FUniver;
  injector: Injector;
  calculation: DeskCalculation;
}

export type Book = NonNullable<ReturnType<FUniver["getActiveWorkbook"]>>;
export type Sheet = ReturnType<Book["getActiveSheet"]>;
export type Range = ReturnType<Sheet["getRange"]>;

/** Selects cells; a cell of merged ones with all of them, as a click does. */
export function selectCells(sheet: Sheet, range: Range): void {
  const { startRow, startColumn, endRow, endColumn } = range.getRange();
  const one = startRow === endRow && startColumn === endColumn;
  const merged = one && sheet.getSheet().getMergedCell(startRow, startColumn);
  (merged ? sheet.getRange(merged) : range).activate();
}

export function bookOf({ api }: Grid): Book {
  const book = api.getActiveWorkbook();
  if (!book) throw new Error("no workbook is open");
  return book;
}

export function sheetOf(grid: Grid, name: string): Sheet {
  const book = bookOf(grid);
  const found = book
    .getWorkbook()
    .getSheets()
    .find((one) => one.getName().toLowerCase() === name.toLowerCase());
  const sheet = found && book.getSheetBySheetId(found.getSheetId());
  if (!sheet) throw new Error(`there is no sheet named "${name}"`);
  return sheet;
}
