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
  "Used now, 190 kL, is less than needed, 360 kL: the driest pot does not get enough today, so this saving is against what would be needed, not against today's bill.";
const EVERY_KIND = "All kinds count: the bed is watered to its driest pot now and after.";

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
    title: "a bed that is not watered to its driest pot",
    typed: { Metered_kL: 190, Waters_To_Driest: "no" },
    remark: "",
    why: "Water, power and fertiliser are not counted: the bed is not watered to its driest pot, so better uniformity gives better plants, not less water.",
  },
] as const;

const POTS = [
  { title: "neither use nor pot", typed: {}, said: "needs water use and pot top" },
  { title: "the pot alone", typed: { Pot_Top_mm: 190 }, said: "needs water use" },
  { title: "the use alone", typed: { Pot_Use_mL: 400 }, said: "needs pot top" },
  { title: "a pot of 0", typed: { Pot_Use_mL: 400, Pot_Top_mm: 0 }, said: "needs use and pot top above 0" },
] as const;

let water: Calculated[];
let pots: Calculated[];
beforeAll(async () => {
  const all = await calculated([
    ...WATER.map(({ typed }) => ({ ...NEEDS_360, ...typed })),
    ...POTS.map(({ typed }) => ({ ...auditOf(2), ...typed })),
  ]);
  water = all.slice(0, WATER.length);
  pots = all.slice(WATER.length);
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

describe("the depth on Run time, calculated by LibreOffice", () => {
  it.each(POTS.map((audit, index) => ({ ...audit, index })))("says what it lacks with $title", ({ index, said }) => {
    expect(pots[index]!.named("Pot_Depth_mm")).toBe(said);
    expect(pots[index]!.named("Result_Run_Time_min")).toBe(said);
  });
});
