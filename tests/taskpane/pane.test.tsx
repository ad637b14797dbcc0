// @vitest-environment jsdom
import { act } from "react";
import { afterEach, describe, expect, it } from "vitest";
import { Pane } from "../../src/taskpane/pane";
import { type MemoryHost, memoryHost } from "../support/memory-host";
import { screen } from "../support/screen";
import { at, bedHost } from "./bed";

let page: Awaited<ReturnType<typeof screen>>;

async function open(host: MemoryHost, selected = "B2:B7", step = "Readings") {
  await host.select(at(selected));
  page = await screen(<Pane host={host} functions={[]} />);
  await page.step(step);
}

const row = (measure: string) =>
  page
    .text("tr")
    .filter((each) => each.startsWith(measure))
    .at(-1);
afterEach(() => page.close());

describe("the pane", () => {
  it("shows the driest can, where it is and the minutes that it needs", async () => {
    await open(bedHost());
    // 8 mm in 30 min is 16 mm/h; 6 mm need 60 x 6 / 16 = 22.5 min
    await page.shows("Driest can 8.00 mm in B2");
    await page.shows("Needs 22.5 min for 6.00 mm");
  });

  it("shows figures worked by hand, each with its unit", async () => {
    await open(bedHost());
    await page.shows("Driest can");
    expect(row("Cans counted")).toContain("4 cans");
    expect(row("Dry cans")).toContain("0 cans");
    expect(row("Skipped (1 marked x, 1 blank)")).toContain("2 cans");
    await page.step("Answer");
    // mean 40 / 4 = 10 mm in half an hour
    expect(row("Mean application rate")).toContain("20.0 mm/h");
    // 100 (1 - (2 + 0 + 2 + 0) / 40)
    expect(row("CU (Christiansen)")).toContain("90.0 %");
    // one can of four is the low quarter: 100 x 8 / 10
    expect(row("DU (low quarter)")).toContain("80.0 %");
    // 10 / 8
    expect(row("SC (driest of 4 cans)")).toContain("1.25 ratio");
    expect(row("SC (low quarter)")).toContain("1.25 ratio");
  });

  it("shows interval, limit and verdict where they exist", async () => {
    const cans = Object.fromEntries(Array.from({ length: 16 }, (_, can) => [`C${can + 1}`, 10]));
    await open(bedHost(cans), "C1:C16");
    await page.shows("Driest can 10.0 mm in C1 and 15 more like it");
    expect(page.text(".histogram")).toEqual(["10.016 cans"]);
    await page.step("Answer");
    // equal cans: the interval is the value itself
    expect(row("CU")).toBe("CU (Christiansen)100 %90 % interval 100 to 100 %limit ≥ 85 %✓ within (indicative)");
    // 10 mm in half an hour is 20 mm/h, above the usual 12
    expect(row("Mean")).toContain("✗ outside (indicative)");
    expect(page.text("details li")).toContain("SC (driest can) ≤ 1.5: common practice, no source");
  });

  it("says what one can alone cannot tell", async () => {
    await open(bedHost(), "B5:B6");
    await page.shows("Driest can 10.0 mm in B5");
    expect(row("Cans counted")).toBe("Cans counted1 can");
    await page.step("Answer");
    await page.shows("readings must");
  });

  it("keeps the last readings, read anew, while one cell is selected and typed in", async () => {
    const host = bedHost();
    await open(host, "B3:B5");
    await page.shows("Driest can 10.0 mm in B3");
    await act(() => host.select(at("E14", "Report")));
    await act(() => host.type(at("E14", "Report"), [[92.3]]));
    await act(() => host.type(at("B4"), [[4]]));
    await page.shows("Driest can 4.00 mm in B4");
    expect(page.text(".where")).toEqual(["Example!B3:B5"]);
  });

  it("shows the workbook's readings while one cell is selected and no readings were", async () => {
    await open(bedHost(), "B2");
    await page.shows("Driest can 8.00 mm in B2");
    expect(page.text(".where")).toEqual(["Example!B2:B7"]);
    expect(row("Cans counted")).toBe("Cans counted4 cans");
  });

  it("shows the workbook's readings when the sheet of the last ones is gone", async () => {
    const host = bedHost();
    await host.write(at("A1:A2", "Report"), [[5], [6]]);
    await host.select(at("A1:A2", "Report"));
    page = await screen(<Pane host={host} functions={[]} />);
    await page.shows("Driest can 5.00 mm in A1");
    await host.removeSheet("Report");
    await act(() => host.select(at("D9")));
    await page.shows("Driest can 8.00 mm in B2");
  });

  it("asks for a range where one cell is all there is", async () => {
    await open(memoryHost({ Example: { A1: 5 } }), "A1");
    await page.shows("Example!A1 is one cell. Select the catches of one test");
  });

  it("follows a changed reading and a moved selection", async () => {
    const host = bedHost();
    await open(host);
    await page.shows("Driest can 8.00 mm in B2");
    await act(() => host.type(at("B4"), [[4]]));
    await page.shows("Driest can 4.00 mm in B4");
    // 4 mm in 30 min is 8 mm/h; 6 mm need 45 min
    await page.shows("Needs 45.0 min for 6.00 mm");
    await act(() => host.select(at("B2:B3")));
    await page.shows("Driest can 8.00 mm in B2");
  });

  it("names the cell of a wrong reading", async () => {
    await open(bedHost({ B4: "12 ml" }));
    await page.shows('readings must be numbers, got "12 ml" in B4');
  });

  it("names the cell that shows an error", async () => {
    await open(bedHost({ B4: "=1/0" }));
    await page.shows("B4 shows #NAME?");
  });

  it("says that a dry can gets nothing", async () => {
    await open(bedHost({ B3: 0 }));
    await page.shows("Driest can 0 mm in B3");
    await page.shows("Run time: a dry can gets nothing, however long the run.");
  });

  it("keeps showing readings while words or blank cells are selected", async () => {
    await open(bedHost(), "D1:D2");
    await page.shows("Driest can 8.00 mm in B2");
    expect(page.text(".where")).toEqual(["Example!B2:B7"]);
  });

  it("says that blank cells hold no readings where the workbook has none either", async () => {
    await open(memoryHost({ Example: { A1: 5 } }), "D1:D2");
    await page.shows("Example!D1:D2 holds no readings");
  });

  it("offers the workbook's readings where the selection is none", async () => {
    await open(bedHost(), "B1:B7");
    await page.shows('readings must be numbers, got "Catch" in B1');
    await page.press("Select the readings in Example!B2:B7");
    await page.shows("Driest can 8.00 mm in B2");
  });

  it("prefills settings from defined names and follows their cells", async () => {
    const host = bedHost();
    await open(host);
    await page.shows("Driest can");
    expect(page.field("Length of the test").value).toBe("Example!F2");
    expect(page.beside("Length of the test")).toBe("30.0 min, from Example!F2");
    expect(page.beside("Can mouth")).toBe("readings in mm already, from Example!F3");
    await act(() => host.type(at("F2"), [[60]]));
    // half the rate, twice the minutes
    await page.shows("Needs 45.0 min for 6.00 mm");
  });

  it("says beside the field what is wrong and keeps what was typed", async () => {
    await open(bedHost());
    await page.shows("Driest can");
    await page.type("Length of the test", "30 min");
    await page.shows("Run time needs the length of the test: fill it in under Test settings in the step Readings.");
    expect(page.beside("Length of the test")).toBe(
      'minutes must be a number or a cell such as Example!F2, got "30 min"',
    );
    expect(page.field("Length of the test").value).toBe("30 min");
    await page.step("Answer");
    expect(row("CU (Christiansen)")).toContain("90.0 %");
    expect(row("Mean application rate")).toContain("needs the length of the test");
  });

  it("says what the run time lacks and where that is given", async () => {
    await open(bedHost());
    await page.shows("Driest can");
    await page.type("Net depth wanted", "");
    await page.shows("Run time needs the net depth wanted: fill it in under Test settings in the step Readings.");
  });

  it("gives the run time by the low quarter or a share of the cans as well", async () => {
    await open(bedHost());
    await page.shows("Driest can");
    await page.type("Run time is set by", "share");
    await page.type("Share of the cans", "0.75");
    // 3 of 4 cans reach 10 mm, 20 mm/h; 6 mm need 18 min
    await page.shows("By the share of cans (0.750): Needs 18.0 min for 6.00 mm");
  });
});
