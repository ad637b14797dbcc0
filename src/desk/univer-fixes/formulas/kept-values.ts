import { type ICellData, ICommandService, type Nullable, type Workbook } from "@univerjs/core";
import {
  ArrayValueObject,
  type BaseValueObject,
  ErrorValueObject,
  FormulaRuntimeService,
  type FunctionVariantType,
  IFunctionService,
  SetFormulaCalculationNotificationMutation,
  SetRangeValuesMutation,
} from "@univerjs/preset-sheets-core";
import type { Cell } from "../../../cells/cell";
import { columnLetters } from "../../../cells/letters";
import { bookOf, type Grid } from "../../../hosts/desk/grid";
import type { Book, BookCell } from "../../../xlsx/desk-file/book";
import { beyondDesk } from "../../files/beyond";
import { gridResult } from "../../functions/results";
import type { Fix } from "../fix";
import { circling } from "./circling";

/** What a file says that a formula gave. */
interface FileValue {
  formula: string;
  values: Cell[][];
  /** Whether the grid can't calculate the formula, whatever it gives. */
  beyond: boolean;
}

/** A place with the file's value of its formula. */
export type KeptPlace = [sheet: string, row: number, column: number, value: FileValue];

interface Running {
  currentUnitId: string;
  currentSubUnitId: string;
  currentRow: number;
  currentColumn: number;
  setRuntimeData(value: FunctionVariantType): void;
}

type Cells = Record<number, Record<number, Nullable<ICellData>> | undefined>;

const running = FormulaRuntimeService.prototype as unknown as Running;

/** Of formulas that have not been calculated yet, or can't be, by their cells, which go along with rows and columns. */
const fromFile = new WeakMap<ICellData, FileValue>();
const shown = new WeakSet<ICellData>();
/** How many such formulas the open workbook has. */
let left = 0;

/** Whether a cell shows what the file says, since the grid can't calculate its formula. */
export const isKept = (data: Nullable<ICellData>): boolean =>
  Boolean(data && shown.has(data) && fromFile.get(data)?.formula === data.f);

const rawCell = (book: Nullable<Workbook>, sheet: string, row: number, column: number) =>
  book?.getSheetBySheetId(sheet)?.getCellMatrix().getValue(row, column);

/** Whether a formula is one of the file, with a value there. */
export function hasFileValue(grid: Grid, sheet: string, row: number, column: number): boolean {
  const data = rawCell(bookOf(grid).getWorkbook(), sheet, row, column);
  return Boolean(data && fromFile.get(data)?.formula === data.f);
}

/** Whether a formula calls one of our functions, whose errors are right whatever the file says. */
const callsOurs = ({ input }: BookCell): boolean => typeof input === "string" && input.includes("CANFALL.");

/**
 * Remembers what a file says of its formulas; where it asks to be calculated anew, or our functions may give errors, of
 * those beyond the grid only.
 */
export function keepFileValues(grid: Grid, { sheets, unknownNames, asksCalculation }: Book): void {
  const functions = grid.injector.get(IFunctionService);
  const isBeyond = beyondDesk({ sheets, unknownNames }, (name) => functions.hasExecutor(name));
  const anew = asksCalculation || sheets.some(({ cells }) => cells.some(callsOurs));
  const places = sheets.flatMap(({ key, cells }) =>
    cells.flatMap(({ row, column, input, cached = null, body }): KeptPlace[] => {
      if (typeof input !== "string" || !input.startsWith("=") || cached === null) return [];
      const beyond = isBeyond(input);
      if (!beyond && (anew || typeof cached === "object")) return [];
      return [[key, row, column, { formula: input, values: body ?? [[cached]], beyond }]];
    }),
  );
  left = 0;
  keepPlaces(grid, places);
}

/** The same of places in the open workbook. */
export function keepPlaces(grid: Grid, places: readonly KeptPlace[]): void {
  const book = bookOf(grid).getWorkbook();
  for (const [sheet, row, column, value] of places) {
    const data = rawCell(book, sheet, row, column);
    if (data?.f !== value.formula) continue;
    if (!fromFile.has(data)) left += 1;
    fromFile.set(data, value);
  }
  grid.calculation.say("kept", "");
}

/** All places whose formulas have not been calculated yet, or can't be. */
export function keptPlaces(grid: Grid): KeptPlace[] {
  const found: KeptPlace[] = [];
  for (const sheet of left > 0 ? bookOf(grid).getSheets() : []) {
    sheet
      .getSheet()
      .getCellMatrix()
      .forValue((row, column, data) => {
        const value = data && fromFile.get(data);
        if (value && value.formula === data.f) found.push([sheet.getSheetId(), row, column, value]);
      });
  }
  return found;
}

const single = (value: Cell): BaseValueObject =>
  value !== null && typeof value === "object"
    ? ErrorValueObject.create(value.error as never)
    : (gridResult(value ?? "") as BaseValueObject);

function inGrid(values: Cell[][]): BaseValueObject {
  const [[first = null] = []] = values;
  if (values.length === 1 && values[0]!.length === 1) return single(first);
  return ArrayValueObject.create({
    calculateValueList: values.map((line) => line.map(single)),
    rowCount: values.length,
    columnCount: values[0]!.length,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

function isError(value: FunctionVariantType): boolean {
  const many = value.isReferenceObject() || (value as BaseValueObject).isArray();
  const first = many ? (value as ArrayValueObject).getFirstCell() : (value as BaseValueObject);
  return Boolean(first?.isError());
}

/** What a cell shows in place of what the grid has calculated: an error says that it can't where the file has a value. */
function answer(data: ICellData, known: FileValue, value: FunctionVariantType, inCircle: boolean): FunctionVariantType {
  const stays = data.f === known.formula && (known.beyond || inCircle || isError(value));
  if (stays) shown.add(data);
  else {
    if (fromFile.delete(data)) left -= 1;
    shown.delete(data);
  }
  return stays ? inGrid(known.values) : value;
}

function inWords(grid: Grid): string {
  const places = keptPlaces(grid).filter(([sheet, row, column]) =>
    isKept(rawCell(bookOf(grid).getWorkbook(), sheet, row, column)),
  );
  const [[sheet, row, column] = ["", 0, 0] as const] = places;
  const first = `${bookOf(grid).getSheetBySheetId(sheet)?.getSheetName()}!${columnLetters(column + 1)}${row + 1}`;
  if (places.length < 2)
    return places.length === 0 ? "" : `${first} can't be calculated here and keeps the file's value`;
  return `${places.length} formulas can't be calculated here and keep the file's values, the first in ${first}`;
}

/** Whether there was something to say of such formulas. */
let said = false;

function tell(grid: Grid): void {
  const sentence = inWords(grid);
  said = sentence !== "";
  grid.calculation.say("kept", sentence);
}

/** Formulas that the grid can't calculate keep what the file says, and those that read them calculate with that. */
export const keptValues: Fix = {
  name: "kept-values",
  wrong:
    "A formula that the grid can't calculate, such as one of a table's columns, becomes an error, and formulas that read it change.",
  seen: "0.25.1",
  members: () => [["FormulaRuntimeService", running, "setRuntimeData"]],
  mend(grid) {
    const { setRuntimeData } = running;
    running.setRuntimeData = function (value) {
      const { currentUnitId: unit, currentSubUnitId: sheet, currentRow: row, currentColumn: column } = this;
      const book = left > 0 ? bookOf(grid) : null;
      const data = book?.getId() === unit ? rawCell(book.getWorkbook(), sheet, row, column) : null;
      const known = data && fromFile.get(data);
      setRuntimeData.call(this, known ? answer(data, known, value, circling.has(sheet, row, column)) : value);
    };
    grid.injector.get(ICommandService).onCommandExecuted(({ id, params }, options) => {
      if (left === 0 && !said) return;
      if (id === SetFormulaCalculationNotificationMutation.id) {
        const { functionsExecutedState: done } = params as { functionsExecutedState?: number };
        if (done !== undefined) setTimeout(() => tell(grid));
      }
      if (id !== SetRangeValuesMutation.id || options?.applyFormulaCalculationResult) return;
      const { subUnitId, cellValue } = params as { subUnitId: string; cellValue?: Cells };
      followed(grid, subUnitId, cellValue ?? {});
    });
  },
};

/** Formulas that only follow rows, columns and sheets are given without a value; they stay those of the file. */
function followed(grid: Grid, sheet: string, cells: Cells): void {
  for (const [row, line] of Object.entries(cells)) {
    for (const [column, given] of Object.entries(line ?? {})) {
      if (!given?.f || "v" in given) continue;
      const data = rawCell(bookOf(grid).getWorkbook(), sheet, Number(row), Number(column));
      const known = data && fromFile.get(data);
      if (known) fromFile.set(data, { ...known, formula: data.f ?? known.formula });
    }
  }
}
