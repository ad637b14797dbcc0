import type { DeskDrawing } from "../../hosts/desk/drawing";
import type { BookChange, BookName, CellChange, SheetChange } from "../../xlsx/desk-file/book";
import type { BookState, CellState, SheetState } from "./book-state";
import { pictureOf } from "./drawings";

const alike = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

const NOTHING_FROZEN = { rows: 0, columns: 0 };

const seen = ({ name, alternative, source, sheetTransform: { from, to } }: DeskDrawing) => [
  name,
  alternative,
  source,
  from,
  to,
];

/** The value to cache, unless the desk lacks a function that the file's own program knows. */
const known = ({ value }: CellState): boolean =>
  !(value !== null && typeof value === "object" && value.error === "#NAME?");

function cellChange(before: CellState | undefined, after: CellState): CellChange | null {
  const { row, column, input, value, spill, look } = after;
  const formula = typeof input === "string" && input.startsWith("=");
  const typedAnew = !alike(before?.input ?? "", input) || !alike(before?.spill, spill);
  const calculated = formula && known(after) && !alike(before?.value, value);
  const dressed = !alike(before?.look ?? {}, look);
  if (!typedAnew && !calculated && !dressed) return null;
  return {
    row,
    column,
    ...(typedAnew && { input }),
    ...((typedAnew || calculated) && { value }),
    ...(typedAnew && spill && { spill }),
    ...(dressed && { look, was: before?.look ?? {} }),
  };
}

function sheetChange(before: SheetState | undefined, after: SheetState): SheetChange {
  const cells: CellChange[] = [];
  for (const [place, { row, column, look }] of before?.cells ?? []) {
    if (!after.cells.has(place)) cells.push({ row, column, input: "", look: {}, was: look });
  }
  for (const [place, cell] of after.cells) {
    const change = cellChange(before?.cells.get(place), cell);
    if (change) cells.push(change);
  }
  const widths = Object.entries(after.widths).filter(([column, width]) => before?.widths[Number(column)] !== width);
  const frozen = !alike(before?.frozen ?? NOTHING_FROZEN, after.frozen);
  const drawn = !alike((before?.drawings ?? []).map(seen), after.drawings.map(seen));
  return {
    key: after.key,
    name: after.name,
    widths: Object.fromEntries(widths),
    ...(frozen && { frozen: after.frozen }),
    ...(!alike(before?.merges ?? [], after.merges) && { merges: after.merges }),
    ...(drawn && { pictures: after.drawings.flatMap((one) => pictureOf(one) ?? []) }),
    cells,
  };
}

const without = (names: BookName[], others: BookName[]): BookName[] =>
  names.filter((one) => !others.some((other) => alike(one, other)));

/** What happened between two states of a book. */
export function bookChange(before: BookState | null, after: BookState, stale = false): BookChange {
  const names = before?.names ?? [];
  return {
    stale,
    sheets: after.sheets.map((sheet) =>
      sheetChange(
        before?.sheets.find(({ key }) => key === sheet.key),
        sheet,
      ),
    ),
    addedNames: without(after.names, names),
    removedNames: without(names, after.names),
  };
}
