// @vitest-environment jsdom
import { act } from "react";
import { afterEach, describe, expect, it } from "vitest";
import type { Input } from "../../src/cells/cell";
import { Pane } from "../../src/taskpane/pane";
import { axeFindings } from "../support/axe-findings";
import { type MemoryHost, memoryHost } from "../support/memory-host";
import { screen } from "../support/screen";
import { auditHost, cellOf } from "./audit-book";

let page: Awaited<ReturnType<typeof screen>>;
let host: MemoryHost;

async function open(book: MemoryHost): Promise<void> {
  host = book;
  page = await screen(<Pane host={host} functions={[]} />);
}

const readings = { B10: 20, C10: 25, B11: 30, C11: 25 };
const filled = (named: Record<string, Input>) =>
  auditHost({ cells: { Cans: readings }, named: { Can_Mouth_mm: 100, Test_Minutes: 15, ...named } });
const BLOCKS = { Program_Blocks: { sheet: "Program", address: "A3:I4" } };
const current = () => page.text('[role=tab][aria-selected="true"]')[0];
const input = async (name: string) => (await host.inputs(cellOf(name)))[0]![0];

afterEach(() => page.close());

describe("the steps of the pane", () => {
  it.each([
    ["Set up", "a workbook without an audit", () => memoryHost({ Mine: {} })],
    ["Answer", "an audit without readings", () => auditHost()],
    ["Answer", "an audit with readings", () => filled({})],
    ["Demand", "a nursery plan without blocks", () => memoryHost({ Program: { A1: "Program" } }, BLOCKS)],
    ["Schedule", "a nursery plan with blocks", () => memoryHost({ Program: { A3: "block 1", C3: 480 } }, BLOCKS)],
  ])("open at %s for %s", async (title, _, book) => {
    await open(book());
    await page.shows("Undo");
    expect(current()).toContain(title);
  });

  it("are those of another workbook once it is opened", async () => {
    await open(memoryHost({ Program: { A3: "block 1", C3: 480 } }, BLOCKS));
    await page.shows("Undo");
    expect(current()).toContain("Schedule");
    const file = await filled({}).bytes();
    await act(async () => void (await host.openBook(file, "block 12.xlsx")));
    await page.shows("Driest can");
    expect(current()).toContain("Answer");
  });

  it("keep what was typed in a step while another is open", async () => {
    await open(filled({}));
    await page.step("Readings");
    await page.type("Share of the cans", "0.8");
    await page.step("Answer");
    await page.step("Readings");
    expect(page.field("Share of the cans").value).toBe("0.8");
  });
});

describe("readings of an audit", () => {
  it("take the test's settings from the workbook, and call none wrong that is not filled in yet", async () => {
    await open(auditHost({ cells: { Cans: readings }, named: { Can_Mouth_mm: 100, Multiplier_Basis: "low quarter" } }));
    await page.step("Readings");
    await page.shows("Run time needs the length of the test and the net depth wanted");
    expect(page.beside("Length of the test")).toBe("Cans!C5 is not filled in yet");
    expect(page.beside("Net depth wanted")).toBe("'Run time'!C4 is not filled in yet");
    expect(page.beside("Can mouth")).toBe("100 mm, from Cans!C4");
    expect(page.beside("Share of the cans")).toBe("0.900 of the cans, from 'Run time'!C6");
    expect(page.field("Run time is set by").value).toBe("quarter");
    await page.type("Run time is set by", "can");
    await act(() => host.type(cellOf("Test_Minutes"), [[15]]));
    await page.shows("15.0 min, from Cans!C5");
    expect(page.field("Run time is set by").value).toBe("can");
  });

  it("come with the workbook's own words on what is wrong, and the way to them", async () => {
    const edge =
      "No cans within 0.6 m of these edges: top. Add cans there, or say that the result is of the interior only.";
    const wrong = "1 reading is neither a number from 0 up nor x, first in C11 (below 0): type again.";
    const checks = {
      A20: "Readings",
      B20: wrong,
      A22: "Wind",
      B22: "ok",
      A24: "Edge cans",
      B24: edge,
    };
    await open(auditHost({ cells: { Cans: checks } }));
    await page.step("Readings");
    await page.shows(`Readings: ${wrong} Cans!C11`);
    expect(page.text(".problem li")).toEqual([`Readings: ${wrong} Cans!C11`, `Edge cans: ${edge} Cans!B24`]);
    await page.press("Cans!C11");
    expect(await host.selection()).toEqual({ sheet: "Cans", address: "C11" });
    await page.press("Select the readings");
    expect(await host.selection()).toEqual({ sheet: "Cans", address: "B10:C11" });
  });
});

describe("the run time of the workbook", () => {
  const shown = "Run time 67.1 min (driest can, equal weight), as on the sheet Run time.";

  it("is beside that of the driest can, for the workbook's own cans only", async () => {
    await open(auditHost({ named: { Result_Run_Time_min: 67.13 }, cells: { Cans: readings } }));
    await page.step("Readings");
    await page.shows(shown);
    await act(() => host.select({ sheet: "Cans", address: "B11:C11" }));
    await page.shows("Driest can 25.0 mL in C11");
    expect(page.place.textContent).not.toContain("as on the sheet Run time");
  });

  it("is left out while the workbook has none", async () => {
    await open(auditHost({ cells: { Cans: readings } }));
    await page.step("Readings");
    await page.shows("Driest can 20.0 mL in B10");
    expect(page.place.textContent).not.toContain("as on the sheet Run time");
  });
});

describe("a selection on the sheet of the cans", () => {
  const placed = { B9: 0.5, C9: 2, A10: 1, A11: 3 };
  const open2 = async () => {
    await open(auditHost({ placed: true, cells: { Cans: { ...readings, ...placed } } }));
    await page.step("Readings");
  };

  it("is never taken for readings where it holds their places", async () => {
    await open2();
    await act(() => host.select({ sheet: "Cans", address: "B9:C9" }));
    // the lowest of 20, 25, 30, 25 and not of 0.5 and 2
    await page.shows("Driest can 20.0 mL in B10");
    expect(page.text(".where")).toEqual(["Cans!B10:C11"]);
    await act(() => host.select({ sheet: "Cans", address: "A9:C11" }));
    await page.shows("Driest can 20.0 mL in B10");
  });

  it("may be a part of the readings, and is said to be one", async () => {
    await open2();
    await act(() => host.select({ sheet: "Cans", address: "B11:C11" }));
    await page.shows("Driest can 25.0 mL in C11");
    expect(page.text(".where")).toEqual(["Cans!B11:C11: only the selected part of the cans"]);
  });
});

describe("readings from elsewhere", () => {
  const box = "Readings [mL], a line for each row";
  const places = { sheet: "Cans", address: "B10:C11" };

  it("go into the places for cans and are taken out again", async () => {
    await open(auditHost());
    await page.step("Readings");
    await page.type(box, "20 25\n30 x");
    await page.press("Put them into the workbook");
    await page.shows("The readings are in Cans!B10:C11. Undo takes them out");
    expect(await host.read(places)).toEqual([
      [20, 25],
      [30, "x"],
    ]);
    await page.press("Undo");
    await page.shows("Cans!B10:C11 is as before the entry");
    expect((await host.read(places)).flat()).toEqual([null, null, null, null]);
  });

  it("bring their places where the first cell says m, and Undo takes both out", async () => {
    await open(auditHost({ placed: true }));
    await page.step("Readings");
    await page.type(box, "m 0.5 2\n1 20 25\n3.5 30 x");
    await page.press("Put them into the workbook");
    await page.shows("The readings are in Cans!B10:C11, their places beside them.");
    await page.shows("takes back: entry in Cans!B10:C11 and 2 other ranges");
    expect(await host.read({ sheet: "Cans", address: "A9:C11" })).toEqual([
      [null, 0.5, 2],
      [1, 20, 25],
      [3.5, 30, "x"],
    ]);
    await page.press("Undo");
    await page.shows("Cans!B10:C11 and 2 other ranges are as before the entry");
    expect((await host.read({ sheet: "Cans", address: "A9:C11" })).flat().every((cell) => cell === null)).toBe(true);
  });

  it("replace others only when told so", async () => {
    await open(auditHost({ cells: { Cans: { B10: 18 } } }));
    await page.step("Readings");
    await page.type(box, "20 25");
    await page.press("Put them into the workbook");
    await page.shows("B10 holds 18. Replace what is there?");
    await page.press("Keep");
    expect(await host.read(places)).toEqual([
      [18, null],
      [null, null],
    ]);
    expect(page.field(box).value).toBe("20 25");
  });

  it("are not mixed with old ones without a word", async () => {
    await open(auditHost({ cells: { Cans: { B10: 18, B11: 12 } } }));
    await page.step("Readings");
    await page.type(box, "20 25");
    await page.press("Put them into the workbook");
    await page.shows(
      "B10 holds 18. Replace what is there? 1 other reading stays and counts with these: clear the old ones first where this is a new test.",
    );
  });

  it("are refused where there are more than places", async () => {
    await open(auditHost());
    await page.step("Readings");
    await page.type(box, "20 25 30");
    await page.press("Put them into the workbook");
    await page.shows('readings must fit 2 places across and 2 along, got "3 across and 1 along"');
  });
});

describe("results of an audit", () => {
  it("have what the data checks say above them, and those that lack something apart", async () => {
    const checks = {
      A20: "Wind",
      B20: "not checked: needs the wind log on Heads",
      A22: "Mean catch",
      B22: "under 2.3",
    };
    await open(auditHost({ cells: { Cans: { ...readings, ...checks } } }));
    await page.shows("Mean catch: under 2.3 Cans!C5");
    await page.shows("Data checks that lack something: 1");
    expect(page.text(".problem li")).toEqual(["Mean catch: under 2.3 Cans!C5"]);
  });

  it("are on the same basis as those that the workbook states", async () => {
    // strips across 1.5 and 4.5 m wide, along 2 m each: areas 3, 9 and 3, 9
    const places = { B9: 1, C9: 2, A10: 1, A11: 3 };
    const named = { By_Area: true, Bed_Width_m: 6, Bed_Length_m: 4, Can_Mouth_mm: 100, Test_Minutes: 15 };
    // (3 · 20 + 9 · 25 + 3 · 30 + 9 · 25) / 24 = 25 mL, over pi 100² / 4 mm² in 15 min
    const stated = { Used_MAR: 12.732395447 };
    const host = auditHost({
      cells: { Cans: { ...readings, ...places } },
      placed: true,
      named: { ...named, ...stated },
    });
    await open(host);
    const rows = () => page.text("tr").filter((each) => each.startsWith("Mean application rate"));
    expect(rows()[0]).toMatch(/^Mean application rate12\.7 mm\/h/);
    await page.shows("By area: each can is weighted by the ground that it is for");
    // 40 mL in the upper right can: (60 + 360 + 90 + 225) / 24 = 30.625 mL, and 28.75 mL with equal weight
    await host.type({ sheet: "Cans", address: "C10" }, [[40]]);
    await page.shows("15.6 mm/h");
    await page.shows("With equal weight for each can");
    expect(rows()[0]).toMatch(/^Mean application rate15\.6 mm\/h/);
    expect(rows()[1]).toMatch(/^Mean application rate15\.6 mm\/h/);
    expect(rows()[2]).toMatch(/^Mean application rate14\.6 mm\/h/);
  });

  it("have equal weight where the workbook has no places, in one line", async () => {
    await open(filled({ Used_MAR: 12.7, By_Area: false }));
    await page.shows("Each can has equal weight.");
    expect(page.place.textContent).not.toContain("With equal weight for each can");
  });

  it("of an older workbook keep its rules, and the first step says what is new", async () => {
    const host = auditHost({ cells: { Block: { C20: "1.1" } } });
    host.define("Workbook_Version", { sheet: "Block", address: "C20" });
    await open(host);
    await page.step("Set up");
    await page.shows("This workbook is of version 1.1 and keeps the rules of that version. New since:");
    await page.close();
    const plan = auditHost({ cells: { Block: { C20: "1.0" } } });
    plan.define("Plan_Version", { sheet: "Block", address: "C20" });
    await open(plan);
    await page.step("Set up");
    await page.shows("This nursery plan is of version 1.0 and keeps the rules of that version. New since:");
  });

  it("follow an older workbook, which says in its own way whether areas count", async () => {
    const places = { B9: 1, C9: 2, A10: 1, A11: 3 };
    const named = { Bed_Width_m: 6, Bed_Length_m: 4, Can_Mouth_mm: 100, Test_Minutes: 15 };
    const cells = { Cans: { ...readings, ...places } };
    await open(auditHost({ cells, placed: true, named: { ...named, Positions_Uneven: true } }));
    await page.shows("By area: each can is weighted");
  });
});

describe("the run time of an audit", () => {
  it("is shown as the workbook has it, with its pulses", async () => {
    const pulses = { Pulse_Count: 3, Pulse_min: 10.417, Pulses_Elapsed_min: 71.25 };
    await open(filled({ Result_Run_Time_min: 31.25, Net_Depth_mm: 5, Run_Multiplier: 1.25, ...pulses }));
    await page.step("Answer");
    await page.shows("Run for 31.3 min a day");
    await page.shows("Net depth 5.00 mm; multiplier 1.25");
    await page.shows("In 3 pulses of 10.4 min, 71.3 min from start to end");
  });

  it("shows a cell that the workbook calculates and lets nobody type over it", async () => {
    await open(filled({ Depth_Typed_mm: "=C20" }));
    await page.step("Answer");
    await page.shows("calculated by the workbook in 'Run time'!C3");
    expect((page.field("Net depth wanted") as HTMLInputElement).readOnly).toBe(true);
  });

  it("is that of the valve where another bed runs longer, and shows what each pot size gets", async () => {
    const book = filled({ Result_Run_Time_min: 30, Net_Depth_mm: 6 });
    const rows: Record<string, Input> = {
      Valve_Run_min: 45,
      Valve_Words: "all 2 beds on the valve",
      Bed_Litres_A_Day: 3600,
      Between_Pots_Share: 0.444,
      Pots_Drained_Share: 0.178,
      Mean_Drained_Share: 0.32,
      Groups_Names: "small",
      Groups_In_Use: 2,
      Groups_Problem: "",
      Groups_Neediest: "small",
      Group_1_Depth_mm: 6,
      Group_1_Share: 0.6,
      Group_1_Run_min: 30,
      Group_1_Times: 1.5,
      Group_1_Drained: 0.25,
      Group_2_Depth_mm: 3,
      Group_2_Share: 0.4,
      Group_2_Run_min: 15,
      Group_2_Times: 3,
      Group_2_Drained: 0.625,
    };
    for (const [index, [name, value]] of Object.entries(rows).entries()) {
      const area = { sheet: "Run time", address: `G${index + 1}` };
      await book.type(area, [[value]]);
      book.define(name, area);
    }
    await open(book);
    await page.step("Answer");
    await page.shows("Run for 45.0 min a day: the longest run of the beds on the valve. This bed alone needs 30.0 min");
    await page.shows("Of the bed's water 44.4 % falls between the pots and 17.8 % drains from them");
    await page.shows("3,600 L a day falling on all 2 beds on the valve");
    await page.shows("The run time is that of small.");
    expect(page.text("tbody tr").filter((row) => row.includes("% of the area"))).toEqual([
      "small60.0 % of the area6.0030.01.5025.0 %",
      "Group 240.0 % of the area3.0015.03.0062.5 %",
    ]);
    // a depth for one size would not be used
    expect(page.place.textContent).not.toContain("Net depth wanted in each pot");
    expect(await axeFindings(page.place)).toEqual([]);
  });

  it("says in the workbook's words what it still needs", async () => {
    await open(auditHost());
    await page.step("Answer");
    await page.shows("Run time: needs readings");
  });

  it("names the field of its own step that the depth is typed in, and no share that drains before", async () => {
    const drains = { sheet: "Run time", address: "C8" };
    const book = filled({});
    await book.type(drains, [[0.512]]);
    book.define("Mean_Drained_Share", drains);
    await open(book);
    await page.step("Answer");
    await page.shows(
      "Run time needs the net depth wanted: fill it in under Net depth wanted in each pot in the step Answer.",
    );
    expect(page.place.textContent).not.toContain("of the water that reaches pots drains");
    await book.type(cellOf("Net_Depth_mm"), [[5]]);
    await page.shows("51.2 % of the water that reaches pots drains, on average over the pots");
  });

  it("is changed by a field and a choice, each taken back", async () => {
    await open(filled({}));
    await page.step("Answer");
    await page.type("The run time is set by", "low quarter");
    await page.shows("entry in 'Run time'!C5");
    expect(await input("Multiplier_Basis")).toBe("low quarter");
    await page.type("Share of pots", "1.5");
    await act(async () => page.field("Share of pots").dispatchEvent(new FocusEvent("focusout", { bubbles: true })));
    expect(page.beside("Share of pots")).toBe("share must be from 0.5 to 1, got 1.5");
    await page.press("Undo");
    await page.shows("'Run time'!C5 is as before the entry");
    expect(await input("Multiplier_Basis")).toBe("driest can");
    expect(page.field("Share of pots").value).toBe("1.5");
  });
});
