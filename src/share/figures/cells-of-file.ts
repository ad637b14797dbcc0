import type { CellsOf } from "../../workbook/bed/cells-of";
import { cellsIn, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";

/** More cells than any name of the workbooks has; a file may let one lead to a whole sheet. */
const MOST_CELLS = 100_000;

/** The cells behind a name of a file, blank ones and errors as null. */
export const cellsOfFile =
  (book: FileBook): CellsOf =>
  (name) => {
    const area = namedArea(book, name);
    if (!area) return null;
    const [height, width] = [area.bottom - area.top + 1, area.right - area.left + 1];
    if (height * width > MOST_CELLS) return null;
    const cells = Array.from({ length: height }, () =>
      Array.from({ length: width }, () => null as string | number | boolean | null),
    );
    for (const { row, column, cell } of cellsIn(book, area)) {
      if (cell.error === undefined) cells[row - 1]![column - 1] = cell.value;
    }
    return cells;
  };
