import { beforeAll, describe, expect, it } from "vitest";
import { firstCell } from "../../src/cells/places";
import { REPORT } from "../../src/workbook/audit/report/report";
import type { Entries } from "../../src/workbook/form/build";
import { type Calculated, calculated } from "../support/audits";
import { SQUARE_AUDIT } from "../support/square-audit";
import { column, withReading } from "./data-check-cases";

/** 24 cans of 20 mL, the one in the third row and the fourth column not read, in some wind, far from the left edge. */
const WINDY: Entries = {
  ...SQUARE_AUDIT,
  Cans_Readings: withReading("x"),
  Cans_Across_m: [[1.5, 3.25, 6, 8.75, 11.5]],
  Wind_ms: column(3, 1, 1, 1),
};
const CALM: Entries = { ...SQUARE_AUDIT, Metered_kL: 2420, Meter: 48213, Licence: 46336, Currency: "AUD" };
const WITHOUT_WIND: Entries = { ...CALM, Wind_ms: column("", "", "", "") };

let windy: Calculated;
let calm: Calculated;
let withoutWind: Calculated;
let blank: Calculated;
beforeAll(async () => {
  [windy, calm, withoutWind, blank] = (await calculated([WINDY, CALM, WITHOUT_WIND, {}])) as [
    Calculated,
    Calculated,
    Calculated,
    Calculated,
  ];
}, 300_000);

const shown = ({ places, at }: Calculated) =>
  places.filter((place) => place.startsWith("Report!")).map((place) => String(at(place)));
const line = (audit: Calculated, start: string) => shown(audit).filter((text) => text.startsWith(start));

describe("the report, calculated by LibreOffice", () => {
  it("names the data checks that warn", () => {
    expect(windy.check("Cans", "Edge cans")).toMatch(/^No cans within 0.6 m of these edges: left/);
    expect(windy.check("Cans", "Wind")).toMatch(/^Wind up to 3 m\/s/);
    expect(line(windy, "Data checks that warn")).toEqual(["Data checks that warn: Edge cans; Wind."]);
  });

  it("says none where no data check warns", () => {
    expect(line(calm, "Data checks that warn")).toEqual(["Data checks that warn: none."]);
    expect(line(calm, "Data checks not done")).toEqual(["Data checks not done because entries are missing: none."]);
  });

  it("names the data checks that lack something apart from those that warn", () => {
    expect(line(withoutWind, "Data checks that warn")).toEqual(["Data checks that warn: none."]);
    expect(line(withoutWind, "Data checks not done")).toEqual([
      "Data checks not done because entries are missing: Wind.",
    ]);
    expect(line(blank, "Data checks that warn")).toEqual(["Data checks that warn: none."]);
    expect(line(blank, "Data checks not done")[0]).toMatch(/: Readings; .*A very dry can; .*Pressure; .*metered\.$/);
  });

  it("gives the water of all beds on the valve, as the register does", () => {
    const [place] = calm.places.filter((at) => at.startsWith("Report!A") && calm.at(at) === "Used now [kL]");
    // 2,420 kL by the meter, of the 2 beds on the valve
    expect(calm.at(place!.replace("!A", "!B"))).toBe(2420);
  });

  it("shows the water bill of Water and cost", () => {
    const bill = calm.named("Result_Cost");
    expect(typeof bill).toBe("number");
    const [place] = calm.places.filter(
      (at) => at.startsWith("Report!A") && calm.at(at) === "Cost of the water needed now [AUD]",
    );
    expect(calm.at(place!.replace("!A", "!B"))).toBe(bill);
  });

  it("keeps the number of a meter or a licence a number, not a date", () => {
    for (const [name, number] of [
      ["Meter", 48213],
      ["Licence", 46336],
    ] as const) {
      const cell = REPORT.cells.find(({ formula }) => formula?.includes(`,${name})`))!;
      expect(calm.at(`Report!${firstCell(cell.at)}`)).toBe(number);
      expect(cell.format, name).toBeUndefined();
    }
  });

  it("names net depth, multiplier and what it is based on, run times, beds on the valve and currency", () => {
    const beside = (label: string, column: string) => {
      const [place] = calm.places.filter((at) => at.startsWith("Report!") && calm.at(at) === label);
      return calm.at(place!.replace(/![A-Z]+/, `!${column}`));
    };
    expect(beside("Net depth [mm a day]", "D")).toBe(calm.named("Net_Depth_mm"));
    expect(beside("Run-time multiplier", "D")).toBe(calm.named("Run_Multiplier"));
    expect(beside("Run-time multiplier", "I")).toContain(`based on: ${calm.named("Multiplier_Basis")}`);
    expect(beside("Run time of this bed [min a day]", "D")).toBe(calm.named("Result_Run_Time_min"));
    expect(beside("Run time of the valve [min a day]", "D")).toBe(calm.named("Valve_Run_min"));
    expect(beside("Beds on the valve", "B")).toBe(2);
    expect(beside("Currency", "B")).toBe("AUD");
  });

  it("has a key under the picture: each class in its colour, its share of the mean and its rate", () => {
    const key = REPORT.cells.filter(({ at, kind }) => kind === "tile" && at.includes(":"));
    expect(key.slice(0, 3).map(({ value }) => value)).toEqual([1, 0, undefined]);
    const rates = key.filter(({ formula }) => formula).map(({ at }) => calm.at(`Report!${firstCell(at)}`));
    const mean = calm.named("Used_MAR") as number;
    // least shares of the mean of the seven classes, as the pane's map says them
    [0, 0.5, 0.75, 0.9, 1.1, 1.25, 1.5].forEach((share, index) => {
      expect(rates[index]).toBeCloseTo(share * mean, 6);
    });
  });

  it("shows x on the ground of a can that was not read, as Coverage does", () => {
    // 20 cells across for 5 cans: 4 × 4 cells a can, from E12 on; third row, fourth column: Q20 to T23
    const unread = windy.places.filter((place) => /^Report![E-X]\d+$/.test(place) && windy.at(place) === "x");
    const ground = ["20", "21", "22", "23"].flatMap((row) =>
      ["Q", "R", "S", "T"].map((letter) => `Report!${letter}${row}`),
    );
    expect(unread.sort()).toEqual(ground.sort());
    expect(windy.at("Report!E12")).toBe(4); // as much as the mean: 90 to 110 %
    expect(windy.at("Report!E32")).toBe("");
    expect(
      windy.places.filter((place) => place.startsWith("Coverage!") && windy.at(place) === "x").length,
    ).toBeGreaterThan(0);
  });
});
