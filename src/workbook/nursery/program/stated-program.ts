import type { Area } from "../../../cells/area";
import type { Cell } from "../../../cells/cell";
import { columnLetters, columnNumber } from "../../../cells/letters";

/** A cell as it is, and where: `Program!D12`. */
export interface PlacedCell {
  value: Cell;
  place: string;
}

export const SETTINGS = {
  month: "Program_Month",
  pump: "Pump_Flow_Lmin",
  changeOver: "Change_Over_s",
  step: "Controller_Step_min",
  limit: "Day_Limit_kL",
  tank: "Tank_kL",
  refill: "Tank_Refill_Lmin",
} as const;
export const TABLES = {
  windows: "Program_Windows",
  apart: "Program_Apart",
  blocks: "Program_Blocks",
  groups: "Demand_Groups",
  depths: "Demand_Depths",
  takeUps: "Demand_Take_Up_mm",
} as const;

/** Everything that the sheets say about the night. */
export type ProgramSheet = Record<keyof typeof SETTINGS, PlacedCell> & Record<keyof typeof TABLES, PlacedCell[][]>;

/** The names whose cells it is read from. */
export const PROGRAM_NAMES: readonly string[] = [...Object.values(SETTINGS), ...Object.values(TABLES)];

/** What the sheets say, from the cells behind each name. */
export const programSheetOf = (cellsOf: (name: string) => PlacedCell[][]): ProgramSheet =>
  Object.fromEntries([
    ...Object.entries(SETTINGS).map(([key, name]) => [key, cellsOf(name)[0]![0]!]),
    ...Object.entries(TABLES).map(([key, name]) => [key, cellsOf(name)]),
  ]) as ProgramSheet;

/** The cells of an area with their places. */
export function stated(area: Area, cells: readonly (readonly Cell[])[]): PlacedCell[][] {
  const [, letters = "", row = ""] = /^([A-Z]+)(\d+)/.exec(area.address) ?? [];
  const sheet = area.sheet.includes(" ") ? `'${area.sheet}'` : area.sheet;
  return cells.map((line, i) =>
    line.map((value, j) => ({
      value: typeof value === "string" && value.trim() === "" ? null : value,
      place: `${sheet}!${columnLetters(columnNumber(letters) + j)}${Number(row) + i}`,
    })),
  );
}
