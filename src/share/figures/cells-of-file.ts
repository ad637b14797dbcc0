import type { CellsOf } from "../../workbook/bed/cells-of";
import { cellsIn, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";

/** The cells behind a name of a file, blank ones and errors as null. */
export const cellsOfFile =
  (book: FileBook): CellsOf =>
  (name) => {
    const area = namedArea(book, name);
    if (!area) return null;
    const cells = Array.from({ length: area.bottom - area.top + 1 }, () =>
      Array.from({ length: area.right - area.left + 1 }, () => null as string | number | boolean | null),
    );
    for (const { row, column, cell } of cellsIn(book, area)) {
      if (cell.error === undefined) cells[row - 1]![column - 1] = cell.value;
    }
    return cells;
  };
