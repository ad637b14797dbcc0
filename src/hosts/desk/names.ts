import { IDefinedNamesService, type IDefinedNamesServiceParam } from "@univerjs/preset-sheets-core";
import type { Area } from "../../cells/area";
import { plainAddress } from "../../cells/letters";
import { bookOf, type Grid } from "./grid";

/** The scope of a name of the whole workbook. */
export const WHOLE_BOOK = "AllDefaultWorkbook";
const REFERENCE = /^=?(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/i;

/** A defined name of the whole workbook. */
interface DeskName {
  name: string;
  /** Where it leads; null where that is no range. */
  area: Area | null;
  /** True when its cells are gone. */
  lost: boolean;
}

function areaOf(reference: string): Area | null {
  const parts = REFERENCE.exec(reference);
  return parts && { sheet: parts[1]?.replaceAll("''", "'") ?? parts[2]!, address: plainAddress(parts[3]!) };
}

/** The defined names of the whole workbook as the grid keeps them. */
export function bookNames(grid: Grid): IDefinedNamesServiceParam[] {
  const all = grid.injector.get(IDefinedNamesService).getDefinedNameMap(bookOf(grid).getId()) ?? {};
  return Object.values(all).filter(({ localSheetId }) => localSheetId === WHOLE_BOOK);
}

export const definedNames = (grid: Grid): DeskName[] =>
  bookNames(grid).map(({ name, formulaOrRefString: reference }) => ({
    name,
    area: areaOf(reference),
    lost: reference.includes("#REF!"),
  }));

/** Finds the cells of names, as the names are now. */
export function namesNow(grid: Grid): (name: string) => Area | null {
  const all = new Map(bookNames(grid).map((one) => [one.name.toLowerCase(), one.formulaOrRefString]));
  return (name) => {
    const reference = all.get(name.toLowerCase());
    return reference === undefined ? null : areaOf(reference);
  };
}
