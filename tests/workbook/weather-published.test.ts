import { beforeAll, describe, expect, it } from "vitest";
import type { Entries } from "../../src/workbook/form/build";
import type { SheetSpec } from "../../src/workbook/form/sheet-spec";
import { workingCell } from "../../src/workbook/nursery/weather/working";
import published from "../published/fao56-examples.json";
import { calculatedPlans, DEMAND_SHEETS, type PlanBook } from "../support/plan-book";
import { compare } from "../support/published";

const JANUARY = 0;

/** An example of FAO-56 as the January of a nursery: what it gives, and which cell must give what it prints. */
interface Example {
  number: number;
  day: number;
  entries: Entries;
  prints: [cell: string, what: string][];
}

const EXAMPLES: Example[] = [
  {
    number: 8,
    day: 246,
    entries: { Latitude_deg: -20 },
    prints: [
      ["Distance of the sun dr", "Example 8: inverse relative distance of the sun"],
      ["Declination [rad]", "Example 8: declination [rad]"],
      ["Sunset angle ωs [rad]", "Example 8: hour angle of sunset [rad]"],
      ["Radiation above the air Ra", "Example 8: Ra [MJ/m2/day]"],
      ["Daylight N [h]", "Example 9: N [h]"],
    ],
  },
  {
    number: 17,
    day: 105,
    entries: { Latitude_deg: 13 + 44 / 60, Elevation_m: 2, Weather_Typed: [[25.6, 34.8, "", "", 2, 8.5]] },
    prints: [
      ["Saturation at Tmax [kPa]", "Example 17: e(34.8) [kPa]"],
      ["Saturation at Tmin [kPa]", "Example 17: e(25.6) [kPa]"],
      ["Mean saturation es [kPa]", "Example 17: es [kPa]"],
      ["Slope Δ [kPa/°C]", "Example 17: slope of the vapour pressure curve [kPa/C]"],
      ["Air pressure P [kPa]", "Example 17: P [kPa]"],
      ["Radiation above the air Ra", "Example 17: Ra [MJ/m2/day]"],
      ["Daylight N [h]", "Example 17: N [h]"],
      ["Solar radiation Rs", "Example 17: Rs [MJ/m2/day]"],
      ["Clear sky Rso", "Example 17: Rso [MJ/m2/day]"],
    ],
  },
  {
    number: 13,
    day: 105,
    // April, between a March of 14.1 °C and a May of 18.8 °C: here January between December and February
    entries: { Weather_Typed: [[12.1, 20.1], [14.8, 22.8], ...Array(9).fill([]), [10.1, 18.1]] },
    prints: [["Soil heat G", "Example 13: G [MJ/m2/day]"]],
  },
  {
    number: 17,
    day: 105,
    // The month with March before it, 29.2 °C, and no month after. ea is given, 2.85 kPa: by eq. 17 with both humidities
    // 2 2.85 / (5.5608 + 3.2828) = 64.453 %. The example rounds on its way to 5.72: unrounded its figures give 5.716
    entries: {
      Latitude_deg: 13 + 44 / 60,
      Elevation_m: 2,
      Weather_Typed: [[25.6, 34.8, 64.453, 64.453, 2, 8.5], ...Array(10).fill([]), [25, 33.4]],
    },
    prints: [
      ["Soil heat G", "Example 17: G [MJ/m2/day]"],
      ["Net radiation Rn", "Example 17: Rn [MJ/m2/day]"],
      ["ET0, full weather [mm]", "Example 17: ETo by its equation [mm/day]"],
    ],
  },
  {
    number: 18,
    day: 187,
    entries: { Latitude_deg: 50.8, Elevation_m: 100, Weather_Typed: [[12.3, 21.5, 63, 84, 2.078, 9.25]] },
    prints: [
      ["Psychrometric γ [kPa/°C]", "Example 18: psychrometric constant [kPa/C]"],
      ["Vapour pressure ea [kPa]", "Example 18: ea [kPa]"],
      ["Mean saturation es [kPa]", "Example 18: es [kPa]"],
      ["Radiation above the air Ra", "Example 18: Ra [MJ/m2/day]"],
      ["Solar radiation Rs", "Example 18: Rs [MJ/m2/day]"],
      ["Clear sky Rso", "Example 18: Rso [MJ/m2/day]"],
      ["Net radiation Rn", "Example 18: Rn [MJ/m2/day]"],
      ["ET0, full weather [mm]", "Example 18: ETo from the weather [mm/day]"],
    ],
  },
  {
    number: 20,
    day: 196,
    entries: { Latitude_deg: 45 + 43 / 60, Weather_Typed: [[14.8, 26.6]] },
    prints: [["ET0, temperatures [mm]", "Example 20: ETo by Hargreaves [mm/day]"]],
  },
];

/** The sheets with this day of the year for January, since the examples are of single days. */
const sheetsOf = (day: number): SheetSpec[] =>
  DEMAND_SHEETS.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) =>
      sheet.name === "Weather" && cell.at === addressOf("Day of the year J") ? { ...cell, formula: String(day) } : cell,
    ),
  }));
const addressOf = (label: string) => workingCell(label, JANUARY).replaceAll("$", "");

describe("the weather sheet, calculated by LibreOffice, gives what FAO-56 prints", () => {
  const books: PlanBook[] = [];
  beforeAll(async () => {
    for (const { day, entries } of EXAMPLES) books.push(...(await calculatedPlans([entries], sheetsOf(day))));
  }, 120_000);

  it.each(EXAMPLES.map((example, index) => ({ ...example, index })))("in its example $number", ({ prints, index }) => {
    for (const [label, what] of prints) {
      const { expected } = published.cases.find((one) => one.what === what)!;
      const ours = books[index]!.at(`Weather!${addressOf(label)}`);
      const { agrees, message } = compare(ours, { expected });
      expect(agrees, `${what}: ${message}`).toBe(true);
    }
  });
});
