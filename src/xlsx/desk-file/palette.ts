import type { Worksheet } from "@cj-tech-master/excelts";
import type { Look } from "./book";
import type { ReadSheet } from "./limits/desk-limits";
import { lookOf } from "./look";

/** What a style of a file gives the cells that have it. */
export interface Dress {
  look: Look | undefined;
  unlocked: boolean;
}

/** The numbers of the styles that a sheet's cells, rows and columns have, each once. */
export function stylesOf({ cells, rows, columns }: ReadSheet): string[] {
  const found = new Set<string | undefined>();
  for (const { given } of cells.values()) found.add(given.get("s"));
  for (const { style } of rows) if (style !== undefined) found.add(String(style));
  for (const { given } of columns) found.add(given.get("style"));
  return [...found].filter((style) => style !== undefined);
}

/** A sheet that holds one cell a style: all that the grid's library sees of a file's cells. */
export const paletteRows = (styles: readonly string[]): string =>
  styles.map((style, i) => `<row r="${i + 1}"><c r="A${i + 1}" s="${style}"/></row>`).join("");

/** The styles behind the numbers, read from such a sheet. */
export function paletteOf(sheet: Worksheet, styles: readonly string[]): Map<string, Dress> {
  return new Map(
    styles.map((style, i) => {
      const cell = sheet.getCell(i + 1, 1);
      return [style, { look: lookOf(cell), unlocked: cell.protection?.locked === false }];
    }),
  );
}
