import type { BookName } from "../desk-file/book";
import { checkParts, openPackage } from "./package";

/** The names that a workbook file brings along. */
export interface BookContents {
  sheets: string[];
  /** Defined names of the whole workbook. */
  names: BookName[];
}

/** Reads which sheets and defined names an .xlsx file holds. */
export function bookContents(file: Uint8Array): BookContents {
  const { parts, main, sheets, names } = openPackage(file);
  checkParts(parts, new Set([main]));
  return {
    sheets: sheets.map(({ name }) => name),
    names: names
      .filter(({ name, local }) => local === undefined && !name.startsWith("_xlnm."))
      .map(({ name, text }) => ({ name, reference: text })),
  };
}

const among = (one: string, others: string[]): boolean =>
  others.some((other) => other.toLowerCase() === one.toLowerCase());

/** Throws where a sheet or a defined name of a file has a name that the open workbook uses already. */
export function refuseTaken(file: BookContents, sheets: string[], names: string[]): void {
  const sheet = file.sheets.find((one) => among(one, sheets));
  if (sheet !== undefined) {
    throw new Error(`There is already a sheet "${sheet}" in this workbook. Rename or delete it, and start again`);
  }
  const name = file.names.find((one) => among(one.name, names))?.name;
  if (name !== undefined) {
    throw new Error(`The name ${name} is already defined in this workbook. Rename or delete it, and start again`);
  }
}
