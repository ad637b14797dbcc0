import { describe, expect, it } from "vitest";
import { mean } from "../../src/core/readings";
import { christiansen } from "../../src/core/uniformity/christiansen";
import { distributionUniformity } from "../../src/core/uniformity/distribution";
import { interval } from "../../src/core/uniformity/interval";
import { multiplier } from "../../src/core/uniformity/multiplier";
import { schedulingCoefficient, shareSchedulingCoefficient } from "../../src/core/uniformity/scheduling-coefficient";
import {
  weightedChristiansen,
  weightedDistribution,
  weightedLowQuarter,
  weightedMean,
  weightedQuarterSchedulingCoefficient,
  weightedSchedulingCoefficient,
  weightedShareSchedulingCoefficient,
} from "../../src/core/uniformity/weighted";
import fc from "../support/properties";

const reading = fc.double({ min: 0.01, max: 100, noNaN: true });
const area = fc.double({ min: 0.01, max: 10, noNaN: true });
const cans = fc.array(fc.tuple(reading, area), { minLength: 4, maxLength: 60 });
const apart = (pairs: readonly (readonly [number, number])[]) =>
  [pairs.map(([x]) => x), pairs.map(([, a]) => a)] as const;
const close = (one: number, other: number) => Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other));

describe("figures weighted by area", () => {
  it("are the plain ones where all areas are equal and the cans divide by four", () => {
    const fours = fc.array(fc.tuple(reading, reading, reading, reading), { minLength: 1, maxLength: 15 });
    fc.assert(
      fc.property(fours, area, (groups, a) => {
        const readings = groups.flat();
        const areas = readings.map(() => a);
        const m = readings.reduce((sum, x) => sum + x, 0) / readings.length;
        const low = (100 * weightedLowQuarter(readings, areas)) / m;
        return (
          close(weightedMean(readings, areas), m) &&
          close(weightedChristiansen(readings, areas), christiansen(readings)) &&
          close(low, distributionUniformity(readings))
        );
      }),
    );
  });

  it("are the same when a can is cut into two that are for half the ground each", () => {
    fc.assert(
      fc.property(cans, (pairs) => {
        const [readings, areas] = apart(pairs);
        const halves = apart(
          pairs.flatMap(([x, a]): [number, number][] => [
            [x, a / 2],
            [x, a / 2],
          ]),
        );
        return (
          close(weightedMean(readings, areas), weightedMean(...halves)) &&
          close(weightedChristiansen(readings, areas), weightedChristiansen(...halves)) &&
          close(weightedLowQuarter(readings, areas), weightedLowQuarter(...halves))
        );
      }),
    );
  });

  it("do not change with the order of the cans or the unit of the ground", () => {
    fc.assert(
      fc.property(cans, (pairs) => {
        const turned = apart([...pairs].reverse().map(([x, a]): [number, number] => [x, 3 * a]));
        const [readings, areas] = apart(pairs);
        return (
          close(weightedMean(readings, areas), weightedMean(...turned)) &&
          close(weightedLowQuarter(readings, areas), weightedLowQuarter(...turned))
        );
      }),
    );
  });

  it("have the low quarter that the workbook finds as a largest value, ties or not", () => {
    // max over t of t - 4 sum(a max(t - x, 0)) / A, reached where the driest quarter of the ground ends
    const rounded = fc.array(fc.tuple(fc.integer({ min: 0, max: 6 }), area), { minLength: 4, maxLength: 60 });
    fc.assert(
      fc.property(rounded, (pairs) => {
        fc.pre(pairs.some(([x]) => x > 0));
        const [readings, areas] = apart(pairs);
        const whole = areas.reduce((sum, a) => sum + a, 0);
        const at = (t: number) => t - (4 * pairs.reduce((sum, [x, a]) => sum + a * Math.max(t - x, 0), 0)) / whole;
        return close(Math.max(...readings.map(at)), weightedLowQuarter(readings, areas));
      }),
    );
  });

  it("take only a part of the can in which the quarter ends", () => {
    // 10 m² in all, so the driest 2.5: 2 m² with 1 and 0.5 m² with 3
    expect(weightedLowQuarter([3, 1, 8, 9], [4, 2, 3, 1])).toBeCloseTo((2 * 1 + 0.5 * 3) / 2.5, 12);
  });

  it("refuse what does not fit", () => {
    expect(() => weightedMean([1, 2], [1])).toThrow("areas must be one for each of the 2 readings, got 1");
    expect(() => weightedMean([1, 2], [1, 0])).toThrow("areas must be more than 0, got 0");
    expect(() => weightedChristiansen([1], [1])).toThrow("readings must have at least 2 cans, got 1");
    expect(() => weightedLowQuarter([1, 2, 3], [1, 1, 1])).toThrow("readings must have at least 4 cans, got 3");
  });

  it("are those of the cans where all areas are equal, but for a quarter that ends inside a can", () => {
    const share = fc.integer({ min: 50, max: 100 }).map((percent) => percent / 100);
    fc.assert(
      fc.property(fc.array(reading, { minLength: 4, maxLength: 60 }), area, share, (readings, a, part) => {
        const areas = readings.map(() => a);
        return (
          close(weightedMean(readings, areas), mean(readings, 1)) &&
          close(weightedChristiansen(readings, areas), christiansen(readings)) &&
          close(weightedSchedulingCoefficient(readings, areas), schedulingCoefficient(readings)) &&
          close(weightedShareSchedulingCoefficient(readings, areas, part), shareSchedulingCoefficient(readings, part))
        );
      }),
    );
  });

  it("have a share that splitting each can and scaling the areas leave as it is", () => {
    const share = fc.double({ min: 0.5, max: 1, noNaN: true });
    fc.assert(
      fc.property(cans, share, (pairs, part) => {
        const [readings, areas] = apart(pairs);
        const halves = apart(pairs.flatMap(([x, a]) => [[x, a / 2] as const, [x, a / 2] as const]));
        const whole = weightedShareSchedulingCoefficient(readings, areas, part);
        const scaled = areas.map((a) => a * 1e7);
        return (
          close(weightedShareSchedulingCoefficient(...halves, part), whole) &&
          close(weightedShareSchedulingCoefficient(readings, scaled, part), whole)
        );
      }),
    );
  });

  it("agree among themselves: SC is the inverse of DU, and the multiplier is the SC that the basis names", () => {
    fc.assert(
      fc.property(cans, (pairs) => {
        const [readings, areas] = apart(pairs);
        const quarter = weightedQuarterSchedulingCoefficient(readings, areas);
        return (
          close(quarter, 100 / weightedDistribution(readings, areas)) &&
          multiplier(readings, "quarter", areas) === quarter &&
          multiplier(readings, "can", areas) === weightedSchedulingCoefficient(readings, areas) &&
          multiplier(readings, 0.8, areas) === weightedShareSchedulingCoefficient(readings, areas, 0.8)
        );
      }),
    );
  });

  it("have an interval that neither order nor unit of the areas changes, and that is equal areas' own", () => {
    const many = fc.array(fc.tuple(reading, area), { minLength: 16, maxLength: 40 });
    fc.assert(
      fc.property(many, (pairs) => {
        const [readings, areas] = apart(pairs);
        const turned = apart([...pairs].reverse().map(([x, a]): [number, number] => [x, 4 * a]));
        const ones = readings.map(() => 2);
        const [plain, equal] = [interval(readings, "MEAN", 0.9), interval(readings, "MEAN", 0.9, ones)];
        const [found, other] = [
          interval(readings, "DU.QUARTER", 0.9, areas),
          interval(turned[0], "DU.QUARTER", 0.9, turned[1]),
        ];
        return close(found[0], other[0]) && close(found[1], other[1]) && close(plain[0], equal[0]);
      }),
      { numRuns: 20 },
    );
  });
});
