import { beforeAll, describe, expect, it } from "vitest";
import { layoutCompare, layoutCoverage } from "../../../src/functions/layout";
import { cell, fakeCustomFunctions } from "../../support/custom-functions";

beforeAll(() => void fakeCustomFunctions());

describe("LAYOUT.COVERAGE", () => {
  it("spills rows along the length and columns across the width", () => {
    const rates = layoutCoverage(3, 5, 3, 3, 400, "border");
    expect(rates.length).toBe(20);
    expect(rates.every((row) => row.length === 12)).toBe(true);
  });

  it("takes defaults for what is left out, blank, or given as such", () => {
    const given = layoutCoverage(3, 5, 3, 3, 400, "border", "full", [["triangular"]], 0.25, 3);
    expect(layoutCoverage(3, 5, 3, 3, 400, " Border ")).toEqual(given);
    expect(layoutCoverage(3, 5, 3, 3, 400, "BORDER", null, null as never, "", undefined)).toEqual(given);
    expect(layoutCoverage(3, 5, 3, 3, 400, "border", "FULL", [[null]])).toEqual(given);
  });

  it("takes a measured profile", () => {
    const measured = layoutCoverage(3, 5, 3, 3, 400, "inset", "full", [
      [0, 12],
      [3, 0],
    ]);
    const named = layoutCoverage(3, 5, 3, 3, 400, "inset");
    measured.flat().forEach((rate, i) => {
      expect(rate).toBeCloseTo(named.flat()[i]!, 9);
    });
  });

  it("is the rate of one head where there is one", () => {
    // centre line, one gap: the head at (2, 2); the cell's centre at (0.5, 0.5) is 2.1213 m off; throw 4 m, 400 L/h:
    // 3 400 / (pi 16) (1 - 2.1213 / 4) = 11.2125
    const rates = layoutCoverage(4, 4, 4, 4, 400, "centre", "full", [["triangular"]], 1);
    expect(rates[0]?.[0]).toBeCloseTo(11.2125, 3);
  });

  it.each([
    [[0, 5, 3, 3, 400, "border"], "width must be more than 0 m, got 0"],
    [[3, "5", 3, 3, 400, "border"], 'length must be more than 0 m, got "5"'],
    [[3, 5, null, 3, 400, "border"], "spacing must be more than 0 m, got a blank cell"],
    [[3, 5, 3, -1, 400, "border"], "radius must be more than 0 m, got -1"],
    [[3, 5, 3, 3, true, "border"], "flow must be more than 0 L/h, got TRUE"],
    [[3, 5, 3, 3, 400, "edge"], 'arrangement must be "border", "inset", "centre" or "staggered", got "edge"'],
    [[3, 5, 3, 3, 400, "border", "half"], 'arcs must be "full", "matched" or "unmatched", got "half"'],
    [
      [3, 5, 3, 3, 400, "border", "full", [["cone"]]],
      'profile must be "triangular", "uniform", "ring" or two columns, distance and rate, got "cone"',
    ],
    [[3, 5, 3, 3, 400, "border", "full", [[1, 2, 3]]], "profile must have 2 columns, distance and rate, got 3"],
    [
      [
        3,
        5,
        3,
        3,
        400,
        "border",
        "full",
        [
          [0, 1],
          [1, "x"],
        ],
      ],
      'profile must hold numbers, got "x" in row 2, column 2',
    ],
    [
      [300, 500, 3, 3, 400, "border", "full", [["ring"]], 0.1],
      "cell must be larger for a bed of this size (at most 1,000,000 cells), got 0.1",
    ],
  ])("refuses %j", (values, message) => {
    expect(cell(() => layoutCoverage(...(values as Parameters<typeof layoutCoverage>)))).toEqual({
      error: "#VALUE!",
      message,
    });
  });
});

describe("LAYOUT.COMPARE", () => {
  const table = () => layoutCompare(12, 30, 4, 4, 400);

  it("has the header and the five layouts", () => {
    expect(table()[0]).toEqual([
      "layout",
      "heads",
      "flow L/h",
      "MAR mm/h",
      "CU %",
      "DU low quarter %",
      "SC driest cell",
      "SC low quarter",
      "in bed %",
      "water factor, driest",
      "water factor, low quarter",
    ]);
    // 12 m: 3 gaps of 4 m; 30 m: 30 / 4.2 = 7.1, so 8 gaps of 3.75 m; border 4 x 9, inset 3 x 8, centre 8 heads;
    // staggered: 5 rows of 4 and 4 of 3
    // matched: 4 corners a quarter, 2 (2 + 7) edge heads a half, 2 x 7 inner: 1 + 9 + 14 = 24 of 400 L/h
    const counts = table().map((row) => row.slice(0, 3));
    expect(counts.slice(1)).toEqual([
      ["border, full circles", 36, 14400],
      ["border, matched arcs", 36, 9600],
      ["inset", 24, 9600],
      ["centre line", 8, 3200],
      ["staggered", 32, 12800],
    ]);
  });

  it("is the mean, the driest and the share of LAYOUT.COVERAGE", () => {
    const rates = layoutCoverage(12, 30, 4, 4, 400, "inset").flat();
    const mean = rates.reduce((sum, rate) => sum + rate, 0) / rates.length;
    const inset = table()[3] as number[];
    expect(inset[3]).toBeCloseTo(mean, 9);
    expect(inset[6]).toBeCloseTo(mean / Math.min(...rates), 9);
    // all but a thousandth of 9,600 L/h is accounted for by cells of a sixteenth of the throw
    expect(inset[8]! / ((100 * mean * 360) / 9600)).toBeCloseTo(1, 3);
    // 9,600 L/h over 360 m2
    expect(inset[9]).toBeCloseTo(9600 / 360 / Math.min(...rates), 9);
  });

  it("writes dry spots where the driest cell gets under a twentieth of the mean", () => {
    expect(table()[4]?.slice(6)).toEqual(["dry spots", "dry spots", expect.any(Number), "dry spots", "dry spots"]);
  });

  it("refuses a bed of fewer than 4 cells", () => {
    expect(cell(() => layoutCompare(0.3, 0.3, 4, 4, 400))).toEqual({
      error: "#VALUE!",
      message: "cell must be smaller (at least 4 cells over the bed), got 0.3",
    });
  });
});
