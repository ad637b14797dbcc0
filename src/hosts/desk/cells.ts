import type { ICellData, Nullable } from "@univerjs/core";
import { FormulaDataModel, SetRangeValuesMutation } from "@univerjs/preset-sheets-core";
import type { Area } from "../../cells/area";
import { boxOf } from "../../cells/box";
import type { Cell, Input } from "../../cells/cell";
import { bookOf, type Grid, type Sheet, sheetOf } from "./grid";

const [TEXT, NUMBER, BOOLEAN] = [1, 2, 3];
const ERROR = /^#(DIV\/0!|N\/A|NAME\?|NULL!|NUM!|REF!|VALUE!|SPILL!|CALC!|ERROR!|CYCLE!)$/;
const TYPED_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

type Content = Pick<ICellData, "v" | "t" | "p" | "custom">;

/** The cells that array formulas fill on a sheet, by row and column. */
export function spills(grid: Grid, sheet: Sheet): Record<number, Record<number, Nullable<Content>>> {
  const all = grid.injector.get(FormulaDataModel).getArrayFormulaCellData();
  return (all[bookOf(grid).getId()]?.[sheet.getSheetId()] ?? {}) as ReturnType<typeof spills>;
}

function cellOf(content: Nullable<Content>): Cell {
  const value = content && (content.v ?? content.p?.body?.dataStream.trimEnd());
  if (!content || value == null) return null;
  if (content.t === BOOLEAN) return value === true || value === 1;
  if (typeof value !== "string" || !ERROR.test(value)) return value;
  const message: unknown = content.custom?.message;
  return message ? { error: value, message: String(message) } : { error: value };
}

/** The cells of a sheet. */
export interface SheetCells {
  /** The value, to the last digit. */
  value(row: number, column: number): Cell;
  /** What was typed. */
  input(row: number, column: number): Input;
}

export function sheetCells(grid: Grid, sheet: Sheet): SheetCells {
  const spilled = spills(grid, sheet);
  const matrix = sheet.getSheet().getCellMatrix();
  const formulas = grid.injector.get(FormulaDataModel);
  const [unit, key] = [bookOf(grid).getId(), sheet.getSheetId()];
  return {
    value: (row, column) => cellOf(matrix.getValue(row, column)) ?? cellOf(spilled[row]?.[column]),
    input: (row, column) => {
      const formula = formulas.getFormulaStringByCell(row, column, key, unit);
      if (formula) return formula;
      const value = cellOf(matrix.getValue(row, column));
      if (value !== null && typeof value === "object") return value.error;
      return value ?? "";
    },
  };
}

function each<T>(area: Area, one: (row: number, column: number) => T): T[][] {
  const { row, column, rows, columns } = boxOf(area);
  return Array.from({ length: rows }, (_, i) =>
    Array.from({ length: columns }, (_, j) => one(row - 1 + i, column - 1 + j)),
  );
}

/** Every cell's value; null beyond the edge of the grid. */
export const cells = (grid: Grid, area: Area): Cell[][] =>
  each(area, sheetCells(grid, sheetOf(grid, area.sheet)).value);

/** What was typed into every cell. */
export const typed = (grid: Grid, area: Area): Input[][] =>
  each(area, sheetCells(grid, sheetOf(grid, area.sheet)).input);

/** A cell as the grid stores it after somebody typed `input`. */
export function entered(input: Input): ICellData {
  const empty: ICellData = { v: null, f: null, si: null, p: null, t: null, custom: null };
  if (typeof input === "number") return { ...empty, v: input, t: NUMBER };
  if (typeof input === "boolean") return { ...empty, v: input ? 1 : 0, t: BOOLEAN };
  if (input === "") return empty;
  if (input.startsWith("=")) return { ...empty, f: input };
  if (TYPED_NUMBER.test(input.trim())) return { ...empty, v: Number(input), t: NUMBER };
  if (/^(true|false)$/i.test(input)) return { ...empty, v: input.toLowerCase() === "true" ? 1 : 0, t: BOOLEAN };
  return { ...empty, v: input.replace(/^'/, ""), t: TEXT };
}

/** Writes what is kept in the workbook and follows from it: no step for Undo, and no work that somebody could lose. */
export function keepCells(grid: Grid, area: Area, inputs: Input[][]): void {
  const { row, column } = boxOf(area);
  const cellValue: Record<number, Record<number, ICellData>> = {};
  inputs.forEach((line, i) => {
    cellValue[row - 1 + i] = Object.fromEntries(line.map((input, j) => [column - 1 + j, entered(input)]));
  });
  grid.api.syncExecuteCommand(
    SetRangeValuesMutation.id,
    {
      unitId: bookOf(grid).getId(),
      subUnitId: sheetOf(grid, area.sheet).getSheetId(),
      cellValue,
    },
    { kept: true },
  );
}
