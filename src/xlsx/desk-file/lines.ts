import { isMain } from "../parts/namespaces";
import { childOf, isOn, type XmlElement } from "../parts/xml-tree";
import type { BookSheet } from "./book";
import type { ReadSheet } from "./limits/desk-limits";
import type { Extent } from "./place";

const PIXELS_A_CHARACTER = 7;
const CELL_PADDING_PX = 5;
const PIXELS_A_POINT = 4 / 3;
/** The widest column [characters] and the highest row [points] that spreadsheet programs know. */
const MOST = { characters: 255, points: 409.5 };

const USUAL = { characters: 8.43, points: 15 };

/** A size that a file states; undefined for none, and for one that nothing can have. */
function sizeIn(given: string | undefined, most: number): number | undefined {
  const size = Number.parseFloat(given ?? "");
  return size > 0 ? Math.min(size, most) : undefined;
}

const columnPixels = (characters: number): number => Math.round(characters * PIXELS_A_CHARACTER + CELL_PADDING_PX);

const rowPixels = (points: number): number => Math.round(points * PIXELS_A_POINT);

/** Width and height in pixels of columns and rows that say none. */
export function usualSize(root: XmlElement): BookSheet["usual"] {
  const given = childOf(root, isMain, "sheetFormatPr")?.given;
  return {
    width: columnPixels(sizeIn(given?.get("defaultColWidth"), MOST.characters) ?? USUAL.characters),
    height: rowPixels(sizeIn(given?.get("defaultRowHeight"), MOST.points) ?? USUAL.points),
  };
}

/** Widths in pixels, and which columns are hidden. */
export function columnsOf({ columns }: ReadSheet): Pick<BookSheet, "widths" | "hiddenColumns"> {
  const widths: Record<number, number> = {};
  const hiddenColumns: number[] = [];
  for (const { given } of columns) {
    const width = sizeIn(given.get("width"), MOST.characters);
    for (let column = Number(given.get("min")) - 1; column < Number(given.get("max")); column += 1) {
      if (width !== undefined) widths[column] = columnPixels(width);
      if (isOn(given.get("hidden"))) hiddenColumns.push(column);
    }
  }
  return { widths, hiddenColumns };
}

/** Heights in pixels, and which rows are hidden: some programs write the last row that a sheet can have, which is far off. */
export function rowsOf({ rows }: ReadSheet, extent: Extent): Pick<BookSheet, "heights" | "hiddenRows"> {
  const heights: Record<number, number> = {};
  const hiddenRows: number[] = [];
  for (const { number, given } of rows) {
    if (number > extent.rows) continue;
    const height = sizeIn(given.get("ht"), MOST.points);
    if (height !== undefined) heights[number - 1] = rowPixels(height);
    if (isOn(given.get("hidden"))) hiddenRows.push(number - 1);
  }
  return { heights, hiddenRows };
}
