// @vitest-environment jsdom
import { afterEach, describe, expect, it } from "vitest";
import { Pane } from "../../src/taskpane/pane";
import { axeFindings } from "../support/axe-findings";
import { memoryHost } from "../support/memory-host";
import { screen } from "../support/screen";

let page: Awaited<ReturnType<typeof screen>>;
afterEach(() => page.close());

/** Nine cans [mm] 2 m apart across and 3 m along, dry along the first row; 60 min make mm the mm/h. */
const CANS = {
  A1: 4,
  B1: 4,
  C1: 4,
  A2: 10,
  B2: 10,
  C2: "x",
  A3: 10,
  B3: 12,
  C3: 10,
};
const LIST = {
  E1: 0,
  F1: 0,
  G1: 4,
  E2: 2,
  F2: 0,
  G2: 8,
  E3: 0,
  F3: 3,
  G3: 8,
  E4: 2,
  F4: 3,
  G4: 8,
};

async function open(selected: string) {
  const host = memoryHost({ Bed: { ...CANS, ...LIST } as Record<string, number | string> });
  await host.select({ sheet: "Bed", address: selected });
  page = await screen(<Pane host={host} functions={[]} />);
  await page.step("Readings");
  await page.type("Length of the test", "60");
  await page.type("Readings are in", "mm");
  await page.step("Map");
  await page.shows("Cans from");
  return host;
}

describe("the map", () => {
  it("draws selected cans with their rates, says what is seen and what it may come from", async () => {
    await open("A1:C3");
    await page.type("Cans from", "grid");
    await page.type("Cans apart across the width", "2");
    await page.type("Cans apart along the length", "3");
    // mean of the eight cans: (3 x 4 + 2 x 10 + 10 + 12 + 10) / 8 = 8; 4 is half of it
    await page.shows("3 of 8 cans get under three quarters of the mean, all on one short edge.");
    expect(page.text("svg text").join(" ")).toContain("mm/h at each can; mean 8.00 mm/h");
    expect(page.text("svg text").filter((words) => words === "4.00" || words === "12.0" || words === "×")).toEqual([
      "4.00",
      "4.00",
      "4.00",
      "×",
      "12.0",
    ]);
    await page.shows("Likely: wind during the test");
  });

  it("says why ground is hatched where a can was not read, and only there", async () => {
    const host = await open("A1:C3");
    await page.type("Cans from", "grid");
    await page.type("Cans apart across the width", "2");
    await page.type("Cans apart along the length", "3");
    await page.shows("3 of 8 cans get under three quarters of the mean");
    const caption = "×: not read. No rate is known round it, so that ground is hatched.";
    expect(page.text("svg tspan")).toEqual([caption]);
    expect(page.place.querySelectorAll("svg pattern")).toHaveLength(1);
    await host.type({ sheet: "Bed", address: "C2" }, [[10]]);
    await page.shows("3 of 9 cans get under three quarters of the mean");
    expect(page.text("svg tspan")).toEqual([]);
    expect(page.place.querySelectorAll("svg pattern")).toHaveLength(0);
    await host.type({ sheet: "Bed", address: "A1:A3" }, [[4], ["x"], [9]]);
    await host.select({ sheet: "Bed", address: "A1:A3" });
    await page.shows("2 cans");
    expect(page.text("svg tspan")).toEqual(["×: not read."]);
  });

  it("colours only ground between four cans that were read", async () => {
    await open("A1:C3");
    await page.type("Cans from", "grid");
    await page.type("Cans apart across the width", "2");
    await page.type("Cans apart along the length", "3");
    await page.shows("on one short edge");
    expect(page.place.querySelectorAll("clipPath rect")).toHaveLength(2); // the two left of the can marked x
  });

  it("counts the cans of each class in its legend", async () => {
    await open("E1:G4");
    await page.type("Cans from", "list");
    // mean (4 + 8 + 8 + 8) / 4 = 7: one can at 57 %, three at 114 %
    await page.shows("1 of 4 cans gets under three quarters of the mean");
    const legend = page.text("svg text").join("|");
    expect(legend).toContain("2|− −|50 to 75 %|1|25 %");
    expect(legend).toContain("5|+|110 to 125 %|3|75 %");
  });

  it("says what it lacks, and what is wrong with a distance", async () => {
    await open("A1:C3");
    await page.shows("This workbook has no cells named Cans_Readings: add the audit sheets, or choose selected cells");
    await page.type("Cans from", "grid");
    await page.shows("The map needs the distances between the cans");
    await page.type("Cans apart across the width", "0");
    await page.shows("spacing across must be more than 0 m, got 0");
  });

  it("paints a Coverage sheet of formulas over the cans' own cells, and takes it out again", async () => {
    const host = await open("A1:C3");
    await page.type("Cans from", "grid");
    await page.type("Cans apart across the width", "2");
    await page.type("Cans apart along the length", "3");
    await page.shows("on one short edge");
    await page.press("Paint the Coverage sheet");
    await page.shows("The Coverage sheet shows these cans");
    const rates = (await host.named("Coverage_Rates"))!;
    expect(rates.sheet).toBe("Coverage");
    const typed = await host.inputs(rates);
    expect(typed.slice(0, 3).map((line) => line.slice(0, 3))).toEqual(
      [1, 2, 3].map((row) =>
        ["A", "B", "C"].map((column) => {
          const can = `Bed!${column}${row}`;
          return `=IF(ISNUMBER(${can}),${can}*60/60,IF(TRIM(${can})="x","x",""))`;
        }),
      ),
    );
    expect(typed.flat().filter((input) => input !== "")).toHaveLength(9);
    expect((await host.inputs((await host.named("Coverage_Along"))!)).flat().slice(0, 4)).toEqual([0, 3, 6, ""]);
    await page.press("Undo");
    await page.shows("The sheet Coverage is taken out");
    expect(await host.sheets()).toEqual(["Bed"]);
  });

  it("axe finds nothing in it", async () => {
    await open("E1:G4");
    await page.type("Cans from", "list");
    await page.shows("1 of 4 cans");
    expect(await axeFindings(page.place)).toEqual([]);
  });
});
