import { describe, expect, it } from "vitest";
import { NO_ENTRIES } from "../../src/taskpane/answer/entries";
import { readSettings, type Settings } from "../../src/taskpane/answer/settings";
import { formulaOf } from "../../src/taskpane/results/formula";
import { MEASURES } from "../../src/taskpane/results/measures";
import { memoryHost } from "../support/memory-host";

const at = (address: string, sheet = "Example") => ({ sheet, address });
const settings: Settings = {
  minutes: { value: 30, area: at("F2") },
  mouth: { value: 100 },
  depth: { value: 9.4, area: at("F4") },
  share: { value: 0.9 },
  basis: "can",
};
const measure = (label: string) => MEASURES.find((each) => each.label === label)!;
const write = (label: string, changed: Partial<Settings> = {}, sheet = "Example") =>
  formulaOf(measure(label), at("B2:B26"), { ...settings, ...changed }, sheet);

describe("a live function", () => {
  it("wraps the range so that a blank cell is never a dry can", () => {
    expect(write("SC (driest can)")).toEqual({
      text: '=CANFALL.SC.CAN(IF(B2:B26="","x",B2:B26))',
      rows: 1,
      columns: 1,
    });
  });

  it("takes settings by reference where they were given so, and as numbers where they were typed", () => {
    expect(write("Run time")).toMatchObject({ text: '=CANFALL.RUNTIME(IF(B2:B26="","x",B2:B26),F2,100,F4)' });
  });

  it("names the sheet of the readings and the settings on another sheet", () => {
    const range = "Example!B2:B26";
    expect(write("Run time", {}, "Report")).toMatchObject({
      text: `=CANFALL.RUNTIME(IF(${range}="","x",${range}),Example!F2,100,Example!F4)`,
    });
  });

  it("says by what the run time is set", () => {
    const start = '=CANFALL.RUNTIME(IF(B2:B26="","x",B2:B26),F2,100,F4';
    expect(write("Run time", { basis: "quarter" })).toMatchObject({ text: `${start},"quarter")` });
    expect(write("Run time", { basis: "share" })).toMatchObject({ text: `${start},0.9)` });
    expect(write("Run time", { basis: "share", share: {} })).toEqual({
      lacking: "Run time needs the share of the cans: fill it in under Test settings in the step Readings",
    });
  });

  it("writes readings in millimetres as such", () => {
    expect(write("Mean application rate", { mouth: { value: "mm" } })).toMatchObject({
      text: '=CANFALL.MAR(IF(B2:B26="","x",B2:B26),F2,"mm")',
    });
  });

  it("knows how many cells its answer fills", () => {
    expect(write("Summary of the audit")).toMatchObject({ rows: 8, columns: 7 });
    expect(write("Interval of DU")).toEqual({
      text: '=CANFALL.INTERVAL(IF(B2:B26="","x",B2:B26),"DU.QUARTER")',
      rows: 1,
      columns: 2,
    });
    expect(write("Rate at each can")).toMatchObject({ rows: 25, columns: 1 });
  });

  it("takes the area of each can last where the figures are by area", () => {
    const areas = at("X7:X31", "Working");
    const by = (label: string, changed: Partial<Settings> = {}) =>
      formulaOf(measure(label), at("B2:B26"), { ...settings, ...changed }, "Example", areas);
    const range = 'IF(B2:B26="","x",B2:B26)';
    expect(by("DU (low quarter)")).toMatchObject({ text: `=CANFALL.DU.QUARTER(${range},Working!X7:X31)` });
    expect(by("Run time")).toMatchObject({ text: `=CANFALL.RUNTIME(${range},F2,100,F4,"can",Working!X7:X31)` });
    expect(by("Interval of DU")).toMatchObject({
      text: `=CANFALL.INTERVAL(${range},"DU.QUARTER",0.9,Working!X7:X31)`,
    });
    expect(by("Summary of the audit")).toMatchObject({
      text: `=CANFALL.SUMMARY(${range},F2,100,,Working!X7:X31)`,
    });
    expect(by("Rate at each can")).toMatchObject({ text: `=CANFALL.RATE.CAUGHT(${range},F2,100)` });
  });

  it("says what it lacks", async () => {
    const none = readSettings(await memoryHost({ Example: {} }).snapshot({}), NO_ENTRIES);
    expect(write("Run time", none)).toEqual({
      lacking:
        "Run time needs the length of the test, the can's mouth and the net depth wanted: fill them in under Test settings in the step Readings",
    });
  });
});
