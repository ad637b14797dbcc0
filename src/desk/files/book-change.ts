import { DAYS_TO_1904 } from "../../cells/day-number";
import type { DeskDrawing } from "../../hosts/desk/drawing";
import type { BookChange, BookName, CellChange, Look, SheetChange } from "../../xlsx/desk-file/book";
import { showsDays } from "../../xlsx/desk-file/day-format";
import type { BookState, CellState, SheetState } from "./book-state";
import { pictureOf } from "./drawings";
import { fittedRows, insertedRows, renamedState, type ShiftsBySheet, shiftedState } from "./shifted-state";

const alike = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

const NOTHING_FROZEN = { rows: 0, columns: 0 };

const seen = ({ name, alternative, source, sheetTransform: { from, to } }: DeskDrawing) => [
  name,
  alternative,
  source,
  from,
  to,
];

const isFormula = (input: unknown): input is string => typeof input === "string" && input.startsWith("=");

/**
 * Whether the desk can't calculate a formula that the file's own program can: it shows the file's value, or it lacks a
 * function or name or the room to show all that the formula gives, or the formula speaks of a table's columns, as in
 * Heads[Flow].
 */
function isBeyond({ input, value, kept }: CellState): boolean {
  if (kept) return true;
  if (!isFormula(input) || value === null || typeof value !== "object") return false;
  if (["#NAME?", "#SPILL!"].includes(value.error)) return true;
  return input.replace(/"[^"]*"|'[^']*'/g, "").includes("[");
}

/** A formula without the quotes that some programs put around every name of a sheet. */
const unquoted = (input: unknown): unknown => (isFormula(input) ? input.replace(/'((?:[^'!]|'')+)'!/g, "$1!") : input);

const sameInput = (one: unknown, other: unknown): boolean => alike(one, other) || alike(unquoted(one), unquoted(other));

/** A number as a file holds it that counts days from 1904. */
const inFile = <T>(value: T, look: Look, from1904: boolean): T | number =>
  from1904 && typeof value === "number" && showsDays(look.format) ? value - DAYS_TO_1904 : value;

/** Whether two figures differ only by the day from which days are counted. */
const sameDay = (one: unknown, other: unknown): boolean =>
  typeof one === "number" && typeof other === "number" && Math.abs(one - other) === DAYS_TO_1904;

/** A look without a format that the grid took over. */
function ownLook({ look, derived }: CellState): Look {
  const { format: _, ...bare } = look;
  return derived ? bare : look;
}

function cellChange(before: CellState | undefined, after: CellState, from1904: boolean): CellChange | null {
  const { row, column, input, value, spill } = after;
  const beyond = isBeyond(after);
  // the grid leaves a formula that it can't read as it was when rows or columns come and go
  // and one that shows the file's value is the file's, however the grid has spelt it since
  const unmoved = before !== undefined && (after.kept || (beyond && sameInput(before.unmoved, input)));
  const same = sameInput(before?.input ?? "", input) || unmoved;
  // a format that the grid took over belongs to formulas that are new here, not to those of the file
  const was = before ? ownLook(before) : {};
  const look = same && was.format === undefined ? ownLook(after) : after.look;
  const typedAnew = !same || !alike(before?.spill, spill);
  const counted = from1904 && sameDay(before?.value, value);
  const calculated = isFormula(input) && !beyond && !counted && !alike(before?.value, value);
  const dressed = !alike(was, look);
  if (!typedAnew && !calculated && !dressed) return null;
  return {
    row,
    column,
    ...(typedAnew && { input: inFile(input, look, from1904) }),
    ...((typedAnew || calculated) && { value: inFile(value, look, from1904) }),
    ...(typedAnew && spill && { spill: spill.map((line) => line.map((one) => inFile(one, look, from1904))) }),
    ...(dressed && { look, was }),
  };
}

type Sizes = Record<number, number>;

/** The sizes that are new. */
const differing = (before: Sizes, after: Sizes): Sizes =>
  Object.fromEntries(Object.entries(after).filter(([place, size]) => before[Number(place)] !== size));

/** The places that are hidden now and were not, or the other way round. */
const turned = (before: number[], after: number[]): Record<number, boolean> =>
  Object.fromEntries([
    ...before.filter((place) => !after.includes(place)).map((place) => [place, false] as const),
    ...after.filter((place) => !before.includes(place)).map((place) => [place, true] as const),
  ]);

function sheetChange(before: SheetState | undefined, after: SheetState, from1904: boolean): SheetChange {
  const cells: CellChange[] = [];
  for (const [place, { row, column, look }] of before?.cells ?? []) {
    if (!after.cells.has(place)) cells.push({ row, column, input: "", look: {}, was: look });
  }
  for (const [place, cell] of after.cells) {
    const change = cellChange(before?.cells.get(place), cell, from1904);
    if (change) cells.push(change);
  }
  const { heights = {}, hiddenRows = [], hiddenColumns = [] } = before ?? {};
  const frozen = !alike(before?.frozen ?? NOTHING_FROZEN, after.frozen);
  const drawn = !alike((before?.drawings ?? []).map(seen), after.drawings.map(seen));
  return {
    key: after.key,
    name: after.name,
    widths: differing(before?.widths ?? {}, after.widths),
    heights: differing(heights, after.heights),
    rowsHidden: turned(hiddenRows, after.hiddenRows),
    columnsHidden: turned(hiddenColumns, after.hiddenColumns),
    ...(frozen && { frozen: after.frozen }),
    ...(!alike(before?.merges ?? [], after.merges) && { merges: after.merges }),
    ...(drawn && { pictures: after.drawings.flatMap((one) => pictureOf(one) ?? []) }),
    cells,
  };
}

const without = (names: BookName[], others: BookName[]): BookName[] =>
  names.filter((one) => !others.some((other) => alike(one, other)));

/** What happened between two states of a book. */
export function bookChange(
  opened: BookState | null,
  after: BookState,
  shifts: ShiftsBySheet = new Map(),
  { stale = false, from1904 = false } = {},
): BookChange {
  const before = opened && renamedState(shiftedState(opened, shifts), after);
  const names = before?.names ?? [];
  const sheets = after.sheets.map((sheet) => {
    const old = before?.sheets.find(({ key }) => key === sheet.key);
    const moved = old && shifts.get(sheet.key);
    const change = sheetChange(old, sheet, from1904);
    return moved ? { ...change, shifts: moved, fitted: fittedRows(sheet.heights, insertedRows(moved)) } : change;
  });
  // a formula that only fills other cells than the file says has changed nothing
  const isNew = (key: string, { row, column, input }: CellChange) => {
    const held = before?.sheets.find((one) => one.key === key)?.cells.get(`${row} ${column}`);
    return input !== undefined && !alike(held?.input, input);
  };
  const changed = sheets.some(({ key, cells, shifts: moved }) => moved || cells.some((one) => isNew(key, one)));
  // a number that is not shown as a day may be one all the same, such as that of =B1+1
  const counted = from1904 && sheets.some(({ cells }) => cells.some(({ value }) => typeof value === "number"));
  const beyond = after.sheets.some(({ cells }) => [...cells.values()].some(isBeyond));
  return {
    // what the desk can't calculate, or counts from another day, may follow from what changed
    stale: stale || counted || (changed && (beyond || from1904)),
    sheets,
    addedNames: without(after.names, names),
    removedNames: without(names, after.names),
  };
}
