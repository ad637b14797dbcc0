import { describe, expect, it } from "vitest";
import { caughtDepth } from "../../src/core/application/depth";
import { caughtRate } from "../../src/core/application/rate";
import { runTime } from "../../src/core/application/run-time";
import { annualCost } from "../../src/core/cost/price";
import { annualWater } from "../../src/core/cost/water";
import { mean } from "../../src/core/readings";
import { christiansen } from "../../src/core/uniformity/christiansen";
import { distributionUniformity } from "../../src/core/uniformity/distribution";
import { interval } from "../../src/core/uniformity/interval";
import { multiplier } from "../../src/core/uniformity/multiplier";
import {
  quarterSchedulingCoefficient,
  schedulingCoefficient,
  shareSchedulingCoefficient,
} from "../../src/core/uniformity/scheduling-coefficient";
import fc from "../support/properties";

const CLOSE = 1e-9;
const catches = fc.double({ min: 0.01, max: 1000, noNaN: true });
const bed = fc.array(catches, { minLength: 4, maxLength: 60 });
const largeBed = fc.array(catches, { minLength: 16, maxLength: 60 });
const share = fc.double({ min: 0.5, max: 1, noNaN: true });
const factor = fc.double({ min: 0.01, max: 100, noNaN: true });
const widths = fc.double({ min: 10, max: 1000, noNaN: true });
const quantity = fc.double({ min: 0.01, max: 1000, noNaN: true });

const ratios: [string, (readings: number[]) => number][] = [
  ["christiansen", christiansen],
  ["distributionUniformity", distributionUniformity],
  ["schedulingCoefficient", schedulingCoefficient],
  ["quarterSchedulingCoefficient", quarterSchedulingCoefficient],
  ["shareSchedulingCoefficient", (readings) => shareSchedulingCoefficient(readings, 0.8)],
];

function expectClose(ours: number, other: number): void {
  expect(Math.abs(ours - other)).toBeLessThanOrEqual(CLOSE * Math.max(1, Math.abs(other)));
}

describe.each(ratios)("%s", (_, ratio) => {
  it("is the same in any order of the cans", () => {
    fc.assert(
      fc.property(bed, fc.infiniteStream(fc.nat()), (readings, keys) => {
        const order = readings.map((x) => [keys.next().value, x] as const).sort((a, b) => a[0] - b[0]);
        expectClose(ratio(order.map(([, x]) => x)), ratio(readings));
      }),
    );
  });

  it("is the same in any unit", () => {
    fc.assert(
      fc.property(bed, factor, (readings, by) => expectClose(ratio(readings.map((x) => x * by)), ratio(readings))),
    );
  });

  it("leaves the readings as they are", () => {
    fc.assert(
      fc.property(bed, (readings) => {
        const before = [...readings];
        ratio(readings);
        expect(readings).toEqual(before);
      }),
    );
  });
});

describe("equal cans", () => {
  it("give exactly 100 % and 1", () => {
    fc.assert(
      fc.property(catches, fc.integer({ min: 16, max: 60 }), share, (x, count, part) => {
        const readings = Array.from({ length: count }, () => x);
        expect(christiansen(readings)).toBe(100);
        expect(distributionUniformity(readings)).toBe(100);
        expect(schedulingCoefficient(readings)).toBe(1);
        expect(quarterSchedulingCoefficient(readings)).toBe(1);
        expect(shareSchedulingCoefficient(readings, part)).toBe(1);
        expect(interval(readings, "MEAN", 0.9)).toEqual([x, x]);
        expect(interval(readings, "CU.CHRISTIANSEN", 0.9)).toEqual([100, 100]);
        expect(interval(readings, "DU.QUARTER", 0.9)).toEqual([100, 100]);
        expect(interval(readings, "SC.QUARTER", 0.9)).toEqual([1, 1]);
      }),
      { numRuns: 20 },
    );
  });
});

describe("the scheduling coefficients", () => {
  it("have the driest can above the low quarter, that above 1, and the driest can above every share", () => {
    fc.assert(
      fc.property(bed, share, (readings, part) => {
        const can = schedulingCoefficient(readings);
        const quarter = quarterSchedulingCoefficient(readings);
        expect(can).toBeGreaterThanOrEqual(quarter - CLOSE);
        expect(quarter).toBeGreaterThanOrEqual(1 - CLOSE);
        expect(can).toBeGreaterThanOrEqual(shareSchedulingCoefficient(readings, part));
        expect(shareSchedulingCoefficient(readings, 1)).toBe(can);
        expectClose(quarter, 100 / distributionUniformity(readings));
      }),
    );
  });

  it("are the multiplier of their basis", () => {
    fc.assert(
      fc.property(bed, share, (readings, part) => {
        expect(multiplier(readings, "can")).toBe(schedulingCoefficient(readings));
        expect(multiplier(readings, "quarter")).toBe(quarterSchedulingCoefficient(readings));
        expect(multiplier(readings, part)).toBe(shareSchedulingCoefficient(readings, part));
      }),
    );
  });

  it("by the share, give that share of the cans at least the depth", () => {
    fc.assert(
      fc.property(bed, share, (readings, part) => {
        const needed = mean(readings, 2) / shareSchedulingCoefficient(readings, part);
        const reached = readings.filter((x) => x >= needed * (1 - CLOSE)).length;
        expect(reached).toBeGreaterThanOrEqual(part * readings.length - CLOSE);
      }),
    );
  });
});

describe("rate, run time, water and cost", () => {
  it("have run time x rate = depth x multiplier", () => {
    fc.assert(
      fc.property(quantity, quantity, quantity, (depth, rate, by) =>
        expectClose((runTime(depth, rate, by) / 60) * rate, depth * by),
      ),
    );
  });

  it("have a run at a can's own rate that catches the depth again", () => {
    fc.assert(
      fc.property(quantity, widths, quantity, (volume, mouth, minutes) => {
        const depth = caughtDepth(volume, mouth);
        expectClose(runTime(depth, caughtRate(depth, minutes), 1), minutes);
      }),
    );
  });

  it("have water that grows with area and shrinks with the share that lands, and cost with both water and price", () => {
    fc.assert(
      fc.property(quantity, quantity, share, (area, price, landing) => {
        const once = annualWater(area, 5, 300, 1.5, 1);
        expectClose(annualWater(2 * area, 5, 300, 1.5, 1), 2 * once);
        expectClose(annualWater(area, 5, 300, 1.5, landing) * landing, once);
        expectClose(annualCost(once, price) / price, once);
      }),
    );
  });
});

describe("interval", () => {
  it("has a low end under its high end, in any order of the cans the same", () => {
    fc.assert(
      fc.property(largeBed, (readings) => {
        const [low, high] = interval(readings, "MEAN", 0.9);
        expect(low).toBeLessThanOrEqual(high);
        expect(interval([...readings].reverse(), "MEAN", 0.9)).toEqual([low, high]);
      }),
      { numRuns: 20 },
    );
  });
});
