// @vitest-environment jsdom
import { afterEach, describe, expect, it } from "vitest";
import { Pane } from "../../src/taskpane/pane";
import { STEPS } from "../../src/taskpane/steps";
import { axeFindings } from "../support/axe-findings";
import { screen } from "../support/screen";
import { at, bedHost } from "./bed";

const FUNCTIONS = [
  {
    id: "SC.CAN",
    name: "SC.CAN",
    description: "Average over the driest single can.",
    parameters: [{ name: "readings", description: "Catches" }],
  },
  {
    id: "RUNTIME",
    name: "RUNTIME",
    description: "Run time [min].",
    parameters: [
      { name: "readings", description: "Catches" },
      { name: "basis", optional: true },
    ],
  },
];
let page: Awaited<ReturnType<typeof screen>>;
afterEach(() => page.close());

async function open() {
  const host = bedHost();
  await host.select(at("B2:B7"));
  page = await screen(<Pane host={host} functions={FUNCTIONS} />);
  await page.shows("Driest can");
}

describe("access", () => {
  it("axe finds nothing in the pane, nor with a wrong setting and a question open", async () => {
    await open();
    expect(await axeFindings(page.place)).toEqual([]);
    await page.step("Readings");
    await page.type("Length of the test", "no");
    await page.shows('got "no"');
    expect(await axeFindings(page.place)).toEqual([]);
    await page.step("Answer");
    await page.type("Into the cell", "F3");
    await page.type("Into the cell", "B1");
    await page.type("Measure", "2");
    await page.press("Insert");
    await page.shows("Replace what is there?");
    expect(await axeFindings(page.place)).toEqual([]);
  });

  it.each(STEPS)("axe finds nothing in the step $title", async ({ title }) => {
    await open();
    await page.step(title);
    expect(await axeFindings(page.place)).toEqual([]);
  });

  it("the steps are tabs, of which the open one is named by its tab", async () => {
    await open();
    await page.step("Readings");
    const panel = page.place.querySelector('[role="tabpanel"]:not([style*="none"])')!;
    expect(panel.id).toBe("canfall-step-readings");
    expect(document.getElementById(panel.getAttribute("aria-labelledby")!)?.getAttribute("aria-selected")).toBe("true");
  });

  it("headings go down one level at a time", async () => {
    await open();
    for (const { title } of STEPS) await page.step(title);
    const levels = [...page.place.querySelectorAll("h1, h2, h3, h4")].map((each) => Number(each.tagName[1]));
    expect(levels[0]).toBe(1);
    for (const [index, level] of levels.slice(1).entries()) expect(level - levels[index]!).toBeLessThanOrEqual(1);
  });

  it("the function list is found by word and shows an example", async () => {
    await open();
    await page.step("Functions");
    await page.shows("2 functions");
    await page.type("Search by word", "driest single");
    await page.shows("1 function");
    expect(page.text(".functions h3")).toEqual(["CANFALL.SC.CAN"]);
    await page.shows('=CANFALL.SC.CAN(IF(B2:B26="","x",B2:B26))');
    await page.type("Search by word", "basis");
    await page.shows("CANFALL.RUNTIME(readings, [basis])");
  });

  it("the self-test says in words what failed", async () => {
    await open();
    await page.step("Functions");
    await page.press("Run self-test");
    await page.shows("checks passed in memory.");
    await page.shows("formulas come back as typed: ");
    const [record] = page.text("pre");
    expect(record).toMatch(/^Canfall self-test: \d+ of \d+ checks passed in memory memory /);
    expect(record).toContain("FAILED: formulas come back as typed");
    expect(record).toMatch(/ write \d+ ms /);
  });
});
