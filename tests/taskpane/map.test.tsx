// @vitest-environment jsdom
import { afterEach, describe, expect, it } from "vitest";
import { Pane } from "../../src/taskpane/pane";
import { clearBed } from "../core/bed/made-beds";
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
  await page.step("Answer");
  await page.shows("Cans from");
  return host;
}

/** A workbook whose named cells hold a bed: readings from B2, places in row 1 and column A, the rest from A30. */
function auditOf(cause: "one weak head") {
  const bed = clearBed(cause);
  const letter = (column: number) => String.fromCharCode(65 + column);
  const cells: Record<string, number | string> = {};
  for (const [column, x] of bed.across.entries()) cells[`${letter(column + 1)}1`] = x;
  for (const [row, y] of bed.along.entries()) {
    cells[`A${row + 2}`] = y;
    for (const [column, caught] of bed.grid[row]!.entries()) cells[`${letter(column + 1)}${row + 2}`] = caught!;
  }
  const named = {
    Head_Layout: "border",
    Bed_Width_m: bed.width,
    Bed_Length_m: bed.length,
    Head_Spacing_m: bed.spacing,
    Row_Spacing_m: bed.rowSpacing,
    Head_Arc: "full circles",
    Test_Minutes: 15,
    Can_Mouth_mm: 100,
  };
  const at = (address: string) => ({ sheet: "Audit", address });
  const names = Object.fromEntries(Object.keys(named).map((name, i) => [name, at(`A${30 + i}`)]));
  for (const [i, value] of Object.values(named).entries()) cells[`A${30 + i}`] = value;
  return memoryHost(
    { Audit: cells },
    {
      ...{ ...names, Cans_Readings: at("B2:H10"), Cans_Across_m: at("B1:H1"), Cans_Along_m: at("A2:A10") },
      ...{ Head_Throw_m: at("C30"), Flow_Lh: at("D30:D49") },
    },
  );
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

  it("says what may be wrong once the throw is in the workbook, marks the head, and says what it lacks before", async () => {
    const host = auditOf("one weak head");
    page = await screen(<Pane host={host} functions={[]} />);
    await page.step("Answer");
    await page.shows("Type the throw of a head on the sheet Block to see the cause.");
    expect(page.place.querySelectorAll("rect.marked-head")).toHaveLength(0);
    const throwCell = (await host.named("Head_Throw_m"))!;
    await host.type(throwCell, [[3.2]]);
    await page.shows("One weak head, head 10 at 3.0, 6.0 m");
    await page.shows("Next: bucket head 10 at 3.0, 6.0 m and head 6 at 3.0, 3.0 m.");
    expect(page.place.querySelectorAll("rect.marked-head")).toHaveLength(1);
    expect(page.text("svg .head-number")).toHaveLength(20);
    await host.type(
      (await host.named("Flow_Lh"))!,
      Array.from({ length: 20 }, (_, k) => [k === 9 ? 20 : 200]),
    );
    await page.shows("what was measured: bucket at head 10: 10 % of the others");
    await page.shows("Next: clean or replace head 10, then test again.");
    await host.type({ sheet: "Audit", address: "A30" }, [["other"]]);
    await page.shows(
      "Fill in the bed, layout and spacings on the sheet Block, or the places of the heads on the sheet Heads",
    );
    await page.shows("under three quarters of the mean");
    expect(await axeFindings(page.place)).toEqual([]);
  });

  it("shows the whole bed by fit beside the sheets' figures, the fitted bed and what is left of the cans", async () => {
    const host = auditOf("one weak head");
    await host.type((await host.named("Head_Throw_m"))!, [[3.2]]);
    page = await screen(<Pane host={host} functions={[]} />);
    await page.step("Answer");
    await page.shows("The whole bed, by fit");
    await page.shows("of 30 beds drawn without such a fault");
    await page.shows("of 30 beds drawn without such a fault");
    expect(page.text("section[aria-labelledby=canfall-answer-whole] th[scope=row]")).toEqual(["MAR", "CU", "DU"]);
    await page.type("Shown", "fitted");
    await page.shows("as fitted; mm/h caught at each can");
    await page.shows("share of bed");
    await page.type("Shown", "left");
    await page.shows("Difference, in % of the mean");
    await page.shows("−10 to +10 %");
    expect(await axeFindings(page.place)).toEqual([]);
  });

  it("axe finds nothing in it", async () => {
    await open("E1:G4");
    await page.type("Cans from", "list");
    await page.shows("1 of 4 cans");
    expect(await axeFindings(page.place)).toEqual([]);
  });
});
