import { describe, expect, it } from "vitest";
import { caughtDepth } from "../../src/core/application/depth";
import { caughtRate } from "../../src/core/application/rate";
import { christiansen } from "../../src/core/uniformity/christiansen";
import { checkCopy } from "../../src/share/check/check-copy";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { buildWorkbook, type Entries } from "../../src/workbook/form/build";

const CANS = [
  [20, 24, 30],
  [22, "x", 28],
];
const AUDIT: Entries = {
  Can_Mouth_mm: 100,
  Test_Minutes: 15,
  Cans_Readings: CANS,
  Multiplier_Basis: "driest can",
  Depth_Typed_mm: 6,
  Water_Days: 200,
  Bed_Width_m: 10,
  Bed_Length_m: 12,
  Beds_On_Valve: 3,
  Head_Count: 10,
  Bucket_mL: [[1000], [1100]],
  Bucket_s: [[30], [30]],
  Pressure_Before_kPa: [[210], [200]],
  Pressure_After_kPa: [[206], [""]],
  Wind_ms: [[2], [2.6]],
};
const lineOf = async (entries: Entries) => (await checkCopy(await buildWorkbook(AUDIT_SHEETS, entries))).line;

describe("what a register keeps of an audit file", () => {
  it("comes from what was typed, calculated by core; the file, never calculated, states nothing", async () => {
    const line = (await lineOf(AUDIT))!;
    const read = [20, 24, 30, 22, 28];
    const mean = (20 + 24 + 30 + 22 + 28) / 5;
    const mar = caughtRate(caughtDepth(mean, 100), 15);
    expect(line).toMatchObject({
      cans: 5,
      grid: "3 × 2",
      wind: "up to 4 m/s",
      // (208 + 200) / 2
      pressure: 204,
      kind: "driest can",
      // 3 beds of 10 m × 12 m
      area: 360,
    });
    expect(line.mar).toBeCloseTo(mar, 12);
    expect(line.cu).toBeCloseTo(christiansen(read), 12);
    expect(line.scCan).toBeCloseTo(mean / 20, 12);
    expect(line.multiplier).toBeCloseTo(mean / 20, 12);
    // 6 mm on 360 m², 200 times, times the multiplier
    expect(line.water).toBeCloseTo((6 * 360 * 200 * (mean / 20)) / 1000, 9);
    // buckets of 2 and 2.2 L a minute, 10 heads, 3 beds
    expect(line.flow).toBeCloseTo(2.1 * 10 * 3, 9);
  });

  it("says that each can counts by its area where the places of the cans are uneven", async () => {
    const line = await lineOf({ ...AUDIT, Cans_Across_m: [[0.5, 2, 9]], Cans_Along_m: [[1], [6]] });
    expect(line?.grid).toBe("3 × 2, by area");
  });

  it("leaves out what is not known, and is nothing where the file is no audit", async () => {
    expect(await lineOf({ Cans_Readings: CANS })).toMatchObject({
      cans: 5,
      wind: null,
      pressure: null,
      mar: null,
      area: null,
      flow: null,
    });
    expect(await lineOf({})).toMatchObject({ cans: null, grid: null, mar: null });
    const other = await buildWorkbook([{ name: "Cans of paint", widths: [10], cells: [] }], {});
    expect((await checkCopy(other)).line).toBeNull();
  });
});
