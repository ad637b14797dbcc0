import { strFromU8, unzipSync } from "fflate";
import type { BookName } from "../desk-file/book";

const WORKBOOK_PART = "xl/workbook.xml";
const LARGEST_PART_BYTES = 10_000_000;

/** The names that a workbook file brings along. */
export interface BookContents {
  sheets: string[];
  /** Defined names of the whole workbook. */
  names: BookName[];
}

function workbookPart(file: Uint8Array): string {
  let size = 0;
  try {
    const parts = unzipSync(file, {
      filter: ({ name, originalSize }) => {
        if (name === WORKBOOK_PART) size = originalSize;
        return name === WORKBOOK_PART && originalSize <= LARGEST_PART_BYTES;
      },
    });
    const part = parts[WORKBOOK_PART];
    if (part) return strFromU8(part);
  } catch (cause) {
    throw new Error("the file is not an .xlsx workbook, or it is damaged", { cause });
  }
  if (size > 0) throw new Error("the file is not a workbook of usual size: its list of sheets is over 10 MB");
  throw new Error("the file is not an .xlsx workbook");
}

/** Reads which sheets and defined names are in an .xlsx file, and nothing else of it. */
export function bookContents(file: Uint8Array): BookContents {
  const part = new DOMParser().parseFromString(workbookPart(file), "application/xml");
  const all = (tag: string) => [...part.getElementsByTagNameNS("*", tag)];
  return {
    sheets: all("sheet").map((sheet) => sheet.getAttribute("name") ?? ""),
    names: all("definedName")
      .filter((name) => !name.hasAttribute("localSheetId"))
      .map((name) => ({ name: name.getAttribute("name") ?? "", reference: name.textContent ?? "" }))
      .filter(({ name }) => !name.startsWith("_xlnm.")),
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
