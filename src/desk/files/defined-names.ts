import { WHOLE_BOOK } from "../../hosts/desk/names";
import type { BookName } from "../../xlsx/desk-file/book";

/** Defined names of the whole workbook as the grid loads them. */
export function definedNames(names: BookName[]): { name: string; data: string } {
  const entries = names.map(({ name, reference }) => [
    name,
    { id: name, name, formulaOrRefString: reference, localSheetId: WHOLE_BOOK },
  ]);
  return { name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(Object.fromEntries(entries)) };
}
