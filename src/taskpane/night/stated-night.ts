import type { Cell } from "../../cells/cell";
import { programOf, type StatedProgram } from "../../workbook/nursery/program/entries";
import type { ProgramSheet } from "../../workbook/nursery/program/stated-program";
import type { Reading } from "../workbook/reading";
import { PROGRAM_SHEET } from "./program-sheet";
import { START_TIMES } from "./start-times";

/** What the sheets Program, Demand and Start times hold. */
export interface StatedNight {
  /** Null where the workbook has no such sheets. */
  sheet: ProgramSheet | null;
  stated: StatedProgram | null;
  /** The lines of Start times; null where there is no such sheet. */
  lines: Cell[][] | null;
}

export const STATED_NIGHT: Reading<StatedNight> = {
  wants: { names: [...PROGRAM_SHEET.wants.names!, START_TIMES] },
  read: (snapshot) => {
    const sheet = PROGRAM_SHEET.read(snapshot);
    return { sheet, stated: sheet && programOf(sheet), lines: snapshot.named(START_TIMES)?.cells ?? null };
  },
};
