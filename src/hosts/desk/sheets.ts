import { bookContents, refuseTaken } from "../../xlsx/parts/book-contents";
import type { DeskFiles } from "./files";
import { bookOf, type Grid, sheetOf } from "./grid";
import { definedNames } from "./names";

export const sheetNames = (grid: Grid): string[] =>
  bookOf(grid)
    .getSheets()
    .map((sheet) => sheet.getSheetName());

/** Room for a table of a function over a whole bed: what it fills past a sheet's end is not shown. */
const ROOM = { rowCount: 1000, columnCount: 200 };

export function addSheet(grid: Grid, name: string): void {
  const active = bookOf(grid).getActiveSheet();
  bookOf(grid).insertSheet(name, { sheet: ROOM });
  bookOf(grid).setActiveSheet(active);
}

/** Removes a sheet, and the names that led there. */
export function removeSheet(grid: Grid, sheet: string): void {
  const gone = definedNames(grid).filter(({ area }) => area?.sheet.toLowerCase() === sheet.toLowerCase());
  bookOf(grid).deleteSheet(sheetOf(grid, sheet));
  for (const { name } of gone) bookOf(grid).deleteDefinedName(name);
}

/** Adds the sheets of a file at the end; names whose cells are gone don't block it. */
export async function insertSheets(grid: Grid, files: DeskFiles, file: Uint8Array): Promise<string> {
  files.refuseSheets();
  const contents = bookContents(file);
  const names = definedNames(grid);
  const live = names.filter(({ lost }) => !lost).map(({ name }) => name);
  refuseTaken(contents, sheetNames(grid), live);
  const brought = new Set(contents.names.map(({ name }) => name.toLowerCase()));
  for (const { name } of names) if (brought.has(name.toLowerCase())) bookOf(grid).deleteDefinedName(name);
  await files.insert(file);
  return "";
}
