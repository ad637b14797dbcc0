import { columnLetters, columnNumber } from "../hosts/address";
import type { Area, Cell, Host } from "../hosts/host";

/** A cell as it stands, and where: `Program!D12`. */
export interface Stated {
  value: Cell;
  place: string;
}

const SETTINGS = {
  month: "Program_Month",
  pump: "Pump_Flow_Lmin",
  changeOver: "Change_Over_s",
  step: "Controller_Step_min",
  limit: "Day_Limit_kL",
  tank: "Tank_kL",
  refill: "Tank_Refill_Lmin",
} as const;
const TABLES = {
  windows: "Program_Windows",
  apart: "Program_Apart",
  blocks: "Program_Blocks",
  groups: "Demand_Groups",
  depths: "Demand_Depths",
  takeUps: "Demand_Take_Up_mm",
} as const;

/** Everything that the sheets say about the night. */
export type ProgramSheet = Record<keyof typeof SETTINGS, Stated> & Record<keyof typeof TABLES, Stated[][]>;

/** The cells of an area with their places. */
export function stated(area: Area, cells: readonly (readonly Cell[])[]): Stated[][] {
  const [, letters = "", row = ""] = /^([A-Z]+)(\d+)/.exec(area.address) ?? [];
  const sheet = area.sheet.includes(" ") ? `'${area.sheet}'` : area.sheet;
  return cells.map((line, i) =>
    line.map((value, j) => ({
      value: typeof value === "string" && value.trim() === "" ? null : value,
      place: `${sheet}!${columnLetters(columnNumber(letters) + j)}${Number(row) + i}`,
    })),
  );
}

/** Reads the sheets Program and Demand; null where the workbook has no Program. */
export async function readProgramSheet(host: Host): Promise<ProgramSheet | null> {
  const areas = new Map<string, Area>();
  for (const name of [...Object.values(SETTINGS), ...Object.values(TABLES)]) {
    const area = await host.named(name);
    if (!area) return null;
    areas.set(name, area);
  }
  const read = async (name: string) => {
    const area = areas.get(name)!;
    return stated(area, await host.read(area));
  };
  const found: Record<string, Stated | Stated[][]> = {};
  for (const [key, name] of Object.entries(SETTINGS)) found[key] = (await read(name))[0]![0]!;
  for (const [key, name] of Object.entries(TABLES)) found[key] = await read(name);
  return found as ProgramSheet;
}
