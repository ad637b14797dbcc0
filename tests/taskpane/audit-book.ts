import type { Area } from "../../src/cells/area";
import type { Input } from "../../src/cells/cell";
import { type MemoryHost, memoryHost } from "../support/memory-host";

/** Cells of a small audit workbook by their defined names: sheet, address and what is there. */
const CELLS: Record<string, [sheet: string, address: string, input: Input]> = {
  Site_Name: ["Block", "C4", ""],
  Block_Name: ["Block", "C5", ""],
  Bed_Width_m: ["Block", "C8", ""],
  Bed_Length_m: ["Block", "C9", ""],
  Can_Mouth_mm: ["Cans", "C4", ""],
  Test_Minutes: ["Cans", "C5", ""],
  Readings_Problem: ["Cans", "C6", ""],
  Result_MAR: ["Results", "C4", "needs readings"],
  Weighted_MAR: ["Results", "D4", "needs readings"],
  Verdict_MAR: ["Results", "E4", "needs readings"],
  Used_MAR: ["Results", "F4", ""],
  By_Area: ["Results", "C10", ""],
  Positions_Uneven: ["Results", "C11", ""],
  Depth_Typed_mm: ["Run time", "C3", ""],
  Net_Depth_mm: ["Run time", "C4", "needs a depth"],
  Run_Multiplier: ["Run time", "C7", "needs readings"],
  Pulse_Count: ["Run time", "C10", "needs a run time"],
  Pulse_min: ["Run time", "C11", "needs a run time"],
  Pulses_Elapsed_min: ["Run time", "C12", "needs a run time"],
  Multiplier_Basis: ["Run time", "C5", "driest can"],
  Share_Wanted: ["Run time", "C6", 0.9],
  Result_Run_Time_min: ["Run time", "C9", "needs readings"],
};

/** What a test puts there instead, by name, and cells by address. */
export interface Changed {
  named?: Record<string, Input>;
  cells?: Record<string, Record<string, Input>>;
  /** Whether there are cells for the places of the cans. */
  placed?: boolean;
}

export const cellOf = (name: string): Area => {
  const [sheet, address] = CELLS[name]!;
  return { sheet, address };
};

/** A workbook with the sheets and names of an audit, four places for cans, and nothing filled in. */
export function auditHost({ named = {}, cells = {}, placed = false }: Changed = {}): MemoryHost {
  const sheets: Record<string, Record<string, Input>> = {
    Block: { A1: "Block" },
    Cans: {},
    Results: {},
    "Run time": {},
  };
  for (const [name, [sheet, address, input]] of Object.entries(CELLS)) {
    const value = named[name] ?? input;
    if (value !== "") sheets[sheet]![address] = value;
  }
  for (const [sheet, added] of Object.entries(cells)) sheets[sheet] = { ...sheets[sheet], ...added };
  const names = Object.fromEntries(Object.keys(CELLS).map((name) => [name, cellOf(name)]));
  const on = (address: string) => ({ sheet: "Cans", address });
  const places = placed ? { Cans_Across_m: on("B9:C9"), Cans_Along_m: on("A10:A11") } : {};
  return memoryHost(sheets, { ...names, ...places, Can_Checks: on("A20:D25"), Cans_Readings: on("B10:C11") });
}
