import { describe, expect, it } from "vitest";
import { cellsOfBed } from "../../../src/core/layout/cells";
import { compare } from "../../../src/core/layout/compare";
import { coverage } from "../../../src/core/layout/coverage";
import { DRY_SPOTS, judgement } from "../../../src/core/layout/judgement";
import { overlap } from "../../../src/core/layout/overlap";
import { namedProfile } from "../../../src/core/layout/profile";
import { planOf } from "./plans";

const [border, matched, inset, centre] = compare(planOf());

/** A made-up coverage of a bed of 2 x 2 m in four cells. */
function made(rates: number[], outside: number) {
  const cells = cellsOfBed(2, 2, 1);
  const inside = rates.reduce((sum, rate) => sum + rate, 0);
  const head = { x: 1, y: 1, flow: inside + outside, times: 1, across: 0, along: 0 } as const;
  return { heads: [head], cells, rates: { rows: 2, columns: 2, values: Float64Array.from(rates) }, inside, outside };
}

describe("the judgement of a layout", () => {
  it("is calculated from the rates and the flow", () => {
    // rates 8, 10, 12, 10 mm/h on 1 m2 each: 40 L/h in the bed of 4 m2, mean 10; 10 L/h beside it, so 12.5 mm/h thrown
    expect(judgement(made([8, 10, 12, 10], 10))).toEqual({
      heads: 1,
      flow: 50,
      meanRate: 10,
      christiansen: 90, // deviations 2 + 2 of 40
      distribution: 80, // the low quarter is one cell: 8 of 10
      driestCoefficient: 1.25,
      quarterCoefficient: 1.25,
      inBedShare: 0.8,
      driestWater: expect.closeTo(1.5625, 12), // 12.5 / 8
      quarterWater: expect.closeTo(1.5625, 12),
    });
  });

  it("says dry spots where the driest cell gets under a twentieth of the mean, and not at a twentieth", () => {
    // mean 10: a twentieth is 0.5
    expect(judgement(made([0.5, 19.5, 10, 10], 0)).driestCoefficient).toBe(20);
    const dry = judgement(made([0.49, 19.51, 10, 10], 0));
    expect([dry.driestCoefficient, dry.driestWater]).toEqual([DRY_SPOTS, DRY_SPOTS]);
    expect(dry.quarterCoefficient).toBeCloseTo(20.408, 3);
    const wholeQuarter = judgement(made([0, 20, 10, 10], 0));
    expect([wholeQuarter.quarterCoefficient, wholeQuarter.quarterWater]).toEqual([DRY_SPOTS, DRY_SPOTS]);
  });

  it("refuses a bed of fewer than 4 cells and one that gets no water", () => {
    expect(() => judgement(coverage(planOf({ width: 1, length: 3, cell: 1 })))).toThrow(
      expect.objectContaining({ message: "cell must be smaller (at least 4 cells over the bed), got 1" }),
    );
    const cells = cellsOfBed(2, 2, 0.5);
    expect(() => judgement({ heads: [], ...overlap(cells, [], namedProfile("uniform", 1, 1)) })).toThrow(
      expect.objectContaining({ message: "layout must wet the bed, got 0" }),
    );
  });
});

describe("facts of common practice, no source", () => {
  it("border heads with head-to-head spacing give an SC under 1.5", () => {
    expect(border?.driestCoefficient).toBeLessThan(1.5);
  });

  it("inset heads give an SC well above it, and over 4 where the throw is short", () => {
    expect(inset?.driestCoefficient).toBeGreaterThan(2.5);
    const poor = judgement(coverage(planOf({ arrangement: "inset", profile: namedProfile("triangular", 2.8, 400) })));
    expect(poor.driestCoefficient).toBeGreaterThan(4);
  });

  it("a centre line leaves dry edges and corners", () => {
    expect(centre?.driestCoefficient).toBe("dry spots");
    const { rates } = coverage(planOf({ arrangement: "centre" }));
    expect(rates.values[0]).toBe(0);
    expect(rates.values[60 * rates.columns]).toBe(0);
  });

  it("matched arcs give the evenness of full circles and use less water", () => {
    expect(matched?.christiansen).toBeCloseTo(border?.christiansen as number, 9);
    expect(matched?.driestCoefficient).toBeCloseTo(border?.driestCoefficient as number, 9);
    expect(matched?.flow).toBeLessThan(border?.flow as number);
    expect(matched?.inBedShare).toBeGreaterThan(0.99);
  });

  it("full circles on the border throw 30 to 60 % of the water beside the bed", () => {
    for (const width of [4, 8, 12]) {
      const { inBedShare } = judgement(coverage(planOf({ width })));
      expect(1 - inBedShare).toBeGreaterThan(0.3);
      expect(1 - inBedShare).toBeLessThan(0.6);
    }
  });

  it("a border layout waters the same driest pot with 40 to 50 % less than an inset one, and not the same low quarter", () => {
    const saving = 1 - (border?.driestWater as number) / (inset?.driestWater as number);
    expect(saving).toBeGreaterThan(0.4);
    expect(saving).toBeLessThan(0.5);
    expect(border?.quarterWater).toBeGreaterThan(inset?.quarterWater as number);
  });

  it("a spot reached by one head of four needs four times the run", () => {
    // uniform heads in the corners of 4 x 4 m, throw 3.5 m: the middle gets all four, a corner only its own head
    const profile = namedProfile("uniform", 3.5, 400);
    const { rates } = coverage(planOf({ width: 4, length: 4, profile }));
    const middle = rates.values[8 * 16 + 8]!;
    expect(middle / rates.values[0]!).toBeCloseTo(4, 9);
  });
});

describe("shrinking the cell", () => {
  it("converges: MAR, CU and DU settle; SC of the driest cell rises, each time by less", () => {
    const rows = [1, 0.5, 0.25, 0.125, 0.0625].map((cell) => {
      const { meanRate, christiansen, distribution, driestCoefficient } = judgement(
        coverage(planOf({ arrangement: "inset", cell })),
      );
      return { cell, meanRate, christiansen, distribution, driestCoefficient: driestCoefficient as number };
    });
    console.table(rows);
    const steps = (of: (row: (typeof rows)[number]) => number) => rows.slice(1).map((row, i) => of(row) - of(rows[i]!));
    const risesOfDriest = steps((row) => row.driestCoefficient);
    expect(Math.min(...risesOfDriest)).toBeGreaterThan(0);
    expect([...risesOfDriest].sort((a, b) => b - a)).toEqual(risesOfDriest);
    expect(Math.abs(steps((row) => row.meanRate).at(-1)!)).toBeLessThan(0.01);
    expect(Math.abs(steps((row) => row.christiansen).at(-1)!)).toBeLessThan(0.05);
    expect(Math.abs(steps((row) => row.distribution).at(-1)!)).toBeLessThan(0.1);
  });
});
