import { beforeAll, describe, expect, it } from "vitest";
import { checkCopy } from "../../src/share/check/check-copy";
import { namedValue } from "../../src/share/copy/evidence-rows";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import type { Entries } from "../../src/workbook/form/build";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { calculatedFiles } from "../support/recalculated";

/** Cans 4, 8, 12 mL: mean 8, so that SC of the driest is 2 and a share of 0.5 of the cans gives 8 / 8 = 1. */
const BED: Entries = {
  Bed_Width_m: 10,
  Bed_Length_m: 10,
  Can_Mouth_mm: 100,
  Test_Minutes: 60,
  Cans_Readings: [[4, 8, 12]],
  Multiplier_Basis: "share of pots",
  Share_Wanted: 0.5,
  Water_Days: 100,
  After_SC: 1,
  After_MAR: 1,
  Fertiliser_mgL: 200,
  Fertiliser_Price: 5,
};
/** One size: 100 mm square pots at 200 mm take a quarter of the bed, half of the water with a capture factor of 2. */
const ONE_SIZE: Entries = {
  ...BED,
  Pot_Shape: "square",
  Pot_Top_mm: 100,
  Pot_Spacing_mm: 200,
  Capture_Factor: 2,
  Pot_Use_mL: 120,
};
/** The same as a group of 60 %; the others 200 mm at 250 mm that need 3 mm: 40²/50² of the area. */
const TWO_SIZES: Entries = {
  ...ONE_SIZE,
  Fertiliser_Water_mgL: 50,
  Groups_Names: [["small"], ["large"]],
  Groups_Tops_mm: [[100], [200]],
  Groups_Spacings_mm: [[200], [250]],
  Groups_Uses_mL: [[120], [""]],
  Groups_Captures: [[2], [""]],
  Groups_Depths_mm: [[""], [3]],
  Groups_Areas: [[60], [40]],
};
const LACKING = [
  { ...TWO_SIZES, Groups_Areas: [[60], [""]] },
  { ...TWO_SIZES, Groups_Depths_mm: [[""], [""]] },
  { ...TWO_SIZES, Groups_Spacings_mm: [[200], [""]] },
  { ...TWO_SIZES, Groups_Captures: [[-1], [""]] },
];

/** What is odd about pots, and what the data check on Cans says of it. */
const ODD: [typed: Entries, says: string][] = [
  [{ ...TWO_SIZES }, "ok"],
  // 60 and 40 m² fill the bed of 100 m²; two alike beds are twice that
  [{ ...TWO_SIZES, Groups_Areas: [[0.6], [0.4]] }, "ok"],
  [{ ...TWO_SIZES, Groups_Areas: [[120], [80]], Beds_On_Valve: 2 }, "ok"],
  [
    { ...TWO_SIZES, Groups_Areas: [[100], [30]] },
    "The areas of the pot groups add up to 130, not to 1, 100 % or the bed's 100 m²: each is taken for its part of that sum (Pots).",
  ],
  [
    { ...TWO_SIZES, Groups_Spacings_mm: [[200], [190]] },
    "Pots of large are wider than their spacing: check top and spacing (Pots).",
  ],
  // 5 · 100² is more than 200²
  [
    { ...TWO_SIZES, Groups_Captures: [[5], [""]], Groups_Names: [[""], ["large"]] },
    "Pots of group 1 would catch more than all the water: check capture factor, top and spacing (Pots).",
  ],
  [{ ...ONE_SIZE, Pot_Spacing_mm: 90 }, "The pots are wider than their spacing: check top and spacing (Block)."],
  // 2 · 100² is more than 130²
  [
    { ...ONE_SIZE, Pot_Spacing_mm: 130 },
    "The pots would catch more than all the water: check capture factor (Run time), top and spacing (Block).",
  ],
  [{ ...TWO_SIZES, Depth_Typed_mm: 5 }, "The depth typed on Run time is not used: pot groups are filled in on Pots."],
];
/** What drains comes back: no fertiliser is lost. */
const RETURNED = { ...TWO_SIZES, Runoff_Returned: "yes" };
const FIRST_ODD = 2 + LACKING.length;

let files: Uint8Array[];
let books: ReturnType<typeof openBook>[];
beforeAll(async () => {
  const typed = [ONE_SIZE, TWO_SIZES, ...LACKING, ...ODD.map(([one]) => one), RETURNED];
  files = await calculatedFiles(AUDIT_SHEETS, typed);
  books = files.map((file) => openBook(file));
}, 300_000);

const at = (index: number, name: string) => namedValue(books[index]!, name);
const near = (index: number, wanted: Record<string, number>) => {
  for (const [name, value] of Object.entries(wanted)) expect(at(index, name), name).toBeCloseTo(value, 9);
};

describe("a block of one pot size", () => {
  it("has its depth, and its water apart: between the pots, drained from them, kept", () => {
    // 1000 · 120 / 100² / 2 = 6 mm. At multiplier 1 falls 3, 6, 9 mm: 3 of 18 mm drain, of the half that reaches pots.
    near(0, { Net_Depth_mm: 6, Mean_Drained_Share: 3 / 18 });
    near(0, { Reached_Share: 0.5, Between_Pots_Share: 0.5, Pots_Drained_Share: 0.5 / 6, Pots_Kept_Share: 2.5 / 6 });
    // 100 m² · 6 mm · 100 days = 60 kL; 5 kL drain with 200 mg/L: 1 kg at 5
    near(0, { Between_Pots_kL: 30, Pots_Drained_kL: 5, Pots_Kept_kL: 25, Pots_Drained_Fertiliser_kg: 1 });
    near(0, { Cost_Fertiliser_Now_Likely: 5 });
    expect(at(0, "Groups_Words") ?? "").toBe("");
    expect(at(0, "Groups_In_Use")).toBe(0);
  });
});

describe("a block of several pot sizes", () => {
  it("runs as the neediest needs", () => {
    near(1, { Net_Depth_mm: 6, Group_1_Depth_mm: 6, Group_2_Depth_mm: 3, Group_1_Share: 0.6, Group_2_Share: 0.4 });
    const run = at(1, "Result_Run_Time_min") as number;
    near(1, { Group_1_Run_min: run, Group_2_Run_min: run / 2 });
    expect(at(1, "Groups_Neediest")).toBe("small");
  });

  it("shows what each gets and drains", () => {
    // the large get twice their 3 mm: 3, 6, 9 mm fall, 0 + 3 + 6 of 18 drain
    near(1, { Group_1_Times: 1, Group_2_Times: 2, Group_1_Drained: 3 / 18, Group_2_Drained: 9 / 18 });
    // reached: 0.6 · 0.5 and 0.4 · 0.64
    near(1, { Reached_Share: 0.556, Between_Pots_Share: 0.444 });
    near(1, { Pots_Drained_Share: 0.3 / 6 + 0.256 / 2, Mean_Drained_Share: (0.3 / 6 + 0.256 / 2) / 0.556 });
    expect(at(1, "Groups_Words")).toBe(
      "Pot groups: small (60 % of the area) needs 6 mm and gets 1 times that, 17 % of it drains; large (40 % of the area) needs 3 mm and gets 2 times that, 50 % of it drains; the run time is that of small.",
    );
  });

  it("counts injected fertiliser between the pots apart from what drains", () => {
    // 60 kL: 0.444 of it with 50 mg/L, 0.178 of it with 200 mg/L
    near(1, { Between_Pots_Fertiliser_kg: 60 * 0.444 * 0.05, Pots_Drained_Fertiliser_kg: 60 * 0.178 * 0.2 });
    near(1, { Cost_Fertiliser_Now_Likely: 5 * (60 * 0.444 * 0.05 + 60 * 0.178 * 0.2) });
    // after: SC 1 is an even bed: the small drain nothing, the large half of 0.256
    near(1, { Cost_Fertiliser_After_Likely: 5 * (60 * 0.444 * 0.05 + 60 * 0.128 * 0.2) });
  });

  it("says what a group still needs", () => {
    expect([2, 3, 5].map((index) => at(index, "Result_Run_Time_min"))).toEqual([
      "needs the area of every pot group: see Pots",
      "needs the depth of every pot group: see Pots",
      "needs the depth of every pot group: see Pots",
    ]);
    near(4, { Net_Depth_mm: 6, Mean_Drained_Share: 0.6 / 6 + 0.4 / 2 });
    expect(at(4, "Reached_Share")).toBe("needs top and spacing of each group");
  });
});

describe("what is odd about pots", () => {
  const checkOf = (index: number) => {
    const { cells } = books[index]!.sheets.find(({ name }) => name === "Cans")!;
    const [label] = [...cells].find(([, { value }]) => value === "Pots")!;
    return cells.get(label.replace("A", "B"))!.value;
  };

  it.each(ODD.map(([, says], index) => ({ says, index })))("is a data check: $says", ({ says, index }) => {
    expect(checkOf(FIRST_ODD + index)).toBe(says);
  });

  it("is said of the report's pot top too: several sizes have no one top", () => {
    const shown = [...books[1]!.sheets.find(({ name }) => name === "Report")!.cells.values()].map(({ value }) => value);
    expect(shown).toContain("2 sizes: see Pots");
  });
});

it("no fertiliser is lost where run-off is returned; it drains from the pots all the same", () => {
  const last = FIRST_ODD + ODD.length;
  near(last, { Cost_Fertiliser_Now_Likely: 0, Cost_Fertiliser_After_Likely: 0 });
  near(last, { Pots_Drained_Fertiliser_kg: 60 * 0.178 * 0.2 });
});

it("the check of a copy recomputes all of it", async () => {
  for (const file of files) {
    const { figures, findings } = await checkCopy(file);
    expect(figures.filter(({ agrees }) => !agrees)).toEqual([]);
    expect(findings.filter((one) => one.class !== "added")).toEqual([]);
  }
  const { figures } = await checkCopy(files[1]!);
  expect(figures.find(({ name }) => name === "Group_2_Drained")!.recomputed).toBeCloseTo(0.5, 9);
});
