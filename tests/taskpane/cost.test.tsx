// @vitest-environment jsdom
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

/** Figures of the workbook by name; low, likely and high where there are three. */
const FIGURES: Record<string, Input | [Input, Input, Input]> = {
  Cost_Water_Now: [600, 1200, 1800],
  Cost_Water_After: [400, 800, 1200],
  Saved_Water: [200, 400, 600],
  Cost_Power_Now: [30, 30, 30],
  Cost_Power_After: [20, 20, 20],
  Saved_Power: [10, 10, 10],
  Cost_Labour_Now: ["–", "–", "–"],
  Cost_Labour_After: ["–", "–", "–"],
  Saved_Labour: ["–", "–", "–"],
  Cost_Total_Now: [630, 1230, 1830],
  Cost_Total_After: [420, 820, 1220],
  Saved: [210, 410, 610],
  Payback: [5, 2.56, 1.72],
  NPV: [425, 1830, 3234],
  Paying_Price: [0.7, 0.69, 0.68],
  Cost_Missing: "labour: needs hours of 0 or more; what lacks a figure is not counted.",
  Saved_Why: "All kinds count: enough for the driest pot now and after.",
  Upgrade_Capital: 1050,
  Upgrade_Worth: 7.02,
  Waters_To_Driest: "yes",
  Block_Name: "block 7",
  Wage: "",
  Upgrade_Rate: 0.07,
  Step_Ends: "",
};

function costHost(changed: typeof FIGURES = {}): MemoryHost {
  const cells: Record<string, Input> = { A1: "Cost" };
  const names: Record<string, Area> = {};
  let row = 2;
  for (const [name, value] of Object.entries({ ...FIGURES, ...changed })) {
    const all = typeof value === "object" ? value : [value];
    all.forEach((one, index) => {
      const address = `${"BCD"[index]}${row}`;
      if (one !== "") cells[address] = one;
      names[all.length === 1 ? name : `${name}_${["Low", "Likely", "High"][index]}`] = { sheet: "Cost", address };
    });
    row += 1;
  }
  return memoryHost({ Cost: cells, Mine: { A1: 1 } }, names);
}

async function open(book: MemoryHost): Promise<void> {
  host = book;
  page = await screen(<Pane host={host} functions={[]} />);
  await page.step("Cost");
}

const rows = () => page.text("tbody tr");

describe("the step Cost", () => {
  it("says where an audit comes from where the workbook has none", async () => {
    await open(memoryHost({ Mine: {} }));
    await page.shows("The open workbook has no sheet Cost");
  });

  it("shows each kind now, after and saved, from the low to the high prices", async () => {
    await open(costHost());
    await page.shows("Saved a year 410 (210 to 610, from the low to the high prices)");
    expect(rows()).toEqual([
      "Water1,200600 to 1,800800400 to 1,200400200 to 600",
      "Power30.0020.0010.00",
      "Fertiliser lost–––",
      "Labour–––",
      "Plants lost–––",
      "Together1,230630 to 1,830820420 to 1,220410210 to 610",
    ]);
    await page.shows("What is missing: labour: needs hours of 0 or more");
  });

  it("says when the change pays", async () => {
    await open(costHost());
    await page.shows("Pays back in 2.6 years (1.7 to 5.0 years, from the high to the low prices)");
    await page.shows("Net present value 1,830 (425 to 3,234");
    await page.shows("What the savings of the change's life are worth today, less what the change costs.");
    await page.shows("Break-even water price 0.69 per kL (0.68 to 0.70 per kL, from the high to the low prices)");
  });

  it("says what is in the way where nothing pays, and that free water pays", async () => {
    await open(
      costHost({
        Saved: ["–", "–", "–"],
        Payback: ["–", "–", "–"],
        Paying_Price: [-1, -1, -1],
        Saved_Why: "No saving yet",
      }),
    );
    await page.shows("No saving yet");
    await page.shows("It pays even where water is free.");
    expect(page.place.textContent).not.toContain("Pays back in");
    await page.close();
    await open(costHost({ NPV: ["–", "–", "–"], Payback: [2.58, 2.56, 2.56] }));
    await page.shows("Pays back in 2.6 yearsBreak-even");
    expect(page.place.textContent).not.toContain("are worth today");
  });

  it("draws both years with their kinds in words", async () => {
    await open(costHost());
    await page.shows("Saved a year");
    expect(page.place.querySelector(".picture svg")!.getAttribute("aria-label")).toBe(
      "Now 1,230: water 1,200, power 30.00; After 820: water 800, power 20.00",
    );
  });

  it("writes what is typed into the sheet, refuses what is no number there, and takes it back", async () => {
    await open(costHost());
    await page.shows("What it is calculated from");
    await page.type("Price of an hour", "38");
    page.field("Price of an hour").dispatchEvent(new FocusEvent("focusout", { bubbles: true }));
    await page.shows("entry in Cost!");
    const wage = (await host.named("Wage"))!;
    expect(await host.inputs(wage)).toEqual([[38]]);
    await page.press("Undo");
    expect(await host.inputs(wage)).toEqual([[""]]);
    await page.type("Discount rate", "7");
    page.field("Discount rate").dispatchEvent(new FocusEvent("focusout", { bubbles: true }));
    await page.shows("discount rate must be from 0 to 1, got 7");
  });

  it("has a field for the watering days, with the cell that keeps them", async () => {
    const book = costHost();
    const days = { sheet: "Mine", address: "B4" };
    book.define("Water_Days", days);
    await open(book);
    await page.shows("What it is calculated from");
    expect(page.beside("Watering days [days a year]")).toBe("kept in Mine!B4");
    await page.type("Watering days", "300");
    page.field("Watering days").dispatchEvent(new FocusEvent("focusout", { bubbles: true }));
    await page.shows("entry in Mine!B4");
    expect(await host.inputs(days)).toEqual([[300]]);
  });

  it("has nothing that axe finds", async () => {
    await open(costHost());
    await page.shows("Saved a year");
    expect(await axeFindings(page.place)).toEqual([]);
  });
});
