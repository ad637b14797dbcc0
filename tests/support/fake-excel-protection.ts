import type { Rectangle } from "./fake-excel-address";
import { type Member, Refusal } from "./fake-excel-objects";
import type { Sheet } from "./fake-excel-sheet";
import type { Workbook } from "./fake-excel-workbook";

/** Refuses to add or remove sheets where the workbook's structure is protected. */
export function refuseStructure({ structureProtected }: Workbook): void {
  if (structureProtected) throw new Refusal("AccessDenied", "You cannot perform the requested operation.");
}

/** What a sheet allows, and whether it is protected at all; a change of that empties Excel's own Undo. */
export function protection(sheet: Sheet, workbook: Workbook): Member {
  return {
    protected: sheet.protection !== null,
    options: sheet.protection?.options ?? {},
    protect: (options: Record<string, unknown>, password?: string) => {
      if (sheet.protection) throw new Refusal("AccessDenied", "You cannot perform the requested operation.");
      sheet.protection = { options, password: password || undefined };
      workbook.ownUndo.length = 0;
    },
    unprotect: (password?: string) => {
      if (sheet.protection?.password && sheet.protection.password !== password) {
        throw new Refusal("AccessDenied", "You cannot perform the requested operation.");
      }
      sheet.protection = null;
      workbook.ownUndo.length = 0;
    },
  };
}

/** Refuses a change where the sheet is protected; in an area only where a cell of it is locked. */
export function refuseProtected(sheet: Sheet, area?: Rectangle): void {
  if (!sheet.protection) return;
  const free = area && sheet.grid(area, (row, column) => sheet.unlocked.has(`${row},${column}`)).flat();
  if (!free?.every(Boolean)) throw new Refusal("AccessDenied", "You cannot perform the requested operation.");
}
