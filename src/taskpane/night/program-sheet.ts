import {
  PROGRAM_NAMES,
  type ProgramSheet,
  programSheetOf,
  stated,
} from "../../workbook/nursery/program/stated-program";
import type { Reading } from "../workbook/reading";

/** What the sheets Program and Demand hold; null where the workbook has no Program. */
export const PROGRAM_SHEET: Reading<ProgramSheet | null> = {
  wants: { names: PROGRAM_NAMES },
  read: (snapshot) => {
    if (PROGRAM_NAMES.some((name) => !snapshot.named(name))) return null;
    return programSheetOf((name) => {
      const { area, cells } = snapshot.named(name)!;
      return stated(area, cells);
    });
  },
};
