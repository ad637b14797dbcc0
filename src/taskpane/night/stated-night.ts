import type { Cell } from "../../cells/cell";
import type { Host } from "../../hosts/host";
import { programOf, type StatedProgram } from "../../workbook/nursery/program/entries";
import type { ProgramSheet } from "../../workbook/nursery/program/stated-program";
import { readProgramSheet } from "./program-sheet";
import { readLines } from "./start-times";

/** What the sheets Program, Demand and Start times hold. */
export interface StatedNight {
  /** Null where the workbook has no such sheets. */
  sheet: ProgramSheet | null;
  stated: StatedProgram | null;
  /** The lines of Start times; null where there is no such sheet. */
  lines: Cell[][] | null;
}

export async function readStatedNight(host: Host): Promise<StatedNight> {
  const sheet = await readProgramSheet(host);
  return { sheet, stated: sheet && programOf(sheet), lines: await readLines(host) };
}
