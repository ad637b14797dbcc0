import type { BookCell, BookSheet } from "../../xlsx/desk-file/book";

const USUAL_FONT_PT = 11;
const PIXELS_A_POINT = 4 / 3;
/** Height of a line over the size of its letters. */
const LINE = 1.35;
/** Width of a letter over its size, on the average. */
const LETTER = 0.56;
const PADDING_PX = 6;

/** What may wrap: numbers stay in one line. */
const textOf = ({ input, cached }: BookCell): string => {
  const shown = typeof input === "string" && input.startsWith("=") ? cached : input;
  return typeof shown === "string" ? shown : "";
};

/** Heights [px] of the rows whose file leaves them to the program: room for the letters, and for the lines of wrapped text. */
export function fittedHeights(sheet: BookSheet): Record<number, number> {
  const wide = new Map(sheet.merges.map((place) => [`${place.startRow} ${place.startColumn}`, place]));
  const width = (from: number, to: number) => {
    let sum = 0;
    for (let column = from; column <= to; column += 1) sum += sheet.widths[column] ?? sheet.usual.width;
    return sum;
  };
  const heights: Record<number, number> = {};
  for (const cell of sheet.cells) {
    const merged = wide.get(`${cell.row} ${cell.column}`);
    if (sheet.heights[cell.row] !== undefined || (merged && merged.endRow > merged.startRow)) continue;
    const size = (cell.look?.size ?? USUAL_FONT_PT) * PIXELS_A_POINT;
    const letters = Math.max(1, (width(cell.column, merged?.endColumn ?? cell.column) - PADDING_PX) / (size * LETTER));
    const lines = cell.look?.wrap ? Math.max(1, Math.ceil(textOf(cell).length / letters)) : 1;
    const height = Math.ceil(lines * size * LINE + PADDING_PX / 2);
    if (height > (heights[cell.row] ?? sheet.usual.height)) heights[cell.row] = height;
  }
  return heights;
}
