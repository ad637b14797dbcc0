import { dayOf } from "../../cells/day-number";
import type { Entries } from "../form/build";

const time = (hours: number, minutes: number): number => (hours * 60 + minutes) / 1440;
const column = (...values: readonly (string | number)[]) => values.map((value) => [value]);

const BLOCK: Entries = {
  Site_Name: "Example Nursery (invented)",
  Licence: "none, invented",
  Meter: "M 3 (invented)",
  Block_Name: "block 7",
  Auditor: "nobody, an invented test",
  Test_Date: dayOf("2026-11-10"),
  Test_State: "as found",
  Walk_Through: "mended",
  Walk_Found: "two heads leaned",
  Canopy_Over: "no",
  Audit_Remark:
    "An invented example: no such nursery, block or test exists. Type over it, or start from the empty workbook.",
  Crop: "mixed shrubs",
  Pot_Shape: "round",
  Pot_Top_mm: 190,
  Pot_Spacing_mm: 240,
  Cover: "open",
  Bed_Width_m: 12,
  Bed_Length_m: 16,
  Bed_Bearing_deg: 180,
  Beds_On_Valve: 2,
  Beds_Tested: 1,
  Beds_Not_Tested: "bed 7 b (invented)",
  Head_Count: 12,
  Head_Model: "head on a riser",
  Nozzle: "grey, 1.6 mm",
  Head_Layout: "inset",
  Head_Spacing_m: 4,
  Row_Spacing_m: 4,
  Head_Throw_m: 5,
  Supply_Side: "top",
  Head_Arc: "full circles",
  Riser_m: 1.2,
  Pressure_Regulated: "no",
  Water_Source: "dam",
  Runoff_Returned: "no",
  Run_Minutes_Now: 110,
  Runs_A_Year_Now: 300,
  Metered_kL: 2700,
  Gauge_Checked: dayOf("2026-08-03"),
  Cylinder_Checked: dayOf("2026-08-03"),
  Meter_Checked: dayOf("2025-05-20"),
};

/** Readings of the simulated bed in tests/support/example-bed.ts. */
const CANS: Entries = {
  Can_Mouth_mm: 100,
  Test_Minutes: 20,
  Test_Start: time(6, 40),
  Test_Stop: time(7, 0),
  Cans_Across_m: [[0.5, 3.25, 6, 8.75, 11.5]],
  Cans_Along_m: column(0.5, 3.5, 6.5, 9.5, 12.5, 15.5),
  Cans_Readings: [
    [7, 18, 18, 18, 8],
    [18, 35, 29, 39, 18],
    [18, 30, 33, 33, 18],
    [18, 30, 32, 31, 17],
    [18, 37, 28, 35, 17],
    [8, 18, 17, 18, 8],
  ],
};

/** A column of the twelve heads, with what was measured at some of them. */
const atHeads = (measured: Readonly<Record<number, string | number>>) =>
  Array.from({ length: 12 }, (_, index) => [measured[index + 1] ?? ""]);

const HEADS: Entries = {
  Head_Place: atHeads({ 2: "first on the line", 5: "middle", 8: "highest", 11: "last on the line", 12: "far corner" }),
  Pressure_Before_kPa: atHeads({ 2: 215, 5: 205, 8: 196, 11: 190, 12: 188 }),
  Pressure_After_kPa: atHeads({ 2: 213, 5: 204, 8: 195, 11: 188, 12: 187 }),
  Bucket_mL: atHeads({ 2: 1730, 5: 1690, 8: 1650, 11: 1625, 12: 1615 }),
  Bucket_s: atHeads({ 2: 30, 5: 30, 8: 30, 11: 30, 12: 30 }),
  Maker_Flow_Lh: 200,
  Maker_Pressure_kPa: 200,
  Wind_Time: column(time(6, 40), time(6, 45), time(6, 50), time(6, 55)),
  Wind_ms: column(0.6, 0.9, 1.2, 1),
  Wind_From: column("SE", "SE", "E", "SE"),
  Meter_Start_kL: 4812.31,
  Meter_Stop_kL: 4813.95,
};

const ACTIONS: Entries = {
  Actions_Table: [
    [
      "Heads are half a spacing inside the bed: the edges are dry",
      "Move the outer rows onto the border, matched part circles",
      "grower",
      dayOf("2027-02-26"),
      3700,
      "no",
    ],
    ["Pressure falls along the line", "Loop the lateral", "irrigation fitter", dayOf("2027-02-26"), 840, "no"],
    ["Two heads leaned", "Straightened", "grower", dayOf("2026-11-12"), 0, "yes"],
  ],
};

const LIMITS: Entries = {
  Limit_Set: "General",
  Limits_Own: column("", "", "", "", "<= 1.3"),
  Limits_Own_Source: [[""], [""], [""], [""], ["the example's own aim", 2026, "typed, not from a set"]],
};

const WATER: Entries = {
  Pot_Use_mL: 400,
  Capture_Factor: 1.5,
  Multiplier_Basis: "low quarter",
  Leaching_Fraction: 0.1,
  Leaching_Rule: "larger",
  Take_Up_mm: 4,
  Rest_min: 30,
  Water_Days: 300,
  Water_Price: 2.6,
  Water_Price_Low: 1.3,
  Water_Price_High: 3.9,
  In_Bed_Share: 0.74,
  Pump_kPa: 320,
  Pump_Efficiency: 0.55,
  Motor_Efficiency: 0.88,
  Power_Tariff: 0.28,
  After_SC: 1.2,
  After_MAR: 10.6,
  After_In_Bed_Share: 0.85,
  After_Capital: 4540,
  Waters_To_Driest: "yes",
};

const COST: Entries = {
  Step_Ends: column(1000),
  Step_Prices: [
    [1.3, 2.6, 3.9],
    [1.9, 3.4, 5],
  ],
  Power_Tariff_Low: 0.24,
  Power_Tariff_High: 0.34,
  Band_Hours: [
    [time(22, 0), time(7, 0)],
    [time(7, 0), time(22, 0)],
  ],
  Band_Prices: [
    [0.16, 0.19, 0.24],
    [0.28, 0.34, 0.42],
  ],
  Run_Start: time(5, 30),
  Fertiliser_mgL: 420,
  Fertiliser_Price_Low: 2.2,
  Fertiliser_Price: 3.4,
  Fertiliser_Price_High: 4.8,
  Labour_Hours: 46,
  After_Labour_Hours: 44,
  Wage: 38,
  Plants_Lost: 55,
  After_Plants_Lost: 45,
  Plant_Worth_Low: 5,
  Plant_Worth: 7.5,
  Plant_Worth_High: 11,
  Upgrade_Labour: 600,
  Upgrade_Grant: 500,
  Upgrade_Life_years: 8,
  Upgrade_Rate: 0.07,
};

/** What is typed into the example audit: an invented block that says so. */
export const EXAMPLE_ENTRIES: Entries = { ...BLOCK, ...CANS, ...HEADS, ...WATER, ...COST, ...ACTIONS, ...LIMITS };
