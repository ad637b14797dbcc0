// @vitest-environment jsdom
import { act } from "react";
import { afterEach, describe, expect, it } from "vitest";
import type { Area } from "../../src/cells/area";
import type { Input } from "../../src/cells/cell";
import { Pane } from "../../src/taskpane/pane";
import { axeFindings } from "../support/axe-findings";
import { type MemoryHost, memoryHost } from "../support/memory-host";
import { screen } from "../support/screen";

let page: Awaited<ReturnType<typeof screen>>;
let host: MemoryHost;
afterEach(() => page.close());

const COLUMNS = "BCDEFG";
const at = (address: string): Area => ({ sheet: "Demand", address });
const NAMES: Record<string, Area> = {
  Demand_Groups: at("B5:G5"),
  Demand_Tops_mm: at("B6:G6"),
  Demand_Shapes: at("B7:G7"),
  Demand_Captures: at("B8:G8"),
  Demand_Coefficients: at("B9:G9"),
  Demand_Areas_m2: at("B10:G10"),
  Demand_Rained: at("B11:G11"),
  Demand_Take_Up_mm: at("B12:G12"),
  Demand_Depths: at("B20:G31"),
  Demand_Use_mL: at("B60:G71"),
  Demand_How: at("B40:G51"),
  Weather_How: { sheet: "Weather", address: "N6:N17" },
};

/** A plan whose Demand sheet shows these depths and reasons, by column and month. */
function planHost(groups: Record<string, { depths: Input[]; how?: string[] }>, weather: string[] = []): MemoryHost {
  const cells: Record<string, Input> = { A1: "Demand" };
  Object.entries(groups).forEach(([name, { depths, how = [] }], index) => {
    const column = COLUMNS[index]!;
    cells[`${column}5`] = name;
    for (let month = 0; month < 12; month += 1) {
      cells[`${column}${20 + month}`] = depths[month] ?? depths.at(-1)!;
      if (how[month]) cells[`${column}${40 + month}`] = how[month];
    }
  });
  const said = Object.fromEntries(weather.map((words, month) => [`N${6 + month}`, words]));
  return memoryHost({ Demand: cells, Weather: { A1: "Weather", ...said }, Mine: { A1: 1 } }, NAMES);
}

async function open(book: MemoryHost): Promise<void> {
  host = book;
  page = await screen(<Pane host={host} functions={[]} />);
  await page.step("Demand");
  await page.shows("Demand");
}

const YEAR = [6, 5, 4, 3, 2, 1, 2, 3, 4, 5, 6, 7];

describe("the step Demand", () => {
  it("offers the nursery plan where the workbook has none", async () => {
    await open(memoryHost({ Mine: {} }));
    await page.shows("Add the nursery plan sheets to this workbook");
  });

  it("draws the year and puts the same figures into a table", async () => {
    await open(planHost({ herbs: { depths: YEAR }, trees: { depths: [8.5] } }));
    await page.shows("What the pots need");
    expect(page.place.querySelector("svg")!.getAttribute("aria-label")).toBe(
      "Net depth to water by month, mm a day. herbs: most 7.00 in December, least 1.00 in June; trees: most 8.50 in January, least 8.50 in January",
    );
    expect(page.text("tbody tr")[6]).toBe("July2.008.50");
    expect(page.text("svg text")).toContain("herbs");
    expect(page.place.querySelectorAll("svg circle")).toHaveLength(12 + 1);
    expect(page.text("h3")).not.toContain("Still missing");
  });

  it("says which months are missing and why, in the words of the sheet that holds the cell, and leaves a gap", async () => {
    const none = "needs weather";
    const depths = [none, none, 3, none, ...YEAR.slice(4)];
    const how = ["Weather!N6 says why", "Weather!N7 says why", "", "Weather!N9 says why"];
    const words = [
      "needs ET0, or Tmin and Tmax",
      "needs ET0, or Tmin and Tmax",
      "typed",
      "Tmin in B9 must be at most Tmax, 20 °C in C9, got 25",
    ];
    await open(planHost({ herbs: { depths, how }, trees: { depths: ["needs pot top"] } }, words));
    await page.shows("Still missing");
    expect(page.text("li")).toEqual(
      expect.arrayContaining([
        "herbs, January to February: needs ET0, or Tmin and Tmax",
        "herbs, April: Tmin in B9 must be at most Tmax, 20 °C in C9, got 25",
        "trees, every month: needs pot top",
      ]),
    );
    const line = page.place.querySelector('svg path[stroke="#543005"]')!.getAttribute("d")!;
    expect(line.match(/M/g)).toHaveLength(2);
    expect(page.text("tbody tr")[0]).toBe("January––");
  });

  it("says once what is missing in every group", async () => {
    const depths = [6, "needs mending", ...YEAR.slice(2)];
    const how = ["", "Weather!N7 says why"];
    const book = planHost({ herbs: { depths, how }, trees: { depths, how } }, [
      "typed",
      "typed; rain in I7 must be from 0 to 10000 mm, got -4",
    ]);
    await book.type(at("B61:C61"), [[310, 900]]);
    await open(book);
    await page.shows("Still missing");
    expect(page.text("li")).toEqual(["every group, February: rain in I7 must be from 0 to 10000 mm, got -4"]);
  });

  it("writes the facts of the chosen group into the workbook's cells, and Undo takes them back", async () => {
    await open(planHost({ herbs: { depths: YEAR }, trees: { depths: [8.5] } }));
    await page.type("Group", "1");
    expect(page.field("Name of the group").value).toBe("trees");
    await page.type("Pot's top", "400");
    await act(async () => page.field("Pot's top").dispatchEvent(new FocusEvent("focusout", { bubbles: true })));
    await page.shows("kept in Demand!C6");
    expect((await host.inputs(at("C6")))[0]![0]).toBe(400);
    await page.type("Exposed to rain", "no");
    expect((await host.inputs(at("C11")))[0]![0]).toBe("no");
    await page.press("Undo");
    expect((await host.inputs(at("C11")))[0]![0]).toBe("");
  });

  it("refuses a fact that can't be, in words", async () => {
    await open(planHost({ herbs: { depths: YEAR } }));
    await page.type("Capture factor", "0");
    await act(async () => page.field("Capture factor").dispatchEvent(new FocusEvent("focusout", { bubbles: true })));
    await page.shows("capture factor must be from 0.01 to 20, got 0");
    expect((await host.inputs(at("B8")))[0]![0]).toBe("");
  });

  it("inserts a function on the sheets' own cells", async () => {
    await open(planHost({ herbs: { depths: YEAR } }));
    await act(() => host.select({ sheet: "Mine", address: "C3" }));
    await page.type("Function", "1");
    await page.type("Month", "6");
    await page.press("Insert at the selected cell");
    await page.shows("Inserted in Mine!C3");
    expect((await host.inputs({ sheet: "Mine", address: "C3" }))[0]![0]).toBe(
      "=CANFALL.ETO.HARGREAVES(INDEX(Weather_Typed,7,1),INDEX(Weather_Typed,7,2),Latitude_deg,197)",
    );
  });

  it("begins with a name where no group has one", async () => {
    await open(planHost({}));
    await page.shows("No pot group is named yet");
    expect(page.place.querySelector("svg[role=img]")).toBeNull();
  });

  it("has nothing that axe finds", async () => {
    await open(planHost({ herbs: { depths: YEAR }, trees: { depths: ["needs pot top"] } }));
    await page.shows("Still missing");
    expect(await axeFindings(page.place)).toEqual([]);
  });
});
