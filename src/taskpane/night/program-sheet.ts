import {
  type PlacedCell,
  type ProgramSheet,
  SETTINGS,
  stated,
  TABLES,
} from "../../workbook/nursery/program/stated-program";
import type { Reading } from "../workbook/reading";

const NAMES: readonly string[] = [...Object.values(SETTINGS), ...Object.values(TABLES)];

/** What the sheets Program and Demand hold; null where the workbook has no Program. */
export const PROGRAM_SHEET: Reading<ProgramSheet | null> = {
  wants: { names: NAMES },
  read: (snapshot) => {
    if (NAMES.some((name) => !snapshot.named(name))) return null;
    const cells = (name: string): PlacedCell[][] => {
      const { area, cells } = snapshot.named(name)!;
      return stated(area, cells);
    };
    return Object.fromEntries([
      ...Object.entries(SETTINGS).map(([key, name]) => [key, cells(name)[0]![0]!]),
      ...Object.entries(TABLES).map(([key, name]) => [key, cells(name)]),
    ]) as ProgramSheet;
  },
};
