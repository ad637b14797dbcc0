import { describe, expect, it } from "vitest";
import { overWords } from "../../src/taskpane/answer/setting-box";
import { STILL_NEEDED } from "../../src/taskpane/answer/still-needed";
import { readNow } from "../../src/taskpane/workbook/reading";
import { memoryHost } from "../support/memory-host";

describe("what is set beside what was calculated", () => {
  // 105 / 102.3 - 1 = 0.026; 102.4 to 102.3 is 0.1 %, which nobody can set
  it.each([
    [105, 102.3, " Water and cost are of the run time, 102 min: 105 min use 2.6 % more."],
    [102.4, 102.3, ""],
    [60, 60, ""],
  ])("%s min for %s min", (total, minutes, words) => expect(overWords(total, minutes)).toBe(words));
});

describe("what the depth still needs", () => {
  const at = (address: string) => ({ sheet: "Pots", address });
  const NAMES = {
    Cans_Readings: at("A1"),
    Depth_Typed_mm: at("A2"),
    Net_Depth_mm: at("A3"),
    Groups_Problem: at("A4"),
    Groups_Areas: at("A5:A8"),
    Groups_Depths_mm: at("B5:B8"),
  };
  const needed = async (problem: string) => {
    const host = memoryHost({ Pots: { A1: 20, A3: "needs more", A4: problem } }, NAMES);
    return (await readNow(host, STILL_NEEDED))!.map(({ label, cell }) => `${label} ${cell.address}`);
  };

  it("is that of one size, or what the pot groups lack", async () => {
    expect(await needed("")).toEqual(["Water that one pot uses, or the depth A2"]);
    expect(await needed("needs the area of every pot group: see Pots")).toEqual(["Area of every pot group A5"]);
    expect(await needed("needs the depth of every pot group: see Pots")).toEqual([
      "Water that one pot of each group uses, or its depth B5",
    ]);
  });
});
