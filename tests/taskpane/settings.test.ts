import { describe, expect, it } from "vitest";
import { allWanted } from "../../src/hosts/snapshot";
import { type Entries, NO_ENTRIES, PREFILLS, prefilled } from "../../src/taskpane/answer/entries";
import { readSettings, settingsWants } from "../../src/taskpane/answer/settings";
import { memoryHost } from "../support/memory-host";

const host = memoryHost(
  { Example: { F2: 30, F3: "mm", F4: "half an hour", F5: "=1/0" } },
  { Test_Minutes: { sheet: "Example", address: "F2" } },
);
const entry = (text: string) => ({ text, sheet: "Example", touched: true });
async function read(typed: Partial<Entries>) {
  const entries = { ...NO_ENTRIES, ...typed };
  return readSettings(await host.snapshot(allWanted(settingsWants(entries))), entries);
}

describe("a test setting", () => {
  it.each([
    ["9,4", 9.4],
    ["9.4", 9.4],
    [",5", 0.5],
  ])("may be typed with a decimal comma: %s", async (text, minutes) => {
    expect((await read({ minutes: entry(text) })).minutes).toEqual({ value: minutes });
  });

  it("may be a typed number, a cell or a defined name", async () => {
    const area = { sheet: "Example", address: "F2" };
    expect((await read({ minutes: entry("12.5") })).minutes).toEqual({ value: 12.5 });
    expect((await read({ minutes: entry("F2") })).minutes).toEqual({ value: 30, area });
    expect((await read({ minutes: entry("example!$F$2") })).minutes).toEqual({ value: 30, area });
    expect((await read({ minutes: entry("Test_Minutes") })).minutes).toEqual({ value: 30, area });
  });

  it("says that readings are depths already where the cell holds mm", async () => {
    expect((await read({ mouth: entry("F3") })).mouth.value).toBe("mm");
    expect((await read({ unit: "mm" })).mouth.value).toBe("mm");
  });

  it.each([
    ["0", "minutes must be more than 0 min, got 0"],
    ["-3", "minutes must be more than 0 min, got -3"],
    ["30 min", 'minutes must be a number or a cell such as Example!F2, got "30 min"'],
    ["90%", 'minutes must be a number without %, such as 0.9 for 90 % or a cell such as Example!F2, got "90%"'],
    ["F4", 'minutes must be more than 0 min, got "half an hour" in Example!F4'],
    ["F5", "Example!F5 shows #NAME?"],
    ["F9", "minutes must be more than 0 min, got a blank cell in Example!F9"],
    ["F2:F4", "minutes must be one cell, got Example!F2:F4"],
    ["Nowhere!F2", "There is no sheet named Nowhere"],
  ])("typed as %s is answered by: %s", async (text, problem) => {
    expect((await read({ minutes: entry(text) })).minutes.problem).toBe(problem);
  });

  it("says what a can mouth may be", async () => {
    expect((await read({ mouth: entry("0") })).mouth.problem).toBe(
      'mouth must be a diameter in mm, or "mm" for readings in mm, got 0',
    );
    expect((await read({ share: entry("0.3") })).share.problem).toBe("share must be from 0.5 to 1, got 0.3");
  });

  it("is neither right nor wrong while blank", async () => {
    expect((await read({})).minutes).toEqual({});
  });

  it("is prefilled from a defined name, unless somebody typed in it", async () => {
    expect(prefilled(await host.snapshot({ names: PREFILLS }), NO_ENTRIES)).toEqual({
      minutes: { text: "Example!F2", sheet: "Example", touched: false },
    });
    expect(prefilled(await host.snapshot({ names: PREFILLS }), { ...NO_ENTRIES, minutes: entry("") })).toEqual({});
  });
});
