import type { Place, Shift } from "../../xlsx/desk-file/book";
import { renamedFormula } from "../../xlsx/patch/renamed-references";
import { shiftedFormula, shiftedPlace, shiftedSpan } from "../../xlsx/patch/shift";
import type { BookState, CellState, SheetState } from "./book-state";

/** Rows and columns that were inserted or deleted, in their order, by the key of the sheet. */
export type ShiftsBySheet = ReadonlyMap<string, readonly Shift[]>;

const movedSizes = (sizes: Record<number, number>, shift: Shift): Record<number, number> =>
  Object.fromEntries(
    Object.entries(sizes).flatMap(([place, size]) => {
      const moved = shiftedPlace(Number(place), shift);
      return moved === null ? [] : [[moved, size]];
    }),
  );

const movedPlaces = (places: number[], shift: Shift): number[] =>
  places.flatMap((one) => shiftedPlace(one, shift) ?? []);

function movedMerge(place: Place, shift: Shift): Place[] {
  const { startRow, endRow, startColumn, endColumn } = place;
  const byRow = shift.axis === "rows";
  const span = shiftedSpan(byRow ? [startRow, endRow] : [startColumn, endColumn], shift);
  if (!span) return [];
  return [
    byRow ? { ...place, startRow: span[0], endRow: span[1] } : { ...place, startColumn: span[0], endColumn: span[1] },
  ];
}

function movedCell(cell: CellState, shift: Shift): CellState[] {
  const byRow = shift.axis === "rows";
  const place = shiftedPlace(byRow ? cell.row : cell.column, shift);
  return place === null ? [] : [{ ...cell, [byRow ? "row" : "column"]: place }];
}

function movedSheet(sheet: SheetState, shift: Shift): SheetState {
  const byRow = shift.axis === "rows";
  const cells = [...sheet.cells.values()].flatMap((cell) => movedCell(cell, shift));
  return {
    ...sheet,
    widths: byRow ? sheet.widths : movedSizes(sheet.widths, shift),
    heights: byRow ? movedSizes(sheet.heights, shift) : sheet.heights,
    hiddenRows: byRow ? movedPlaces(sheet.hiddenRows, shift) : sheet.hiddenRows,
    hiddenColumns: byRow ? sheet.hiddenColumns : movedPlaces(sheet.hiddenColumns, shift),
    merges: sheet.merges.flatMap((merge) => movedMerge(merge, shift)),
    cells: new Map(cells.map((cell) => [`${cell.row} ${cell.column}`, cell])),
  };
}

function followed(sheet: SheetState, moved: SheetState, shift: Shift): SheetState {
  const place = { sheet: moved.name, own: sheet.key === moved.key };
  const cells = [...sheet.cells].map(([at, cell]): [string, CellState] => {
    const { input } = cell;
    const isFormula = typeof input === "string" && input.startsWith("=");
    const unmoved = cell.unmoved ?? input;
    return [at, isFormula ? { ...cell, input: shiftedFormula(input, shift, place), unmoved } : cell];
  });
  return { ...sheet, cells: new Map(cells) };
}

/** What a file held, with its rows and columns where the shifts take them: what differs from it was changed otherwise. */
export function shiftedState(state: BookState, all: ShiftsBySheet): BookState {
  let { sheets } = state;
  for (const [key, shifts] of all) {
    for (const shift of shifts) {
      sheets = sheets.map((sheet) => (sheet.key === key ? movedSheet(sheet, shift) : sheet));
      const moved = sheets.find((sheet) => sheet.key === key);
      if (moved) sheets = sheets.map((sheet) => followed(sheet, moved, shift));
    }
  }
  return { ...state, sheets };
}

/** The same with formulas that speak of renamed sheets by their new names. */
export function renamedState(state: BookState, after: BookState): BookState {
  const renames = new Map<string, string>();
  for (const { key, name } of state.sheets) {
    const now = after.sheets.find((one) => one.key === key)?.name ?? name;
    if (now !== name) renames.set(name.toLowerCase(), now);
  }
  if (renames.size === 0) return state;
  const renamed = (cell: CellState): CellState =>
    typeof cell.input === "string" && cell.input.startsWith("=")
      ? { ...cell, input: renamedFormula(cell.input, renames) }
      : cell;
  const sheets = state.sheets.map((sheet) => {
    return { ...sheet, cells: new Map([...sheet.cells].map(([at, cell]) => [at, renamed(cell)])) };
  });
  return { ...state, sheets };
}

/** The rows that shifts inserted, where they are in the end. */
export function insertedRows(shifts: readonly Shift[]): number[] {
  let rows: number[] = [];
  for (const shift of shifts) {
    if (shift.axis !== "rows") continue;
    const fresh = Array.from({ length: Math.max(0, shift.count) }, (_, i) => shift.at + i);
    rows = [...movedPlaces(rows, shift), ...fresh];
  }
  return rows.sort((one, other) => one - other);
}

/** Inserted rows with the height of a row beside them, which the grid gave them. */
export function fittedRows(heights: Readonly<Record<number, number>>, inserted: readonly number[]): number[] {
  const old = (row: number, step: number) => {
    let place = row;
    while (inserted.includes(place)) place += step;
    return heights[place];
  };
  return inserted.filter((row) => [old(row, -1), old(row, 1)].includes(heights[row]));
}
