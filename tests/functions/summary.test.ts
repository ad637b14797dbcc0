import { beforeAll, describe, expect, it } from "vitest";
import { summary } from "../../src/functions/summary";
import { interval } from "../../src/functions/uniformity";
import { cell, fakeCustomFunctions } from "../support/custom-functions";

/** Yeager, Container Plant Irrigation Considerations (University of Florida): sixteen cups; sum 816, mean 51. */
const CUPS = [53, 56, 61, 66, 47, 49, 57, 61, 42, 43, 50, 53, 40, 41, 48, 49].map((x) => [x]);

/** Twenty-four equal cans, whose every interval is the value itself. */
const EQUAL = Array.from({ length: 24 }, () => [2]);

function row(table: unknown[][], measure: string): unknown[] {
  return table.find(([name]) => name === measure)!;
}

beforeAll(() => void fakeCustomFunctions());

describe("SUMMARY", () => {
  it("is a header row and a row for each measure, with the number of cans in the name of SC", () => {
    const table = summary(CUPS, 60, "mm");
    expect(table[0]).toEqual(["measure", "value", "unit", "low", "high", "limit", "verdict"]);
    expect(table.slice(1).map(([measure, , unit]) => [measure, unit])).toEqual([
      ["Cans counted", "cans"],
      ["Dry cans", "cans"],
      ["Mean application rate", "mm/h"],
      ["CU (Christiansen)", "%"],
      ["DU (low quarter)", "%"],
      ["SC (driest of 16 cans)", ""],
      ["SC (low quarter)", ""],
    ]);
  });

  it("has the values worked by hand", () => {
    const values = summary([...CUPS, ["x"], [""]], 60, "mm")
      .slice(1)
      .map(([, value]) => value);
    // MAR: 51 mm in 60 min; CU: deviations 2+5+10+15+4+2+6+10+9+8+1+2+11+10+3+2 = 100, 100 (1 - 100/816);
    // DU: 41.5/51; SC: 51/40; SC of the low quarter: 51/41.5
    const expected = [16, 0, 51, 87.7451, 81.3725, 1.275, 1.2289];
    expect(values).toEqual(expected.map((value) => expect.closeTo(value, 4)));
  });

  it("turns millilitres into a rate by mouth and minutes", () => {
    // 5 pi mL in a circle of 100 mm, pi 2500 mm2, are 2 mm deep; in 15 min: 8 mm/h
    const millilitres = EQUAL.map(() => [5 * Math.PI]);
    const [, value, unit, low, high, limit, verdict] = row(summary(millilitres, 15, 100), "Mean application rate");
    expect([value, low, high]).toEqual([expect.closeTo(8, 10), expect.closeTo(8, 10), expect.closeTo(8, 10)]);
    expect([unit, limit, verdict]).toEqual(["mm/h", "5 to 12", "within"]);
  });

  it("shows the ends that INTERVAL gives, and none for SC of the driest can", () => {
    const table = summary(CUPS, 60, "mm");
    for (const [measure, index] of [
      ["Mean application rate", "MEAN"],
      ["CU (Christiansen)", "CU.CHRISTIANSEN"],
      ["DU (low quarter)", "DU.QUARTER"],
      ["SC (low quarter)", "SC.QUARTER"],
    ] as const) {
      expect(row(table, measure).slice(3, 5)).toEqual(interval(CUPS, index, 0.9)[0]);
    }
    expect(row(table, "SC (driest of 16 cans)").slice(3, 5)).toEqual(["", ""]);
  });

  it("counts dry cans and says in words that SC has no value", () => {
    const table = summary([...CUPS, [0], [0]], 60, "mm");
    expect(row(table, "Dry cans")[1]).toBe(2);
    expect(row(table, "SC (driest of 18 cans)")).toEqual([
      "SC (driest of 18 cans)",
      "a can is dry",
      "",
      "",
      "",
      "<= 1.5",
      "outside",
    ]);
  });

  it("gives no verdict under 16 cans and an indicative one under 24", () => {
    const verdict = (range: unknown[][]) => row(summary(range, 60, "mm"), "CU (Christiansen)")[6];
    expect(verdict(EQUAL.slice(0, 15))).toBe("too few cans");
    expect(verdict(EQUAL.slice(0, 16))).toBe("within (indicative)");
    expect(verdict(EQUAL.slice(0, 23))).toBe("within (indicative)");
    expect(verdict(EQUAL)).toBe("within");
  });
});

describe("the limits of SUMMARY", () => {
  const verdicts = (limits: unknown) =>
    Object.fromEntries(
      summary(CUPS, 60, "mm", limits as unknown[][])
        .slice(1)
        .map(([measure, , , , , limit, verdict]) => [measure, [limit, verdict]]),
    );

  it("replace the built-in ones, in any case, with blank rows skipped", () => {
    const own = verdicts([
      ["cu (christiansen)", ">= 50"],
      ["", null],
      [" DU (Low Quarter) ", " >= 99 "],
      ["SC (driest can)", "1 to 1.2"],
      ["SC (low quarter)", "<= 1.2289"],
      ["cans counted", ">= 16"],
    ]);
    expect(own).toEqual({
      "Cans counted": [">= 16", "within (indicative)"],
      "Dry cans": ["", ""],
      "Mean application rate": ["", ""],
      "CU (Christiansen)": [">= 50", "within (indicative)"],
      "DU (low quarter)": [">= 99", "outside (indicative)"],
      "SC (driest of 16 cans)": ["1 to 1.2", "outside (indicative)"],
      "SC (low quarter)": ["<= 1.2289", "too close to call (indicative)"],
    });
  });

  it("may list measures without a limit, which have none then", () => {
    const some = verdicts([
      ["Mean application rate", ""],
      ["CU (Christiansen)", " "],
      ["DU (low quarter)", null],
      ["SC (driest can)", "<= 1.3"],
    ]);
    expect(Object.values(some as Record<string, unknown[]>).map(([limit]) => limit)).toEqual([
      "",
      "",
      "",
      "",
      "",
      "<= 1.3",
      "",
    ]);
  });

  it("may name SC as the table shows it", () => {
    expect(verdicts([["SC (driest of 25 cans)", "<= 1.3"]])["SC (driest of 16 cans)"]).toEqual([
      "<= 1.3",
      "within (indicative)",
    ]);
  });

  it("are the built-in ones where the argument is left out", () => {
    for (const none of [undefined, null, ""]) expect(verdicts(none)["CU (Christiansen)"]![0]).toBe(">= 85");
  });

  it.each<[string, unknown, string]>([
    [
      "an unknown measure",
      [
        ["CU (Christiansen)", ">= 85"],
        ["Height", "<= 2"],
      ],
      'name measures of the summary, got "Height" in row 2, column 1',
    ],
    ["a blank measure", [["", "<= 2"]], "name measures of the summary, got a blank cell in row 1, column 1"],
    ["a number for a measure", [[5, "<= 2"]], "name measures of the summary, got 5 in row 1, column 1"],
    [
      "a limit in other words",
      [["Dry cans", "none"]],
      'be like "<= 1.5", ">= 85" or "5 to 12", got "none" in row 1, column 2',
    ],
    ["a bare number", [["Dry cans", 0]], 'be like "<= 1.5", ">= 85" or "5 to 12", got 0 in row 1, column 2'],
    [
      "ends the wrong way round",
      [["Dry cans", "5 to 2"]],
      'be like "<= 1.5", ">= 85" or "5 to 12", got "5 to 2" in row 1, column 2',
    ],
    [
      "a measure named twice",
      [
        ["Dry cans", "<= 1"],
        ["dry CANS", "<= 2"],
      ],
      'name each measure once, got "Dry cans" in row 2, column 1',
    ],
    ["three columns", [["Dry cans", "<= 1", 1]], "have two columns, measure and limit, got 3"],
    ["uneven rows", [["Dry cans", "<= 1"], ["a"]], "be a rectangular range with 2 cells in each row, got 1 in row 2"],
    ["no rows", [], "be a rectangular range of at least one cell, got a list"],
    ["a single value", 85, "have two columns, measure and limit, got 1"],
  ])("refuse %s", (_, limits, rule) => {
    const result = cell(() => summary(CUPS, 60, "mm", limits as unknown[][]));
    expect(result).toEqual({ error: "#VALUE!", message: `limits must ${rule}` });
  });

  it("hold no error", () => {
    const limits = [["Dry cans", { type: "Error", basicValue: "#N/A" }]];
    expect(cell(() => summary(CUPS, 60, "mm", limits))).toEqual({
      error: "#VALUE!",
      message: expect.stringContaining(", got #N/A"),
    });
  });
});
