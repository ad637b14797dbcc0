// @vitest-environment jsdom
import { afterEach, describe, expect, it } from "vitest";
import type { Area } from "../../src/cells/area";
import type { Input } from "../../src/cells/cell";
import { compare } from "../../src/core/layout/compare";
import { namedProfile } from "../../src/core/layout/profile";
import { search } from "../../src/core/layout/search/search";
import { Pane } from "../../src/taskpane/pane";
import { FIRST_LAYOUT } from "../../src/taskpane/plan/layout-entries";
import { meanDifference } from "../../src/taskpane/plan/mean-difference";
import { FIRST_SEARCH, searchOf } from "../../src/taskpane/plan/search/entries";
import { axeFindings } from "../support/axe-findings";
import { memoryHost } from "../support/memory-host";
import { screen } from "../support/screen";

let page: Awaited<ReturnType<typeof screen>>;
afterEach(() => page.close());

const AFTER: Record<string, Area> = Object.fromEntries(
  ["After_SC", "After_MAR", "After_In_Bed_Share", "After_Capital"].map((name, index) => [
    name,
    { sheet: "Cost", address: `B${index + 1}` },
  ]),
);
const PLACES: Record<string, Area> = {
  Cans_Readings: { sheet: "Cans", address: "B2:F7" },
  Cans_Across_m: { sheet: "Cans", address: "B1:F1" },
  Cans_Along_m: { sheet: "Cans", address: "A2:A7" },
};

async function open(names: Record<string, Area> = {}, cells: Record<string, Input> = {}) {
  const host = memoryHost({ Cans: cells, Cost: {} }, names);
  page = await screen(<Pane host={host} functions={[]} />);
  await page.step("Layout");
  await page.shows("Plan the cans");
  return host;
}

/** A small bed on coarse cells, so that a test takes no time. */
async function small() {
  await page.type("Bed width", "8");
  await page.type("Bed length", "12");
  await page.type("Grid of the calculation", "0.5");
  await page.shows("24 cans: 4 across");
}

const row = (measure: string) => page.text(".figures tr").find((each) => each.startsWith(measure));

describe("planning a layout", () => {
  it("shows what the typed layout gives, and follows each change", async () => {
    await open();
    await small();
    await page.shows("border, matched arcs, 4.00 × 4.00 m");
    // heads on a grid of 3 by 4; matched arcs: 2 of 160 L/h inside, 6 halves, 4 quarters: 320 + 480 + 160
    expect(row("Heads")).toBe("Heads12");
    expect(row("Flow of the bed")).toBe("Flow of the bed [L/h]960");
    // all of it in the bed: 960 L/h over 96 m2
    expect(row("MAR")).toMatch(/^MAR \[mm\/h\](10\.0|9\.9\d)$/);
    await page.type("Heads are", "inset");
    await page.shows("inset, 4.00 × 4.00 m");
    expect(row("Heads")).toBe("Heads6");
  });

  it("names the field that is wrong and keeps the last plan", async () => {
    await open();
    await small();
    await page.type("Throw", "0");
    await page.shows("radius must be more than 0 m, got 0");
    expect(page.beside("Throw")).toContain("radius must be more than 0 m, got 0");
    expect(row("Heads")).toBe("Heads12");
    await page.type("Throw", "1.5");
    await page.shows("Take care: the throw, 1.5 m, is shorter than half the head spacing, 2 m.");
  });

  it("says how much of the pump the bed takes, and the run time", async () => {
    await open();
    await small();
    await page.type("Flow of the pump", "480");
    await page.shows("200 %: too much"); // 960 of 480 L/h
    await page.type("Net depth wanted", "5");
    expect(row("Run time, driest cell")).toMatch(/\d/);
    await page.type("Net depth wanted", "none");
    await page.shows('depth must be a number, got "none"');
  });

  it("compares the usual five, with the figures of LAYOUT.COMPARE", async () => {
    await open();
    await small();
    await page.press("Compare the usual five");
    await page.shows("5: staggered");
    const sizes = { width: 8, length: 12, spacing: 4, rowSpacing: 4, cell: 0.5 };
    // the layout that is typed is the second of the usual five, and comes first
    const [full, own, ...others] = compare({ ...sizes, profile: namedProfile("triangular", 4, 160) });
    const usual = [own, full, ...others];
    const table = page.text(".figures").at(-1)!;
    const three = (value: number | string) => (typeof value === "number" ? value.toPrecision(3) : value);
    expect(table).toContain(`MAR [mm/h]${usual.map((each) => three(each!.meanRate)).join("")}`);
    expect(table).toContain(`SC, driest cell${usual.map((each) => three(each!.driestCoefficient)).join("")}`);
    expect(page.place.querySelectorAll(".side-by-side svg")).toHaveLength(5);
    expect(page.place.querySelectorAll('[aria-label="Key of the maps above"]')).toHaveLength(1);
    // drawn to one scale: the bed is as wide in each
    const beds = [...page.place.querySelectorAll(".side-by-side svg")].map((map) => map.getAttribute("viewBox"));
    expect(new Set(beds).size).toBe(1);
  });

  it("puts the person's own layout first and says which needs least water", async () => {
    await open();
    await small();
    await page.type("Heads", "staggered");
    await page.type("They throw", "matched");
    await page.press("Compare the usual five");
    await page.shows("6: staggered, full circles");
    const heads = page.text(".figures").at(-1)!;
    expect(heads).toContain("1: staggered, matched arcs, 4.00 × 4.00 m (yours)");
    await page.shows("needs least water: ");
  });

  it("reads the layouts at the cans of the measured bed too", async () => {
    const cells: Record<string, Input> = { B1: 1, C1: 4, D1: 7, A2: 1, A3: 6, A4: 11, H1: 60, H2: 100 };
    for (const [index, address] of ["B2", "C2", "D2", "B3", "C3", "D3", "B4", "C4", "D4"].entries())
      cells[address] = index < 3 ? 40 : 80;
    await open(
      { ...PLACES, Test_Minutes: { sheet: "Cans", address: "H1" }, Can_Mouth_mm: { sheet: "Cans", address: "H2" } },
      cells,
    );
    await small();
    await page.press("Keep this layout");
    await page.shows("measured bed");
    // mean (3 x 40 + 6 x 80) / 9 = 66.7 mL over pi 50^2 mm2 in an hour: 8.49 mm/h; SC = 66.7 / 40
    expect(page.text(".figures").at(-1)).toContain("MAR at the cans [mm/h]8.49");
    expect(page.text(".figures").at(-1)).toContain("SC at the cans, driest1.67");
  });

  it("searches, says what ruled the others out, opens the best and writes it as after", async () => {
    const host = await open({ ...AFTER, Multiplier_Basis: { sheet: "Cans", address: "J5" } }, { J5: "driest can" });
    await small();
    await page.type("Spacings across", "3 4");
    await page.type("Spacings along", "4");
    await page.press("Search");
    await page.shows("within every limit.");
    const layout = { ...FIRST_LAYOUT, width: "8", length: "12", cell: "0.5" };
    const all = [...search(searchOf({ ...FIRST_SEARCH, spacings: "3 4", rowSpacings: "4" }, layout)).candidates];
    const kept = all.filter(({ breaks }) => breaks.length === 0);
    await page.shows(`${all.length} layouts tried, ${kept.length} within every limit.`);
    const best = kept.reduce((one, other) => (Number(other.yearlyCost) < Number(one.yearlyCost) ? other : one));
    await page.press("Write as after");
    await page.shows("Written as after the upgrade");
    const written = await host.read({ sheet: "Cost", address: "B1:B4" });
    expect(written.flat()).toEqual([
      best.judgement.driestCoefficient,
      best.judgement.meanRate,
      best.judgement.inBedShare,
      best.capital,
    ]);
    await page.press("Open");
    await page.shows(`mean ${best.judgement.meanRate.toPrecision(3)} mm/h`);
  });

  it("writes the SC of the kind that sets the audit's run time, and asks where a layout has none of that kind", async () => {
    const basis = { ...AFTER, Multiplier_Basis: { sheet: "Cans", address: "J5" } };
    const host = await open(basis, { J5: "low quarter" });
    await small();
    await page.type("Spacings across", "3 4");
    await page.type("Spacings along", "4");
    await page.press("Search");
    await page.shows("within every limit.");
    await page.press("Write as after");
    await page.shows("with its SC (low quarter)");
    await host.type({ sheet: "Cans", address: "J5" }, [["share of pots"]]);
    await page.press("Write as after");
    await page.shows("based on a share of pots, and a layout has no SC of that kind. Write its SC (low quarter)?");
  });

  it("begins with the limits of the audit, for the kind of SC that sets its run time", async () => {
    const on = (address: string) => ({ sheet: "Cans", address });
    await open(
      {
        ...{ Limits_Table: on("K1"), Limit_MAR_High: on("K2"), Limit_SC_High: on("K3"), Limit_SCQ_High: on("K4") },
        Multiplier_Basis: on("K5"),
      },
      { K1: "MAR", K2: 12, K3: 1.5, K4: 1.3, K5: "low quarter" },
    );
    await page.shows("from the sheet Limits");
    expect(["Lowest MAR", "Highest MAR", "Highest SC"].map((label) => page.field(label).value)).toEqual([
      "",
      "12",
      "1.3",
    ]);
  });

  it("says where the cans caught another mean than the heads would give, and what could explain it", () => {
    expect(meanDifference(10, 8.1)).toBe(""); // 19 % less
    expect(meanDifference(10, 7.5)).toMatch(
      /^The heads as typed would give 10\.0 mm\/h, the cans caught 7\.50 mm\/h: 25 % less\. What could explain it: heads that give less/,
    );
    expect(meanDifference(10, 12.5)).toMatch(/25 % more\. What could explain it: heads that give more/);
  });

  it("searches with the price and the days of the workbook", async () => {
    await open(
      { Water_Price: { sheet: "Cans", address: "J1" }, Water_Days: { sheet: "Cans", address: "J2" } },
      { J1: 2.5, J2: 250 },
    );
    await page.shows("Price of water");
    expect([page.field("Price of water").value, page.field("Days watered").value]).toEqual(["2.5", "250"]);
  });

  it("says which entry of a search is wrong", async () => {
    await open();
    await small();
    await page.type("Spacings across", "3 three");
    await page.press("Search");
    await page.shows('spacings must be numbers, got "three" in place 2');
  });

  it("plans cans, says what they would read, and fills the Cans sheet without touching readings", async () => {
    const host = await open(PLACES, { B2: 7 });
    await small();
    await page.shows("By area, these cans would give SC");
    await page.press("Fill the places of the Cans sheet");
    await page.shows("The Cans sheet holds 1 reading,");
    await page.press("Change the places");
    await page.shows("The places of the cans are in the Cans sheet");
    const [across, along] = [
      (await host.read(PLACES.Cans_Across_m!)).flat().filter((place) => place !== null),
      (await host.read(PLACES.Cans_Along_m!)).flat().filter((place) => place !== null),
    ];
    expect(across.length * along.length).toBeGreaterThanOrEqual(24);
    expect([across[0], across.at(-1), along[0], along.at(-1)]).toEqual([0.3, 7.7, 0.3, 11.7]);
    expect(await host.read({ sheet: "Cans", address: "B2" })).toEqual([[7]]);
  });

  it("axe finds nothing in it", async () => {
    await open();
    await small();
    await page.press("Compare the usual five");
    await page.shows("5: staggered");
    expect(await axeFindings(page.place)).toEqual([]);
  });
});
