import { areaOf, type SheetArea } from "../../cells/sheet-area";
import { InputError } from "../../core/errors";
import type { XmlElement } from "../parts/xml-tree";
import type { Place } from "./book";

/** How far the desk shows a sheet: room to type in included. Checks and formats reach no further. */
export interface Extent {
  rows: number;
  columns: number;
}

const SPARE = { rows: 100, columns: 26 };

/** How far that is where cells are held in these rows and columns. */
export const extentOf = ({ rows, columns }: Extent): Extent => ({
  rows: rows + SPARE.rows,
  columns: Math.max(columns, SPARE.columns),
});

/** The text of a child; newer parts of a file hold it one level deeper. */
export function textIn({ children }: XmlElement, name: string): string | undefined {
  const found = children.find((one) => one.name === name);
  return found && [found, ...found.children].map(({ text }) => text.trim()).join("");
}

/** The addresses of the cells that a check or a format is for. */
export const addressesOf = (element: XmlElement): string =>
  element.given.get("sqref") ?? textIn(element, "sqref") ?? "";

function areaAt(address: string): SheetArea {
  const area = areaOf(address, "");
  if (!area) {
    throw new InputError("the file", "hold addresses such as A1 or A1:B2", address);
  }
  return area;
}

/**
 * The rectangles behind addresses such as `A1 $A$1:$B$2 A:A 1:1`, as far as the desk shows the sheet. The first is kept
 * wherever it lies, since formulas are written for its first cell.
 */
export function placesOf(addresses: string, { rows, columns }: Extent): Place[] {
  const areas = addresses.split(/\s+/).filter(Boolean).map(areaAt);
  return areas
    .filter(({ top, left }, i) => i === 0 || (top <= rows && left <= columns))
    .map(({ top, left, bottom, right }) => ({
      startRow: top - 1,
      endRow: Math.min(bottom, Math.max(top, rows)) - 1,
      startColumn: left - 1,
      endColumn: Math.min(right, Math.max(left, columns)) - 1,
    }));
}
