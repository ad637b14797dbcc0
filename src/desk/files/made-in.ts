import { areaOf } from "../../cells/sheet-area";
import { KEPT } from "../../workbook/audit/working/kept";
import type { BookName } from "../../xlsx/desk-file/book";
import type { BookState } from "./book-state";

const KEPT_NAMES = new Set(KEPT.map(([name]) => name));

/** The cells, as `Sheet!row,column` from 0, in which the pane keeps what follows from what was typed. */
const keptCells = (names: readonly BookName[]) =>
  new Set(
    names
      .filter(({ name }) => KEPT_NAMES.has(name))
      .map(({ reference }) => areaOf(reference, ""))
      .map((area) => area && `${area.sheet}!${area.top - 1},${area.left - 1}`),
  );

/** What a person made: what was typed, looks, shapes and pictures, as one text to compare. */
export function madeIn({ sheets, names }: BookState): string {
  const kept = keptCells(names);
  const all = sheets.map(({ cells, drawings, key: _, ...shape }) => [
    shape,
    [...cells.values()]
      .filter(({ row, column }) => !kept.has(`${shape.name}!${row},${column}`))
      .map(({ row, column, input, look: { format, ...look }, derived }) => [
        row,
        column,
        input,
        look,
        derived ? undefined : format,
      ]),
    drawings.map(({ name, source, sheetTransform }) => [name, source.length, sheetTransform]),
  ]);
  return JSON.stringify([all, names]);
}
