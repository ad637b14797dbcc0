import { describe, expect, it } from "vitest";
import { strips } from "../../../src/core/pattern/strips";
import { areaWeights, weightedChristiansen, weightedLowQuarter, weightedMean } from "../../../src/core/pattern/weights";
import { christiansen } from "../../../src/core/uniformity/christiansen";
import { distributionUniformity } from "../../../src/core/uniformity/distribution";
import fc from "../../support/properties";

const reading = fc.double({ min: 0.01, max: 100, noNaN: true });
const area = fc.double({ min: 0.01, max: 10, noNaN: true });
const cans = fc.array(fc.tuple(reading, area), { minLength: 4, maxLength: 60 });
const apart = (pairs: [number, number][]) => [pairs.map(([x]) => x), pairs.map(([, a]) => a)] as const;
const close = (one: number, other: number) => Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other));

describe("strips of ground", () => {
  it("fill the whole side, whatever the places", () => {
    const places = fc.uniqueArray(fc.integer({ min: 0, max: 400 }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(places, (some) => {
        const sorted = some.map((place) => place / 10).sort((one, other) => one - other);
        const found = strips(sorted, 40);
        return found.every(({ from }, i) => from === (i === 0 ? 0 : found[i - 1]!.to)) && found.at(-1)!.to === 40;
      }),
    );
  });

  it("are refused beyond the bed and where places do not ascend", () => {
    expect(() => strips([1, 7], 6)).toThrow("positions must lie within the bed, from 0 to 6 m, got 7 in place 2");
    expect(() => strips([3, 3], 6)).toThrow("positions must ascend from place to place, got 3 in place 2");
    expect(() => strips([1], 0)).toThrow("size must be more than 0 m, got 0");
  });
});

describe("areas of cans", () => {
  it("add up to the bed", () => {
    // columns 0 to 1.5 and 1.5 to 4; rows 0 to 2, 2 to 5 and 5 to 10
    expect(areaWeights([0.5, 2.5], [1, 3, 7], 4, 10)).toEqual([
      [3, 5],
      [4.5, 7.5],
      [7.5, 12.5],
    ]);
  });
});

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

  it("are the same when a can is cut into two that stand for half the ground each", () => {
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
    expect(() => weightedMean([1, 2], [1])).toThrow("weights must be one for each of the 2 readings, got 1");
    expect(() => weightedMean([1, 2], [1, 0])).toThrow("weights must be more than 0 m², got 0");
    expect(() => weightedChristiansen([1], [1])).toThrow("readings must have at least 2 cans, got 1");
    expect(() => weightedLowQuarter([1, 2, 3], [1, 1, 1])).toThrow("readings must have at least 4 cans, got 3");
  });
});
