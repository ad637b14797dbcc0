import { InputError } from "../../../core/errors";
import type { FilePackage } from "../../parts/package";
import type { ReadSheet } from "./desk-limits";

/** A range of whole columns or rows, or one that ends far below; the sheet that it names comes first. */
const LONG_RANGE =
  /(?:('(?:[^']|'')+'|[\w.]+)!)?(?:\$?\b[A-Z]{1,3}:\$?[A-Z]{1,3}\b|\$?\b[A-Z]{1,3}\$?\d+:\$?[A-Z]{1,3}\$?\d{6,7}\b|\$?\b\d+:\$?\d{6,7}\b)/gi;
/** How many empty rows the grid still goes through for all formulas together; it takes some seconds a million. */
const MOST_EMPTY = 1_500_000;

const unquoted = (name: string): string => name.replace(/^'|'$/g, "").replaceAll("''", "'").toLowerCase();

/** How many rows above a sheet's last cell hold nothing. */
function emptyRows({ cells, rows, size }: ReadSheet): number {
  const filled = new Set(rows.filter(({ openEnd, closeStart }) => closeStart > openEnd).map(({ number }) => number));
  return cells.size === 0 ? 0 : size.rows - filled.size;
}

/** How often the formulas of a file read whole columns of each sheet, by its name in small letters. */
function longRanges(sheets: readonly [name: string, read: ReadSheet][]): Map<string, number> {
  const found = new Map<string, number>();
  for (const [own, { cells }] of sheets) {
    for (const { formula = "" } of cells.values()) {
      if (!formula.includes(":")) continue;
      for (const [, named] of formula.matchAll(LONG_RANGE)) {
        const name = named === undefined ? own.toLowerCase() : unquoted(named);
        found.set(name, (found.get(name) ?? 0) + 1);
      }
    }
  }
  return found;
}

/** Refuses a sheet with a cell far below the rest whose empty rows formulas would go through again and again. */
export function checkFarCells({ sheets }: FilePackage, all: ReadonlyMap<string, ReadSheet>): void {
  const read = sheets.flatMap(({ name, part }): [string, ReadSheet][] => {
    const found = all.get(part);
    return found ? [[name, found]] : [];
  });
  const ranges = longRanges(read);
  for (const [name, sheet] of read) {
    if ((ranges.get(name.toLowerCase()) ?? 0) * emptyRows(sheet) <= MOST_EMPTY) continue;
    const rule = "hold no cell far below the rest of a sheet whose whole columns many formulas read (clear that cell)";
    const last = [...sheet.cells.keys()].find((address) => address.endsWith(String(sheet.size.rows)));
    throw new InputError("the file", rule, last ?? `row ${sheet.size.rows}`, { place: name });
  }
}
