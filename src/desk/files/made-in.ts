import type { BookState } from "./book-state";

/** What a person made: what was typed, looks, shapes and pictures, as one text to compare. */
export function madeIn({ sheets, names }: BookState): string {
  const all = sheets.map(({ cells, drawings, key: _, ...shape }) => [
    shape,
    [...cells.values()].map(({ row, column, input, look: { format, ...look }, derived }) => [
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
