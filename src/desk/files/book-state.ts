import type { IRange, Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/preset-sheets-core";
import { ISheetDrawingService } from "@univerjs/preset-sheets-drawing";
import type { Cell, Input } from "../../cells/cell";
import { cells, type SheetCells, sheetCells } from "../../hosts/desk/cells";
import type { DeskDrawing } from "../../hosts/desk/drawing";
import { bookOf, type Grid, type Sheet } from "../../hosts/desk/grid";
import { bookNames } from "../../hosts/desk/names";
import type { Book, BookName, Frozen, Look, Place } from "../../xlsx/desk-file/book";
import { isKept } from "../univer-fixes/formulas/kept-values";
import type { DerivedFormats } from "./derived-formats";
import { lookOfStyle } from "./looks";

export interface CellState {
  row: number;
  column: number;
  input: Input;
  /** What it was before rows or columns came or went elsewhere. */
  unmoved?: Input;
  value: Cell;
  spill?: Cell[][];
  look: Look;
  /** Whether the format of its look comes from the cells that its formula reads. */
  derived?: true;
  /** Whether it shows what the file says, since the desk can't calculate its formula. */
  kept?: true;
}

export interface SheetState {
  key: string;
  name: string;
  widths: Record<number, number>;
  heights: Record<number, number>;
  hiddenRows: number[];
  hiddenColumns: number[];
  frozen: Frozen;
  merges: Place[];
  drawings: DeskDrawing[];
  cells: Map<string, CellState>;
}

export interface BookState {
  sheets: SheetState[];
  names: BookName[];
}

/** What is looked up once a sheet. */
interface Known {
  grid: Grid;
  sheet: Sheet;
  all: SheetCells;
  isDerived: ReturnType<DerivedFormats["of"]>;
  /** The cells that each formula fills. */
  spilled: Nullable<Record<number, Nullable<Record<number, Nullable<IRange>>>>>;
}

/** Whether nothing stands in the way of a formula that fills cells, and its sheet goes far enough. */
function hasRoom({ sheet, all }: Known, row: number, column: number, { endRow, endColumn }: IRange): boolean {
  if (endRow >= sheet.getMaxRows() || endColumn >= sheet.getMaxColumns()) return false;
  for (let r = row; r <= endRow; r += 1) {
    for (let c = column; c <= endColumn; c += 1) {
      if ((r > row || c > column) && all.input(r, c) !== "") return false;
    }
  }
  return true;
}

/** What a formula that fills cells shows in them: in its own alone where it has no room. */
function spillOf(known: Known, row: number, column: number): Cell[][] | undefined {
  const { grid, sheet, all, spilled } = known;
  const range = spilled?.[row]?.[column];
  if (!range) return undefined;
  const value = all.value(row, column);
  const isBlocked = value !== null && typeof value === "object" && value.error === "#SPILL!";
  if (isBlocked || !hasRoom(known, row, column, range)) return [[value]];
  return cells(grid, { sheet: sheet.getSheetName(), address: sheet.getRange(range).getA1Notation() });
}

function cellState(known: Known, row: number, column: number): CellState {
  const { sheet, all, isDerived } = known;
  const input = all.input(row, column);
  const data = sheet.getSheet().getCellMatrix().getValue(row, column);
  const own = data ? sheet.getWorkbook().getStyles().getStyleByCell(data) : undefined;
  const spill = typeof input === "string" && input.startsWith("=") && spillOf(known, row, column);
  return {
    row,
    column,
    input,
    value: all.value(row, column),
    look: lookOfStyle(own),
    ...(isKept(data) && { kept: true }),
    ...(isDerived(row, column, own) && { derived: true }),
    ...(spill && { spill }),
  };
}

/** The pictures on a sheet, lowest first. */
function drawings(grid: Grid, sheet: Sheet): DeskDrawing[] {
  const service = grid.injector.get(ISheetDrawingService);
  const [unit, key] = [bookOf(grid).getId(), sheet.getSheetId()];
  const all = service.getDrawingData(unit, key) as Record<string, DeskDrawing>;
  return service.getDrawingOrder(unit, key).flatMap((id) => (all[id] && "source" in all[id] ? [all[id]] : []));
}

interface Lines<T> {
  [place: number]: T | undefined;
}

const sizes = <T>(lines: Lines<T>, size: (line: T) => number | undefined): Record<number, number> =>
  Object.fromEntries(
    Object.entries<T | undefined>({ ...lines }).flatMap(([place, line]) => {
      const given = line && size(line);
      return given ? [[Number(place), given]] : [];
    }),
  );

const hiddenOf = (lines: Lines<{ hd?: number }>): number[] =>
  Object.entries<{ hd?: number } | undefined>({ ...lines }).flatMap(([place, line]) =>
    line?.hd === 1 ? [Number(place)] : [],
  );

function sheetState(grid: Grid, formats: DerivedFormats, sheet: Sheet): SheetState {
  const key = sheet.getSheetId();
  const spilled = grid.injector.get(FormulaDataModel).getArrayFormulaRange()[bookOf(grid).getId()]?.[key];
  const known = { grid, sheet, all: sheetCells(grid, sheet), isDerived: formats.of(key), spilled };
  const found = new Map<string, CellState>();
  sheet
    .getSheet()
    .getCellMatrix()
    .forValue((row, column) => {
      found.set(`${row} ${column}`, cellState(known, row, column));
    });
  const { xSplit, ySplit } = sheet.getFreeze();
  const { columnData, rowData } = sheet.getSheet().getConfig();
  return {
    key,
    name: sheet.getSheetName(),
    widths: sizes(columnData, ({ w }) => w),
    heights: sizes(rowData, ({ h }) => h),
    hiddenRows: hiddenOf(rowData),
    hiddenColumns: hiddenOf(columnData),
    frozen: { rows: ySplit, columns: xSplit },
    merges: sheet
      .getSheet()
      .getMergeData()
      .map(({ startRow, endRow, startColumn, endColumn }) => ({ startRow, endRow, startColumn, endColumn }))
      .sort((one, other) => one.startRow - other.startRow || one.startColumn - other.startColumn),
    drawings: drawings(grid, sheet),
    cells: found,
  };
}

/** All that the desk can save of the open workbook. */
export function bookState(grid: Grid, formats: DerivedFormats): BookState {
  const book = bookOf(grid);
  return {
    sheets: book.getSheets().map((sheet) => sheetState(grid, formats, sheet)),
    names: bookNames(grid).map(({ name, formulaOrRefString: reference }) => ({ name, reference })),
  };
}

/** What a file held, and what was added to it as that is now. */
export function withAdded(held: BookState | null, now: BookState, added: Book): BookState {
  const isNew = ({ name }: BookName) => added.names.some((one) => one.name === name);
  return {
    sheets: [...(held?.sheets ?? []), ...now.sheets.filter(({ key }) => added.sheets.some((one) => one.key === key))],
    names: [...(held?.names ?? []), ...now.names.filter(isNew)],
  };
}
