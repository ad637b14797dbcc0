import { describe, expect, it } from "vitest";
import { drainedShare, drainedShareAfter } from "../../src/core/uniformity/drained-share";
import { schedulingCoefficient } from "../../src/core/uniformity/scheduling-coefficient";
import fc from "../support/properties";

const catches = fc.array(fc.double({ min: 0.5, max: 100, noNaN: true }), { minLength: 2, maxLength: 40 });

describe("the share of the water that drains", () => {
  it("is what the cans get above the depth wanted, over all that they get", () => {
    // mean 8; at K 1.5 a depth of D falls as 0.75 D, 1.5 D and 2.25 D: 0.5 D + 1.25 D of 4.5 D drain, 1 - 1/1.5 is 0.3333
    expect(drainedShare([4, 8, 12], 1.5)).toBeCloseTo(1.75 / 4.5, 12);
    // areas 2, 1, 1: mean 7; K 1.4: 0.8 D, 1.6 D, 2.4 D; (0.6 + 1.4) D of (1.6 + 1.6 + 2.4) D
    expect(drainedShare([4, 8, 12], 1.4, [2, 1, 1])).toBeCloseTo(2 / 5.6, 12);
    // K 0.5 leaves even the wettest, 0.75 D, short
    expect(drainedShare([4, 8, 12], 0.5)).toBe(0);
    expect(drainedShare([5, 5], 1)).toBe(0);
  });

  it("is 1 - 1/K to the driest can, with leaching on top, and never less", () => {
    fc.assert(
      fc.property(catches, fc.double({ min: 1, max: 3, noNaN: true }), (readings, more) => {
        const k = schedulingCoefficient(readings) * more;
        const lower = schedulingCoefficient(readings) ** 0.5;
        expect(drainedShare(readings, k)).toBeCloseTo(1 - 1 / k, 9);
        expect(drainedShare(readings, lower)).toBeGreaterThanOrEqual(1 - 1 / lower - 1e-12);
      }),
    );
  });

  it("after a change is that of cans of the same shape", () => {
    // 4, 8, 12 have SC 2; for SC 1.25 the spread is (1 - 1/1.25) / (1 - 1/2) = 0.4 of it: 6.4, 8, 9.6; 1 - 1/1.25 drains
    expect(drainedShareAfter([4, 8, 12], { now: 2, after: 1.25, gross: 1.25 })).toBeCloseTo(0.2, 12);
    fc.assert(
      fc.property(catches, fc.double({ min: 0.1, max: 1, noNaN: true }), (readings, spread) => {
        const m = readings.reduce((sum, x) => sum + x, 0) / readings.length;
        const changed = readings.map((x) => m + spread * (x - m));
        const [now, after] = [schedulingCoefficient(readings), schedulingCoefficient(changed)];
        fc.pre(now > 1.001);
        const gross = after ** 0.5;
        expect(drainedShareAfter(readings, { now, after, gross })).toBeCloseTo(drainedShare(changed, gross), 9);
      }),
    );
    // where half of the pots set the run time now, SC 2 after is a spread of (1 - 1/2) / (1 - 1/1.02) = 25.5: no shape
    // to keep, since 9, 10, 11 would reach -15, 10, 35; nor has an even bed one
    expect(drainedShareAfter([9, 10, 11], { now: 1.02, after: 2, gross: 1.25 })).toBeCloseTo(0.2, 12);
    expect(drainedShareAfter([5, 5], { now: 1, after: 1.25, gross: 1.25 })).toBeCloseTo(0.2, 12);
  });
});
