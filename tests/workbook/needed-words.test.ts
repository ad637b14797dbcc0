import { beforeAll, describe, expect, it } from "vitest";
import type { Entries } from "../../src/workbook/form/build";
import { type Calculated, calculated } from "../support/audits";
import { auditOf } from "./cost-cases";

/** 180 m², 5 mm, 200 days, SC 2: 180 · 5 · 200 · 2 / 1000 = 360 kL needed, 95 % of it 342 kL. */
const NEEDS_360: Entries = {
  ...auditOf(2),
  Depth_Typed_mm: 5,
  Water_Days: 200,
  In_Bed_Share: 1,
  After_SC: 1.5,
  Water_Price: 2,
  Waters_To_Driest: "yes",
};
const REMARK =
  "Used now, 190 kL, is less than needed, 360 kL: not enough today for the driest pot, so this saving is against what would be needed, not against today's bill.";
const EVERY_KIND = "All kinds count: enough for the driest pot now and after.";

const remarkOf = (used: string, needed: string, pots = "the driest pot") =>
  REMARK.replace("190", used).replace("360", needed).replace("the driest pot", pots);
/** 20 mL of cans of 100 mm in 20 min are 7.639 mm/h; 100 hours of it on 180 m² are 137.5 kL, twice that from the heads. */
const BY_RUNS = remarkOf("275", "720");
/** Mean 20 over mean of the driest six, (10 + 5 · 470 / 23) / 6 = 18.696: 1.0698 · 180 = 192.6 kL. */
const BY_QUARTER = remarkOf("100", "192.6", "the driest quarter of the bed");

const WATER = [
  { title: "far less used than needed", typed: { Metered_kL: 190 }, remark: REMARK, why: `All kinds count. ${REMARK}` },
  {
    title: "far less metered than needed, without the share in the bed",
    typed: { Metered_kL: 190, In_Bed_Share: "" },
    remark: REMARK,
    why: `All kinds count. ${REMARK}`,
  },
  { title: "5 % less used than needed", typed: { Metered_kL: 342 }, remark: "ok", why: EVERY_KIND },
  { title: "more used than needed", typed: { Metered_kL: 500 }, remark: "ok", why: EVERY_KIND },
  { title: "nothing metered", typed: {}, remark: "not checked: needs water used and water needed", why: EVERY_KIND },
  {
    title: "nothing metered, minutes and runs typed",
    typed: { Run_Minutes_Now: 60, Runs_A_Year_Now: 100, In_Bed_Share: 0.5 },
    remark: BY_RUNS,
    why: `All kinds count. ${BY_RUNS}`,
  },
  {
    title: "the low quarter sets the run time",
    typed: { Metered_kL: 100, Multiplier_Basis: "low quarter" },
    remark: BY_QUARTER,
    why: `All kinds count. ${BY_QUARTER}`,
  },
  {
    title: "a share of the pots sets the run time",
    typed: { Metered_kL: 500, Multiplier_Basis: "share of pots", Share_Wanted: 0.9 },
    remark: "ok",
    why: "All kinds count: enough for 90 % of the pots now and after.",
  },
  {
    title: "a bed where they do not get enough",
    typed: { Metered_kL: 190, Waters_To_Driest: "no" },
    remark: "",
    why: "Water, power and fertiliser are not counted: not enough today for the driest pot, so better uniformity gives better plants, not less water.",
  },
] as const;

const POTS = [
  { title: "neither use nor pot", typed: {}, said: "needs water use and pot top" },
  { title: "the pot alone", typed: { Pot_Top_mm: 190 }, said: "needs water use" },
  { title: "the use alone", typed: { Pot_Use_mL: 400 }, said: "needs pot top" },
  { title: "a pot of 0", typed: { Pot_Use_mL: 400, Pot_Top_mm: 0 }, said: "needs use and pot top above 0" },
] as const;

const PLACED = { ...auditOf(2), Cans_Across_m: [[1, 3, 5, 7, 9, 11]], Cans_Along_m: [[2], [6], [9], [13]] };
const EQUAL = "Each can has equal weight: ";
const BY_AREA =
  "Each can is weighted by the area that it is for: half-way lines to its neighbours and the edges of the bed.";
const BASES = [
  { title: "places", typed: PLACED, said: BY_AREA },
  {
    // the can in the corner is for 2 m times 4 m of 12 times 15
    title: "a can that was not read",
    typed: {
      ...PLACED,
      Cans_Readings: [["x", 20, 20, 20, 20, 20], ...Array.from({ length: 3 }, () => Array(6).fill(20))],
    },
    said: `${BY_AREA} The ground of cans that were not read is left out: 172 of 180 m² count.`,
  },
  { title: "no places", typed: auditOf(2), said: `${EQUAL}places of the cans are not typed.` },
  { title: "no sides", typed: { ...PLACED, Bed_Width_m: "" }, said: `${EQUAL}the sides of the bed are not typed.` },
  {
    title: "a place beyond the bed",
    typed: { ...PLACED, Bed_Width_m: 10 },
    said: `${EQUAL}The position in L5 lies beyond the bed, 10 m wide (Block).`,
  },
];

let bases: Calculated[];
let water: Calculated[];
let pots: Calculated[];
beforeAll(async () => {
  const all = await calculated([
    ...WATER.map(({ typed }) => ({ ...NEEDS_360, ...typed })),
    ...POTS.map(({ typed }) => ({ ...auditOf(2), ...typed })),
    ...BASES.map(({ typed }) => typed),
  ]);
  water = all.slice(0, WATER.length);
  pots = all.slice(WATER.length, WATER.length + POTS.length);
  bases = all.slice(WATER.length + POTS.length);
}, 300_000);

describe("water used now beside water needed, calculated by LibreOffice", () => {
  it.each(WATER.map((audit, index) => ({ ...audit, index })))("is judged with $title", ({ index, remark, why }) => {
    const audit = water[index]!;
    expect(audit.named("Used_Against_Needed")).toBe(remark);
    expect(audit.named("Saved_Why")).toBe(why);
    const onReport = audit.places.filter((place) => place.startsWith("Report!") && audit.at(place) === REMARK);
    expect(onReport).toHaveLength(remark === REMARK ? 1 : 0);
  });
});

describe("Results, calculated by LibreOffice", () => {
  it.each(BASES.map((audit, index) => ({ ...audit, index })))("says its basis with $title", ({ index, said }) => {
    expect(bases[index]!.at("Results!A2")).toBe(said);
  });
});

describe("the depth on Run time, calculated by LibreOffice", () => {
  it.each(POTS.map((audit, index) => ({ ...audit, index })))("says what it lacks with $title", ({ index, said }) => {
    expect(pots[index]!.named("Pot_Depth_mm")).toBe(said);
    expect(pots[index]!.named("Result_Run_Time_min")).toBe(said);
  });
});
