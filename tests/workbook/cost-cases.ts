import type { Entries } from "../../src/workbook/form/build";
import { randomNumbers } from "../support/random";

const STEPS: Entries[] = [
  {},
  {
    Step_Ends: [[100], [250], [600]],
    Step_Prices: [
      [1, 1.4, 2],
      ["", 2.2, ""],
      [2.5, 3, 4.5],
      ["", 4, 6],
    ],
  },
  {
    Step_Ends: [[50]],
    Step_Prices: [
      ["", 0, ""],
      [0.5, 2, 3],
    ],
  },
];
const HOURS: Entries[] = [
  {},
  {
    Band_Hours: [
      ["", "", 0.25],
      ["", "", 0.75],
    ],
    Band_Prices: [
      [0.1, 0.2, 0.3],
      ["", 0.4, ""],
    ],
  },
  {
    Band_Hours: [
      [22 / 24, 7 / 24],
      [7 / 24, 16 / 24],
      [16 / 24, 20 / 24],
      [20 / 24, 22 / 24],
    ],
    Band_Prices: [
      ["", 0.18, ""],
      [0.2, 0.26, 0.3],
      ["", 0.41, 0.5],
      [0.2, 0.26, 0.3],
    ],
    Run_Start: 20.9 / 24,
  },
  { Band_Hours: [[0.5, 0.5]], Band_Prices: [["", 0.3, ""]], Run_Start: 0 },
];

/** One size of pots, whose water between them is known; and several. */
const SIZES: Entries[] = [
  {},
  { Pot_Top_mm: 190, Pot_Spacing_mm: 260, Capture_Factor: 1.4 },
  {
    Groups_Names: [["small"], ["large"]],
    Groups_Tops_mm: [[140], [250], [190]],
    Groups_Spacings_mm: [[200], [300], [220]],
    Groups_Uses_mL: [[150], [700], [""]],
    Groups_Captures: [[1.2], [""], [2]],
    Groups_Depths_mm: [[""], [""], [4]],
    Groups_Areas: [[60], [90], [30]],
  },
  // tops of one group are not known
  { Pot_Shape: "square", Groups_Depths_mm: [[3], [6]], Groups_Areas: [[1], [3]], Groups_Tops_mm: [[140], [""]] },
];

/** What is typed into an audit of 24 cans, whose mean over the driest can is `sc`. */
export const auditOf = (sc: number): Entries => ({
  Bed_Width_m: 12,
  Bed_Length_m: 15,
  Can_Mouth_mm: 100,
  Test_Minutes: 20,
  // 23 cans of x and one of 1 have the mean sc: (23 x + 1) / 24 = sc
  Cans_Readings: Array.from({ length: 4 }, (_, i) =>
    Array.from({ length: 6 }, (_, j) => (i === 0 && j === 0 ? 10 : (10 * (24 * sc - 1)) / 23)),
  ),
});

/** Audits with all kinds of prices, amounts and upgrades; the same ones every time. */
export function costAudits(count: number): Entries[] {
  const random = randomNumbers(556);
  const some = (low: number, high: number) => Math.round(1000 * (low + (high - low) * random())) / 1000;
  const maybe = (value: number) => (random() < 0.25 ? "" : value);
  return Array.from({ length: count }, (_, index): Entries => {
    const shared = index % 3 === 0 ? {} : { In_Bed_Share: some(0.4, 1), After_In_Bed_Share: maybe(some(0.4, 1)) };
    return {
      ...auditOf(some(1.1, 3)),
      Depth_Typed_mm: some(1, 9),
      Water_Days: some(50, 365),
      Leaching_Rule: ["none", "larger", "both"][index % 3]!,
      Leaching_Fraction: some(0, 0.4),
      Water_Price: some(0, 4),
      Water_Price_Low: maybe(some(0, 1)),
      Water_Price_High: maybe(some(4, 6)),
      Pump_kPa: some(100, 600),
      Pump_Efficiency: some(0.2, 0.8),
      Motor_Efficiency: some(0.6, 1),
      Power_Tariff: some(0.05, 0.5),
      Power_Tariff_Low: maybe(0.01),
      After_SC: some(1, 2),
      After_MAR: some(5, 20),
      After_Capital: maybe(some(0, 5000)),
      Waters_To_Driest: index % 5 === 4 ? "no" : "yes",
      ...STEPS[index % STEPS.length],
      ...HOURS[index % HOURS.length],
      ...SIZES[(index >> 1) % SIZES.length],
      ...(index % 7 === 3 && { Fertiliser_Water_mgL: 120 }),
      After_Energy_kWh_kL: maybe(some(0.01, 0.5)),
      Fertiliser_mgL: maybe(some(0, 900)),
      After_Fertiliser_mgL: maybe(some(0, 900)),
      Fertiliser_Price: some(1, 6),
      Labour_Hours: maybe(some(0, 200)),
      After_Labour_Hours: maybe(some(0, 100)),
      Wage: some(20, 60),
      Wage_High: maybe(70),
      Plants_Lost: maybe(Math.round(some(0, 500))),
      Plant_Worth: some(1, 30),
      Upgrade_Labour: maybe(some(0, 900)),
      Upgrade_Grant: maybe(some(0, 100)),
      Upgrade_Life_years: some(1, 30),
      Upgrade_Rate: index % 4 === 0 ? 0 : some(0.01, 0.2),
      ...shared,
    };
  });
}

const AREAS: Record<string, [rows: number, columns: number]> = {
  Step_Ends: [4, 1],
  Step_Prices: [4, 3],
  Band_Hours: [4, 3],
  Band_Prices: [4, 3],
};
const CELLS =
  "Power_Tariff_Low Power_Tariff_High Fertiliser_Price_Low Fertiliser_Price Fertiliser_Price_High Wage Wage_High Plant_Worth Run_Start After_Energy_kWh_kL Fertiliser_mgL After_Fertiliser_mgL Fertiliser_Water_mgL Labour_Hours After_Labour_Hours Plants_Lost After_Plants_Lost Upgrade_Labour Upgrade_Grant Upgrade_Life_years Upgrade_Rate Water_Price Water_Price_Low Power_Tariff After_Capital Pump_kPa Pump_Efficiency In_Bed_Share".split(
    " ",
  );

/** A full audit whose sheet Cost holds nothing but this, as if the checks had been passed over. */
export const everywhere = (value: string | number): Entries => ({
  ...auditOf(2),
  Depth_Typed_mm: 5,
  Water_Days: 300,
  After_SC: 1.5,
  After_MAR: 10,
  Waters_To_Driest: "yes",
  ...Object.fromEntries(CELLS.map((name) => [name, value])),
  ...Object.fromEntries(
    Object.entries(AREAS).map(([name, [rows, columns]]) => [
      name,
      Array.from({ length: rows }, () => Array.from({ length: columns }, () => value)),
    ]),
  ),
});
