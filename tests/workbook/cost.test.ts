import * as excel from "@formulajs/formulajs";
import { beforeAll, describe, expect, it } from "vitest";
import { firstCell } from "../../src/cells/places";
import type { Stated } from "../../src/cells/stated";
import { auditFigures } from "../../src/share/figures/audit-figures";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { buildWorkbook, type Entries, type Results } from "../../src/workbook/form/build";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { plantedResults } from "../support/planted";
import { recalculated } from "../support/recalculated";
import { auditOf, costAudits, everywhere } from "./cost-cases";

/** Without the sheets on which no cost depends. */
const SHEETS = AUDIT_SHEETS.filter(({ name }) => !["Start", "Coverage", "Report"].includes(name));
const planted = plantedResults(SHEETS);
const places = new Map(
  SHEETS.flatMap((sheet) =>
    sheet.cells.flatMap(({ name, at }) => (name ? [[name, `${sheet.name}!${firstCell(at)}`] as const] : [])),
  ),
);

/** Arithmetic of our own: 200 m², 5 mm, 300 days, SC from 3 to 1.5, 2.60 a kL: 900 kL before, 450 after. */
const HALVING: Entries = {
  ...auditOf(3),
  Bed_Width_m: 10,
  Bed_Length_m: 20,
  Depth_Typed_mm: 5,
  Water_Days: 300,
  After_SC: 1.5,
  Water_Price: 2.6,
  Waters_To_Driest: "yes",
};
/** NGIQ: 300 kPa at 50 % take 167 kWh a ML; Fraenkel: 360 kL at 300 kPa without loss take 30 kWh. */
const PUMPING: Entries = { ...auditOf(2), Pump_kPa: 300, Pump_Efficiency: 0.5, Motor_Efficiency: 1 };
/** 180 m², 1 mm, 1000 days' depth in 250 days of 4 mm, SC 2: 180 · 4 · 250 · 2 / 1000 = 360 kL. */
const LOSSLESS: Entries = {
  ...PUMPING,
  Pump_Efficiency: 1,
  Depth_Typed_mm: 4,
  Water_Days: 250,
  Power_Tariff: 1,
};
const GENERATED = costAudits(20);
const ODD = ["", 0, -3, "twelve", 1000].map(everywhere);
/** Three quarters of the pots set the run time, and the SC after is far larger: no can could be that dry. */
const WIDER: Entries = {
  ...GENERATED[0],
  Cans_Readings: [
    [20, 21, 22, 23],
    [19, 20, 24, 25],
    [18, 22, 21, 20],
    [17, 23, 22, 12],
  ],
  Multiplier_Basis: "share of pots",
  Share_Wanted: 0.75,
  After_SC: 50,
};
const ALL = [HALVING, PUMPING, LOSSLESS, ...GENERATED, ...ODD, WIDER];

let results: Results[];
let recomputed: ReadonlyMap<string, Stated>[];
beforeAll(async () => {
  const files: Uint8Array[] = [];
  for (const entries of ALL) files.push(await buildWorkbook(SHEETS, entries, planted));
  results = await recalculated(files);
  recomputed = files.map((file) => auditFigures(openBook(file)).figures);
}, 900_000);

const cell = (audit: number, name: string) => results[audit]!.get(places.get(name)!);
const number = (audit: number, name: string) => {
  const value = cell(audit, name);
  expect(typeof value, `${name}: ${value}`).toBe("number");
  return value as number;
};

it("a spread that would take a can below nothing is not computed with", () => {
  const last = ALL.length - 1;
  expect(number(last, "Run_Multiplier")).toBeGreaterThan(1);
  expect(number(last, "Spread_After")).toBe(0);
});

describe("a case of plain arithmetic, through the workbook's own cells", () => {
  it("saves 450 kL and 1,170 a year on 200 m² where SC is halved", () => {
    expect(number(0, "Block_Area_m2")).toBe(200);
    expect(number(0, "Run_Multiplier")).toBeCloseTo(3, 9);
    expect(number(0, "Saved_kL")).toBeCloseTo(450, 9);
    expect(number(0, "Saved_Water_Likely")).toBeCloseTo(450 * 2.6, 9);
    expect(number(0, "Saved_Likely")).toBe(number(0, "Saved_Water_Likely"));
  });

  it("halves the water and, at the same rate, the run time", async () => {
    const halved = { ...HALVING, After_MAR: number(0, "Used_MAR") };
    const [found] = await recalculated([await buildWorkbook(SHEETS, halved)]);
    const at = (name: string) => found!.get(places.get(name)!) as number;
    expect(at("Run_Time_After_min") / at("Result_Run_Time_min")).toBeCloseTo(0.5, 12);
    expect(at("Needed_After_kL") / at("Result_Water_kL")).toBeCloseTo(0.5, 12);
    expect(at("Cost_Water_After_Likely") / at("Cost_Water_Now_Likely")).toBeCloseTo(0.5, 12);
  });
});

describe("pumping, as published", () => {
  it("takes 167 kWh a ML at 300 kPa and 50 %", () => {
    expect(Math.abs(1000 * number(1, "Energy_Per_kL") - 167)).toBeLessThan(0.5);
  });

  it("takes 30 kWh for 360 kL at 300 kPa without loss", () => {
    expect(number(2, "Result_Water_kL")).toBeCloseTo(360, 6);
    expect(number(2, "Cost_Power_Now_Likely")).toBeCloseTo(30, 6);
  });
});

describe("generated audits, recalculated by LibreOffice with every cached value wrong", () => {
  it.each(GENERATED.map((_, index) => index))("agree with core in every figure (audit %i)", (index) => {
    const audit = 3 + index;
    const figures = [...recomputed[audit]!].filter(([name]) => places.has(name));
    expect(figures.length).toBeGreaterThan(90);
    for (const [name, value] of figures) {
      const theirs = cell(audit, name);
      if (typeof value !== "number") continue;
      const miss = Math.abs((theirs as number) - value);
      expect(miss, `${name}: LibreOffice ${theirs}, core ${value}`).toBeLessThanOrEqual(1e-9 * Math.abs(value) + 1e-9);
    }
    const words = figures.filter(([name, value]) => value === null && typeof cell(audit, name) === "number");
    expect(words.map(([name]) => name)).toEqual([]);
  });

  it("have the net present value and the yearly capital of a financial library", () => {
    let checked = 0;
    GENERATED.forEach(({ Upgrade_Life_years: life, Upgrade_Rate: rate }, index) => {
      const audit = 3 + index;
      const [saved, capital, worth] = ["Saved_Likely", "Upgrade_Capital", "NPV_Likely"].map((name) =>
        cell(audit, name),
      );
      if (typeof worth !== "number" || typeof saved !== "number" || typeof capital !== "number") return;
      const yearly = -(excel.PMT(rate as number, life as number, 1) as number);
      expect(Math.abs(worth - (saved / yearly - capital))).toBeLessThan(1e-6 * (1 + Math.abs(worth)));
      checked += 1;
    });
    expect(checked).toBeGreaterThan(10);
  });
});

describe("blank, zero, below zero, words and far too much in every cell", () => {
  it.each([0, 1, 2, 3, 4])("give words and no error value (case %i)", (index) => {
    const errors = [...results[3 + GENERATED.length + index]!].filter(
      ([place, value]) => /^(Cost|Water)/.test(place) && /^#|-4711/.test(String(value)),
    );
    expect(errors).toEqual([]);
  });

  it.each([0, 1, 2, 3, 4])("and the same figures as core (case %i)", (index) => {
    const audit = 3 + GENERATED.length + index;
    for (const [name, value] of recomputed[audit]!) {
      if (!places.has(name) || !/^(Cost|Saved|Payback|NPV|Paying|Upgrade)_/.test(name)) continue;
      const theirs = cell(audit, name);
      if (typeof value === "number") {
        const miss = Math.abs(Number(theirs) - value);
        expect(miss, `${name}: LibreOffice ${theirs}, core ${value}`).toBeLessThanOrEqual(
          1e-9 * Math.abs(value) + 1e-9,
        );
      } else expect(typeof theirs, `${name}: ${theirs}`).toBe("string");
    }
  });
});

describe("where the bed is not watered to its driest pot", () => {
  it("no water, power or fertiliser is saved, and it says why; labour and plants are", () => {
    const audit = 3 + GENERATED.findIndex(({ Waters_To_Driest }) => Waters_To_Driest === "no");
    for (const kind of ["Water", "Power", "Fertiliser"]) expect(cell(audit, `Saved_${kind}_Likely`)).toBe("–");
    expect(cell(audit, "Saved_Why")).toMatch(/^Water, power and fertiliser are not counted/);
    expect(cell(audit, "Paying_Price_Likely")).toBe("–");
  });
});
