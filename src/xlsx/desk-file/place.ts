import { areaOf } from "../../cells/sheet-area";
import { InputError } from "../../core/errors";
import type { Place } from "./book";

/** How far places reach that cover whole rows or columns: as far as the desk shows them. */
export interface Extent {
  rows: number;
  columns: number;
}

const SPARE = { rows: 100, columns: 26 };

/** What the desk shows of a sheet, with room to type in. */
export const extentOf = ({ rows, columns }: Extent): Extent => ({
  rows: rows + SPARE.rows,
  columns: Math.max(columns, SPARE.columns),
});

const MOST = { rows: 1_048_576, columns: 16_384 };

/** The rectangle behind an address such as `A1`, `$A$1:$B$2`, `A:A` or `1:1`. */
export function placeOf(address: string, extent: Extent): Place {
  const area = areaOf(address, "");
  if (!area) {
    throw new InputError("the file", "hold addresses such as A1 or A1:B2", address);
  }
  const { top, left, bottom, right } = area;
  return {
    startRow: top - 1,
    endRow: (bottom === MOST.rows ? Math.max(top, extent.rows) : bottom) - 1,
    startColumn: left - 1,
    endColumn: (right === MOST.columns ? Math.max(left, extent.columns) : right) - 1,
  };
}
