import { AUDIT_SHEETS } from "../../workbook/audit/audit";
import { ownSheet } from "../looks/sheets/own-sheet";
import { formulaGrid, namedAreas } from "../native/formula-cells";

/** Takes the audit's own sheets apart one after the other, so that the first check need not; `pause` is called between them. */
export async function readied(pause: () => Promise<void>): Promise<void> {
  namedAreas(AUDIT_SHEETS);
  for (const spec of AUDIT_SHEETS) {
    await pause();
    formulaGrid(spec);
    ownSheet(spec, AUDIT_SHEETS);
  }
}
