import { beforeAll, expect, it } from "vitest";
import { checkCopy } from "../../src/share/check/check-copy";
import { namedValue } from "../../src/share/copy/evidence-rows";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import type { Entries } from "../../src/workbook/form/build";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { calculatedFiles } from "../support/recalculated";

/**
 * Arithmetic of our own. Catches 10, 20, 30: mean 20, driest 10, so the multiplier is 2. A test of 60 min into cans of
 * 100 mm gives 20 mL · 4000 / (pi · 100²) = 2.5465 mm/h. 5 mm · 2 at that rate take 235.62 min.
 */
const RATE = (20 * 4000) / (Math.PI * 100 ** 2);
const RUN = (60 * 5 * 2) / RATE;
const BED: Entries = {
  Bed_Width_m: 10,
  Bed_Length_m: 12,
  Can_Mouth_mm: 100,
  Test_Minutes: 60,
  Cans_Readings: [[10, 20, 30]],
  Depth_Typed_mm: 5,
  Water_Days: 100,
  Water_Price: 2,
  In_Bed_Share: 0.5,
  After_SC: 1.25,
  After_MAR: RATE,
  Waters_To_Driest: "yes",
  Metered_kL: 900,
  Pump_kPa: 360,
  Pump_Efficiency: 0.5,
  Motor_Efficiency: 1,
  Power_Tariff: 0.5,
  Fertiliser_mgL: 100,
  Fertiliser_Price: 4,
  Take_Up_mm: 4,
  Rest_min: 20,
};
const THREE = { ...BED, Beds_On_Valve: 3, Beds_Tested: 2 };
/** Another tested bed needs a run 1.5 times as long. */
const LONGER = { ...THREE, Other_Beds_Run_min: 1.5 * RUN };
const LESS_AFTER = { ...LONGER, Other_Beds_Run_After_min: 1 };

let books: ReturnType<typeof openBook>[];
let files: Uint8Array[];
beforeAll(async () => {
  files = await calculatedFiles(AUDIT_SHEETS, [BED, THREE, LONGER, LESS_AFTER]);
  books = files.map((file) => openBook(file));
}, 300_000);

const at = (index: number, name: string) => namedValue(books[index]!, name);
const all = (name: string) => books.map((_, index) => at(index, name));
const near = (values: unknown[], wanted: number[]) =>
  wanted.forEach((value, index) => {
    expect(values[index], String(index)).toBeCloseTo(value, 8);
  });

it("the longer run of another bed sets the valve", () => {
  near(all("Result_Run_Time_min"), [RUN, RUN, RUN, RUN]);
  near(all("Valve_Run_min"), [RUN, RUN, 1.5 * RUN, 1.5 * RUN]);
  // 10 mm in pulses of 4 mm; 15 mm at the longer run
  expect(all("Pulse_Count")).toEqual([3, 3, 4, 4]);
});

it("water counts every bed on the valve, at its run", () => {
  // 120 m² · 5 mm · 100 days · 2 / 0.5 = 240 kL; three beds, then 1.5 times as long
  near(all("Result_Water_kL"), [240, 720, 1080, 1080]);
  // 120 m² · 10 mm a day
  near(all("Bed_Litres_A_Day"), [1200, 3600, 5400, 5400]);
  // after: SC 1.25 instead of 2; at the same rate the bed needs 0.625 of its run, while the other bed still needs 1.5
  near(all("Needed_After_kL"), [150, 450, 1080, 450]);
  near(all("Saved_kL"), [90, 270, 0, 630]);
  expect(all("Used_Now_kL")).toEqual([900, 900, 900, 900]);
});

it("so does every sum of money", () => {
  near(all("Result_Cost"), [480, 1440, 2160, 2160]);
  near(all("Cost_Water_Now_Likely"), [480, 1440, 2160, 2160]);
  // 360 kPa / 3600 / 0.5 = 0.2 kWh a kL at 0.5
  near(all("Cost_Power_Now_Likely"), [24, 72, 108, 108]);
  near(all("Saved_Water_Likely"), [180, 540, 0, 1260]);
});

it("the longer run drains more from this bed", () => {
  // 1 - 1/2; at 1.5 times the run 1 - 1/3
  near(all("Mean_Drained_Share"), [1 / 2, 1 / 2, 2 / 3, 2 / 3]);
  // on the bed 120, 360, 540 kL · share · 100 mg/L · 4
  near(all("Cost_Fertiliser_Now_Likely"), [24, 72, 144, 144]);
});

it("the sheets say whose water it is", () => {
  expect(all("Water_Label")).toEqual([
    "water from the heads, this bed",
    ...Array.from({ length: 3 }, () => "water from the heads, all 3 beds on the valve, taken as alike"),
  ]);
});

it("Report, register and the check of a copy have the same water and money", async () => {
  for (const [index, file] of files.entries()) {
    const report = await checkCopy(file);
    expect(report.figures.filter(({ agrees }) => !agrees)).toEqual([]);
    expect(report.line!.water).toBeCloseTo(at(index, "Result_Water_kL") as number, 9);
    expect(report.line!.multiplier).toBeCloseTo([2, 2, 3, 3][index]!, 9);
    const sheet = [...books[index]!.sheets.find(({ name }) => name === "Report")!.cells.values()].map(
      ({ value }) => value,
    );
    for (const name of ["Used_Now_kL", "Result_Water_kL", "Needed_After_kL", "Saved_kL", "Result_Cost"]) {
      expect(sheet, name).toContain(at(index, name));
    }
    expect(sheet).toContain(at(index, "Water_Label"));
  }
});
