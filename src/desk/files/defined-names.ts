import { WHOLE_BOOK } from "../../hosts/desk/names";
import type { BookName, BookSheet } from "../../xlsx/desk-file/book";
import { nameInGrid, OwnNames } from "./own-names";

type Sheet = Pick<BookSheet, "key" | "name" | "ownNames">;

/** Defined names as the grid loads them: those of the whole workbook, and those of a sheet under names of their own. */
export function definedNames(names: BookName[], sheets: readonly Sheet[] = []): { name: string; data: string } {
  const whole = names.map(({ name, reference }) => [
    name,
    { id: name, name, formulaOrRefString: reference, localSheetId: WHOLE_BOOK },
  ]);
  const own = sheets.flatMap(({ key, ownNames }) =>
    ownNames.map(({ name, reference }) => {
      const inGrid = nameInGrid(name, key);
      const given = { formulaOrRefString: reference ?? "#NAME?", localSheetId: key, hidden: true };
      return [inGrid, { id: inGrid, name: inGrid, ...given }];
    }),
  );
  return { name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(Object.fromEntries([...whole, ...own])) };
}

export const ownNamesOf = (sheets: readonly Sheet[]): OwnNames =>
  new OwnNames(
    sheets.flatMap(({ key, ownNames }) => ownNames.map(({ name }) => ({ key, name, inGrid: nameInGrid(name, key) }))),
    sheets,
  );
