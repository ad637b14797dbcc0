import { describe, expect, it } from "vitest";
import { distributionUniformity, quarterCount } from "../../src/core/uniformity/distribution";
import fc from "../support/properties";

describe("the low quarter", () => {
  it.each([
    [1, 1],
    [4, 1],
    [5, 1],
    [6, 2], // 1.5, halves up
    [9, 2],
    [10, 3], // 2.5, halves up
    [16, 4],
    [25, 6],
  ])("of %i cans is %i", (cans, quarter) => {
    expect(quarterCount(cans)).toBe(quarter);
  });

  it("is never further than half a can from a quarter, past the first", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 1e6 }), (cans) => {
        expect(Math.abs(quarterCount(cans) - cans / 4)).toBeLessThanOrEqual(0.5);
      }),
    );
  });

  it("of ten cans are the lowest three", () => {
    // lowest three 12, 13, 14: mean 13; all: 150/10 = 15; 100 x 13/15 = 86.667
    expect(distributionUniformity([12, 15, 14, 18, 16, 14, 13, 17, 15, 16])).toBeCloseTo(86.667, 3);
  });
});
