import type { Entries } from "../../form/build";

const time = (hours: number, minutes: number): number => (hours * 60 + minutes) / 1440;

/** The invented nursery's pump, hours and eight blocks. */
export const PROGRAM_EXAMPLE: Entries = {
  Program_Month: 7,
  Pump_Flow_Lmin: 200,
  Change_Over_s: 30,
  Controller_Step_min: 1,
  Day_Limit_kL: 90,
  Tank_kL: 45,
  Tank_Refill_Lmin: 60,
  Program_Windows: [
    [time(20, 0), time(23, 0)],
    [time(3, 0), time(4, 30)],
  ],
  Program_Apart: [["block 1", "block 2"]],
  Program_Blocks: [
    ["block 1", "tubes 50", 820, 9.5, 1.2, "", "", 20, ""],
    ["block 2", "tubes 50", 700, 9.5, 1.25, "", "", 20, ""],
    ["block 3", "herbs 140", 720, 10.5, 1.3, "", "", 25, ""],
    ["block 4", "herbs 140", 760, 12, 1.35, "", "", 25, ""],
    ["block 5", "shrubs 190", 640, 11, 1.45, "", "", 30, ""],
    ["block 6", "natives 200", 560, 13, 1.5, "", "", 30, ""],
    ["block 9", "shrubs 190", 360, 11.6, 1.38, "", "", 30, 83.5],
    ["block 8", "trees 400", 620, 15, 1.6, "", "", 40, ""],
  ],
};
