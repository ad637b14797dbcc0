import { plainAddress } from "./address";
import { bookOf, type Grid } from "./desk-grid";
import type { Area } from "./host";

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

export const definedNames = (grid: Grid): DeskName[] =>
  bookOf(grid)
    .getDefinedNames()
    .filter((one) => one.isWorkbookScope())
    .map((one) => {
      const reference = one.getFormulaOrRefString();
      return { name: one.getName(), area: areaOf(reference), lost: reference.includes("#REF!") };
    });

export const named = (grid: Grid, name: string): Area | null =>
  definedNames(grid).find((one) => one.name.toLowerCase() === name.toLowerCase())?.area ?? null;
