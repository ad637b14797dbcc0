// @vitest-environment jsdom

import { afterEach, describe, expect, it, vi } from "vitest";
import type { Input } from "../../src/cells/cell";
import { verifyNight } from "../../src/core/program/verify-night";
import type { Run } from "../../src/taskpane/night/night-run";
import { PROGRAM_SHEET } from "../../src/taskpane/night/program-sheet";
import { readStartTimes } from "../../src/taskpane/night/start-times";
import { Pane } from "../../src/taskpane/pane";
import { readNow } from "../../src/taskpane/workbook/reading";
import { programOf } from "../../src/workbook/nursery/program/entries";
import { axeFindings } from "../support/axe-findings";
import { screen } from "../support/screen";
import { cellOf, nightBook, PLACES, SMALL } from "./night-book";

const drawn: string[] = [];
vi.mock("../../src/taskpane/map/picture/png", () => ({
  pngOf: async (svg: SVGSVGElement) => {
    drawn.push(svg.querySelector("text")!.textContent);
    return { bytes: new Uint8Array([1, 2, 3]), width: svg.viewBox?.baseVal?.width ?? 480, height: 200 };
  },
}));

/** Whether the search for changes goes on until it is stopped; the rest of a night is as always. */
let endless = false;
vi.mock("../../src/taskpane/night/night-run", async (original) => {
  const { nightRun } = await original<typeof import("../../src/taskpane/night/night-run")>();
  const untilStopped = (): Run => {
    let stop = () => {};
    const finished = new Promise<boolean>((ended) => {
      stop = () => ended(false);
    });
    return { finished, stop };
  };
  const run: typeof nightRun = (ask, hear) =>
    endless && ask.kind === "remedies" ? untilStopped() : nightRun(ask, hear);
  return { nightRun: run };
});

let page: Awaited<ReturnType<typeof screen>>;
afterEach(() => page.close());

async function open(entries: Record<string, Input[][]> = SMALL) {
  const host = nightBook(entries);
  page = await screen(<Pane host={host} functions={[]} />);
  await page.step("Schedule");
  await page.shows("Fit the night");
  return host;
}
const JANUARY = { ...SMALL, Program_Month: [[1]] };
/** The sheet's lines as block, pulse, minute and minutes. */
async function lines(host: Awaited<ReturnType<typeof open>>) {
  const cells = await host.read(PLACES.Start_Times!);
  return cells
    .filter(([block]) => block !== null)
    .map(([block, pulse, start, minutes]) => [block, pulse, Math.round(Number(start) * 1440), minutes]);
}

describe("a night in the pane", () => {
  it("says what it uses, fits, meets the bound and is checked by separate code", async () => {
    await open();
    await page.shows("July: 3 blocks, pump 200 L/min, 20:00–22:00");
    await page.press("Fit the night");
    // 20 + 40 + 30 min at half the pump's flow: 45 min of work, but Bed 2 takes 20 + 10 + 20 = 50 min from 20:00
    await page.shows("It fits: finished at 20:50; 1 h 10 min of the allowed hours are left.");
    await page.shows("No order can finish earlier: 20:50 is the proven lower bound.");
    await page.shows("Checked by separate code: every pulse, rest, window, pair, flow and litre keeps its rule.");
    expect(page.place.querySelector(".picture svg")!.getAttribute("aria-label")).toBe(
      "Start times of a July night: 3 blocks, 4 pulses. It fits: finished at 20:50; 1 h 10 min of the allowed hours are left.",
    );
    const titles = [...page.place.querySelectorAll(".picture title")].map(({ textContent }) => textContent);
    expect(titles).toContain("Bed 2, pulse 2: 20:30 to 20:50");
  });

  it("writes the start times, which read back keep every rule; Undo takes them out", async () => {
    const host = await open();
    await page.press("Fit the night");
    await page.press("Write the start times");
    await page.shows(
      "4 start times are in the sheet Start times. To print: open that sheet, print: page 1 in order of time, page 2 by block.",
    );
    expect((await lines(host)).slice().sort()).toEqual(
      expect.arrayContaining([
        ["Bed 2", 1, 1200, 20],
        ["Bed 2", 2, 1230, 20],
      ]),
    );
    expect((await lines(host)).map(([block]) => block)).toContain("=Bed 3");
    const { program } = programOf((await readNow(host, PROGRAM_SHEET))!);
    const { schedule, wrong } = await readStartTimes(host, program!);
    expect([wrong, verifyNight(program!, schedule)]).toEqual([[], []]);
    await page.press("Check the start times in the sheet");
    await page.shows("4 start times keep every rule of the Program as it is now");
    await page.press("Undo");
    await page.shows("as before the start times");
    expect(await lines(host)).toEqual([]);
    expect(page.place.textContent).not.toContain("are in the sheet Start times");
    expect(page.place.textContent).not.toContain("keep every rule of the Program");
    await page.shows("The Program or the sheet Start times was changed since: check again.");
  });

  it("asks before it writes over lines that are there", async () => {
    const host = await open({ ...SMALL, Start_Times: [["Bed 1", 1, 0.9, 5]] });
    await page.press("Fit the night");
    await page.press("Write the start times");
    await page.shows("The sheet Start times holds a line. Write over what is there? Undo brings it back.");
    await page.press("Keep it");
    expect(await lines(host)).toEqual([["Bed 1", 1, 1296, 5]]);
    await page.press("Write the start times");
    await page.press("Write over it");
    await page.shows("4 start times are in the sheet");
    expect(await lines(host)).toHaveLength(4);
  });

  it("asks before it writes a night that does not fit, with the reason, and then before it writes over lines", async () => {
    const host = await open({
      ...JANUARY,
      Program_Windows: [[20 / 24, 21 / 24]],
      Start_Times: [["Bed 1", 1, 0.9, 5]],
    });
    await page.press("Fit the night");
    await page.press("Write the start times");
    const reason = "30 min past the end of the hours";
    await page.shows(`This night does not fit: ${reason}. Write its start times all the same?`);
    await page.press("Write nothing");
    expect(await lines(host)).toEqual([["Bed 1", 1, 1296, 5]]);
    await page.press("Write the start times");
    await page.press("Write them all the same");
    await page.shows("The sheet Start times holds a line. Write over what is there?");
    await page.press("Write over it");
    await page.shows(`4 start times are in the sheet Start times, but the night does not fit: ${reason}. To print`);
    expect(await lines(host)).toHaveLength(4);
  });

  it("sees what was changed by hand in the sheet, and a Program that was changed since", async () => {
    const host = await open();
    await page.press("Fit the night");
    await page.press("Write the start times");
    await page.shows("4 start times are");
    await host.type(cellOf("Start_Times", 0, 3), [[7]]);
    await host.type(cellOf("Start_Times", 3, 2), [["late"]]);
    await page.press("Check the start times in the sheet");
    await page.shows("must hold a block, a pulse, a start and minutes");
    await page.shows("rules are broken:");
    const again = "The Program or the sheet Start times was changed since: check again.";
    expect(page.place.textContent).not.toContain(again);
    await host.type(cellOf("Start_Times", 0, 3), [[8]]);
    await page.shows(again);
    expect(page.place.textContent).not.toContain("rules are broken:");
    await page.press("Check the start times in the sheet");
    await page.shows("rules are broken:");
    await host.type(cellOf("Program_Blocks", 0, 5), [[25]]);
    await page.shows(again);
    await page.shows("The Program was changed since: fit the night again.");
  });

  it("brings what it says of the writing and of the check into sight", async () => {
    await open();
    await page.press("Fit the night");
    const seen = vi.spyOn(Element.prototype, "scrollIntoView");
    const shown = () => seen.mock.contexts.map((element) => (element as Element).textContent).join("; ");
    await page.press("Write the start times");
    await page.shows("4 start times are");
    expect(shown()).toContain("4 start times are in the sheet");
    await page.press("Check the start times in the sheet");
    await page.shows("4 start times keep every rule");
    expect(shown()).toContain("4 start times keep every rule");
    expect(seen.mock.calls).toContainEqual([{ block: "nearest" }]);
    seen.mockRestore();
  });

  const usable = (name: string) =>
    [...page.place.querySelectorAll("button")].find(({ textContent }) => textContent === name)!.ariaDisabled !== "true";
  const OUT = ["Write the start times", "Place the picture at the selected cell", "Save as .csv"];

  it("of a Program that was changed since is neither written, placed nor saved until it is fitted again", async () => {
    const host = await open();
    await page.press("Fit the night");
    await page.shows("✓ Checked by separate code");
    expect(OUT.map(usable)).toEqual([true, true, true]);
    await host.type(cellOf("Program_Blocks", 0, 5), [[25]]);
    await page.shows("The Program was changed since: fit the night again to write, place or save it.");
    await page.shows("Before the change: It fits");
    expect(OUT.map(usable)).toEqual([false, false, false]);
    expect(page.place.textContent).not.toContain("✓");
    for (const name of OUT) await page.press(name);
    expect([await lines(host), host.delivered, await host.pictures("Demand")]).toEqual([[], [], []]);
    await host.type(cellOf("Program_Blocks", 0, 5), [[20]]);
    await page.shows("✓ Checked by separate code");
    expect(page.place.textContent).not.toContain("changed since");
  });

  it("takes its question back where the Program is changed before the answer", async () => {
    const host = await open({ ...SMALL, Start_Times: [["Bed 1", 1, 0.9, 5]] });
    await page.press("Fit the night");
    await page.press("Write the start times");
    await page.shows("Write over what is there?");
    await host.type(cellOf("Program_Blocks", 0, 5), [[25]]);
    await page.shows("The Program was changed since: fit the night again to write, place or save it.");
    expect(page.place.querySelector("[role=alertdialog]")).toBeNull();
    expect(await lines(host)).toEqual([["Bed 1", 1, 1296, 5]]);
  });

  it("of the twelve months are marked once the Program was changed", async () => {
    const host = await open();
    await page.press("Fit all months");
    await page.shows("December✓ fits");
    expect(page.place.textContent).not.toContain("changed since");
    await host.type(cellOf("Program_Blocks", 0, 5), [[25]]);
    await page.shows("The Program was changed since: fit all months again.");
    await page.shows("December✓ fitsbefore the change");
  });

  it("saves the table for the controller, with nothing that a program takes for a formula", async () => {
    const host = await open();
    await page.press("Fit the night");
    await page.press("Save as .csv");
    await page.shows("start times.csv is kept in memory.");
    const text = new TextDecoder().decode(host.delivered[0]!.file);
    expect(text.split("\r\n")[0]).toBe("Block,Pulse,Start,End,Minutes,Flow [L/min]");
    expect(text).toContain("Bed 2,2,20:30,20:50,20,100");
    expect(text).toMatch(/^'=Bed 3,1,20:\d\d,2\d:\d\d,30,100$/m);
  });

  it("places the picture with its words at the selected cell; Undo takes it out", async () => {
    const host = await open();
    await page.press("Fit the night");
    await page.press("Place the picture at the selected cell");
    await page.shows("The picture is at");
    const [picture] = await host.pictures("Demand");
    expect(drawn.at(-1)).toBe("July night · pump 200 L/min");
    expect(picture!.alternative).toMatch(
      /^July night · pump 200 L\/min\. Start times of a July night: 3 blocks, 4 pulses\. It fits/,
    );
    await page.press("Undo");
    await page.shows("The picture is taken out");
    expect(page.place.textContent).not.toContain("The picture is at");
    expect(await host.pictures("Demand")).toEqual([]);
  });

  it("says by how much it does not fit, and the changes that would do", async () => {
    await open({ ...JANUARY, Program_Windows: [[20 / 24, 21 / 24]] });
    await page.press("Fit the night");
    // Bed 3 alone takes 90 min in the 60 min that there are
    await page.shows("It does not fit: 30 min past the end of the hours. No order of the blocks can fit.");
    await page.shows("The last hours end 30 min later, at 21:30");
    await page.shows("=Bed 3 watered at another time, or from elsewhere");
    await page.shows("Each of them alone is enough.");
  });

  it("stops the search for changes on request, and says that not all were tried", async () => {
    endless = true;
    await open({ ...JANUARY, Program_Windows: [[20 / 24, 21 / 24]] });
    await page.press("Fit the night");
    await page.shows("Trying changes one by one");
    await page.press("Stop");
    await page.shows("Stopped: not all changes were tried.");
    expect(page.place.textContent).not.toContain("Trying changes one by one");
    endless = false;
  });

  it("says what flow and what water are lacking", async () => {
    await open({ ...SMALL, Pump_Flow_Lmin: [[80]] });
    await page.press("Fit the night");
    await page.shows(
      "It does not fit: all 3 blocks want more than the pump gives; the largest: Bed 1, 100 L/min, 20 L/min more.",
    );
    await page.close();
    await open({ ...SMALL, Day_Limit_kL: [[8]] });
    await page.press("Fit the night");
    // 90 min at 100 L/min
    await page.shows("It does not fit: 1 kL more than the day's limit.");
    await page.shows("A daily limit of 9 kL (now 8 kL)");
  });

  it("fits the twelve months, and says why one has none", async () => {
    const depths = Array.from({ length: 12 }, (_, month): Input[] => [
      month === 0 ? 150 : month === 2 ? "needs pot tops" : 30,
    ]);
    await open({ ...SMALL, Demand_Depths: depths });
    await page.press("Fit all months");
    await page.shows("December");
    const rows = page.text("tbody tr");
    // January: Bed 3 alone takes 150 min in 120
    expect(rows[0]).toBe("January✗ does not fit30 min past the end of the hours");
    expect(rows[1]).toBe("February✓ fitsfinished at 20:50");
    expect(rows[2]).toMatch(/^Marchneeds the depth of ferns in March \(Demand!\w+: needs pot tops\) for =Bed 3 in /);
    expect(rows).toHaveLength(12);
  });

  it("refuses what is typed wrong, with the cell, and fits again once it is mended", async () => {
    const host = await open({ ...SMALL, Program_Blocks: [["Bed 1", "", -3, 60, 1, 20]] });
    const { sheet, address } = cellOf("Program_Blocks", 0, 2);
    await page.shows(`area must be more than 0 m², got -3 in ${sheet}!${address}`);
    await page.press("Fit the night");
    expect(page.place.querySelector(".picture")).toBeNull();
    await host.type(cellOf("Program_Blocks", 0, 2), [[100]]);
    await page.shows("July: 1 block");
    await page.press("Fit the night");
    await page.shows("It fits: finished at 20:20");
  });

  it("names what is missing and fits the others", async () => {
    const host = await open({
      ...SMALL,
      Program_Blocks: [
        ["Bed 1", "", 100, 60, 1, 20],
        ["Bed 2", "", 100, 60],
      ],
    });
    await page.shows("Left out of the night until filled in:");
    await page.shows(
      `needs a depth or a group, a multiplier for Bed 2 in Program!${cellOf("Program_Blocks", 1, 0).address}`,
    );
    await page.press("Fit the night");
    const but = "1 of 2 blocks is left out: Bed 2 (needs a depth or a group, a multiplier)";
    const said = `It fits, but ${but}. Without that: finished at 20:20; 1 h 40 min of the allowed hours are left.`;
    await page.shows(`! ${said}`);
    expect(page.place.textContent).not.toContain("✓");
    expect(page.place.querySelector(".picture svg")!.getAttribute("aria-label")).toBe(
      `Start times of a July night: 1 blocks, 1 pulses. ${said}`,
    );
    expect(host.delivered).toEqual([]);
    await page.press("Write the start times");
    await page.shows(`1 start times are in the sheet Start times, but ${but}. To print`);
    await page.press("Check the start times in the sheet");
    await page.shows(`1 start times keep every rule of the Program as it is now, but ${but}`);
    await host.type(cellOf("Program_Blocks", 2, 0), [["Bed 3"]]);
    await page.shows("The Program was changed since: fit the night again.");
  });

  it("is accessible with a night that does not fit in sight", async () => {
    await open(JANUARY);
    await page.press("Fit the night");
    await page.shows("proven lower bound");
    expect(await axeFindings(page.place)).toEqual([]);
  });

  it("offers the nursery plan where there is none", async () => {
    const host = nightBook({});
    await host.removeSheet("Program");
    page = await screen(<Pane host={host} functions={[]} />);
    await page.step("Schedule");
    await page.shows("Add the nursery plan sheets to this workbook");
  });
});
