import { describe, expect, it } from "vitest";
import { bedRunTime } from "../../../src/core/layout/bed-run-time";
import { cellsOfBed } from "../../../src/core/layout/cells";
import { coverage } from "../../../src/core/layout/coverage";
import { driestPatchCoefficient } from "../../../src/core/layout/driest-patch";
import { judgement } from "../../../src/core/layout/judgement";
import { layoutMultiplier, parseLayoutBasis, waterFactor } from "../../../src/core/layout/multiplier";
import { overlap } from "../../../src/core/layout/overlap";
import { namedProfile } from "../../../src/core/layout/profile";
import { pumpShare } from "../../../src/core/layout/search/pump-share";
import { upgradeCapital } from "../../../src/core/layout/search/upgrade-capital";
import { planOf } from "./plans";

/** A made-up coverage of a bed of 2 x 2 m in four cells, and its judgement. */
function made(rates: number[]) {
  const cells = cellsOfBed(2, 2, 1);
  const inside = rates.reduce((sum, rate) => sum + rate, 0);
  const head = { x: 1, y: 1, flow: 2 * inside, times: 1, across: 0, along: 0 } as const;
  const bed = { cells, rates: { rows: 2, columns: 2, values: Float64Array.from(rates) }, inside, outside: inside };
  return { bed, figures: judgement({ heads: [head], ...bed }) };
}

describe("the driest patch of a layout", () => {
  it("is found among rectangles of every proportion", () => {
    // mean 10; half of the bed: the drier column 6, 8 has 7
    expect(driestPatchCoefficient(made([6, 12, 8, 14]).bed, 0.5)).toBeCloseTo(10 / 7, 12);
    expect(driestPatchCoefficient(made([6, 12, 8, 14]).bed, 0.25)).toBeCloseTo(10 / 6, 12);
  });

  it("is no drier than the driest cell, and drier the smaller it is", () => {
    const bed = coverage(planOf({ arrangement: "inset" }));
    const coefficients = [0.01, 0.05, 0.1, 0.5].map((share) => driestPatchCoefficient(bed, share) as number);
    expect([...coefficients].sort((a, b) => b - a)).toEqual(coefficients);
    expect(coefficients[0]).toBeLessThan(judgement(bed).driestCoefficient as number);
  });

  it("is called dry spots where it gets under a twentieth of the mean, or nothing", () => {
    expect(driestPatchCoefficient(made([0.5, 19.5, 10, 10]).bed, 0.25)).toBe(20);
    expect(driestPatchCoefficient(made([0.4, 19.6, 10, 10]).bed, 0.25)).toBe("dry spots");
    expect(driestPatchCoefficient(made([0, 20, 10, 10]).bed, 0.25)).toBe("dry spots");
  });

  it("is refused on a dry bed, one of fewer than 4 cells, and for a share out of range", () => {
    const dry = overlap(cellsOfBed(2, 2, 0.5), [], namedProfile("uniform", 1, 1));
    expect(() => driestPatchCoefficient(dry, 0.1)).toThrow(
      expect.objectContaining({ message: "layout must wet the bed, got 0" }),
    );
    const small = coverage(planOf({ width: 1, length: 3, cell: 1 }));
    expect(() => driestPatchCoefficient(small, 0.1)).toThrow(
      expect.objectContaining({ message: "cell must be smaller (at least 4 cells over the bed), got 1" }),
    );
    expect(() => driestPatchCoefficient(made([1, 1, 1, 1]).bed, 0)).toThrow(
      expect.objectContaining({ message: "share must be more than 0 and at most 0.5, got 0" }),
    );
  });
});

describe("the run time of a layout", () => {
  const { figures } = made([8, 10, 12, 10]);

  it("gives the driest cell or the low quarter the depth", () => {
    // 6 mm at the driest cell's 8 mm/h: 45 min
    expect(bedRunTime(figures, 6, "driest")).toBeCloseTo(45, 12);
    expect(bedRunTime(figures, 6, "quarter")).toBeCloseTo(45, 12);
    const inset = judgement(coverage(planOf({ arrangement: "inset" })));
    expect(bedRunTime(inset, 6, "driest")).toBeGreaterThan(bedRunTime(inset, 6, "quarter") as number);
  });

  it("is none where the driest cell is a dry spot", () => {
    const dry = made([0.4, 19.6, 10, 10]).figures;
    expect([layoutMultiplier(dry, "driest"), waterFactor(dry, "driest"), bedRunTime(dry, 6, "driest")]).toEqual([
      "dry spots",
      "dry spots",
      "dry spots",
    ]);
  });

  it("times the flow of the heads is the water factor times the depth over the bed", () => {
    const inset = judgement(coverage(planOf({ arrangement: "inset" })));
    for (const basis of ["driest", "quarter"] as const) {
      const litres = ((bedRunTime(inset, 6, basis) as number) / 60) * inset.flow;
      expect(litres / (6 * 12 * 30)).toBeCloseTo(waterFactor(inset, basis) as number, 9);
    }
  });

  it("refuses a depth of 0 and another basis", () => {
    expect(() => bedRunTime(figures, 0, "driest")).toThrow(
      expect.objectContaining({ message: "depth must be more than 0 mm, got 0" }),
    );
    expect(() => parseLayoutBasis("can")).toThrow(
      expect.objectContaining({ message: 'basis must be "driest" or "quarter", got "can"' }),
    );
  });
});

it("a layout of 14,400 L/h takes 1.2 of a pump of 12,000 L/h", () => {
  expect(pumpShare(14_400, 12_000)).toBeCloseTo(1.2, 12);
  expect(() => pumpShare(14_400, 0)).toThrow(
    expect.objectContaining({ message: "pump_flow must be more than 0 L/h, got 0" }),
  );
});

describe("the capital of a layout", () => {
  const prices = { head: 6, riser: 4, pipe: 2.5 };

  it("is heads and risers, a lateral for each line of heads, and a main across the width", () => {
    // 4 lines of 9 heads; 4 laterals of 30 m and 12 m: 132 m; 36 x 10 + 132 x 2.5
    expect(upgradeCapital(planOf(), prices)).toEqual({ heads: 36, pipe: 132, capital: 690 });
    // one line of 8 heads; 30 + 12 m; 80 + 105
    expect(upgradeCapital(planOf({ arrangement: "centre" }), prices)).toEqual({ heads: 8, pipe: 42, capital: 185 });
  });

  it("is nothing where nothing has a price, and no price is below 0", () => {
    expect(upgradeCapital(planOf(), { head: 0, riser: 0, pipe: 0 }).capital).toBe(0);
    expect(() => upgradeCapital(planOf(), { ...prices, riser: -1 })).toThrow(
      expect.objectContaining({ message: "riser_price must be 0 or more, got -1" }),
    );
  });
});
