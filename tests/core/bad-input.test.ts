import { describe, expect, it } from "vitest";
import { caughtDepth } from "../../src/core/application/depth";
import { caughtRate, headRate } from "../../src/core/application/rate";
import { runTime } from "../../src/core/application/run-time";
import { annualCost } from "../../src/core/cost/price";
import { annualWater } from "../../src/core/cost/water";
import { InputError } from "../../src/core/errors";
import { christiansen } from "../../src/core/uniformity/christiansen";
import { distributionUniformity } from "../../src/core/uniformity/distribution";
import { type IntervalIndex, interval } from "../../src/core/uniformity/interval";
import { type Basis, multiplier } from "../../src/core/uniformity/multiplier";
import {
  quarterSchedulingCoefficient,
  schedulingCoefficient,
  shareSchedulingCoefficient,
} from "../../src/core/uniformity/scheduling-coefficient";

function refusal(work: () => unknown): InputError {
  try {
    work();
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error("nothing was refused");
}

const SIXTEEN = Array.from({ length: 16 }, (_, i) => i + 10);
const share80 = (readings: number[]) => shareSchedulingCoefficient(readings, 0.8);
const duInterval = (readings: number[]) => interval(readings, "DU.QUARTER", 0.9);

const takesReadings: [string, (readings: number[]) => unknown, number][] = [
  ["christiansen", christiansen, 2],
  ["distributionUniformity", distributionUniformity, 4],
  ["schedulingCoefficient", schedulingCoefficient, 2],
  ["quarterSchedulingCoefficient", quarterSchedulingCoefficient, 4],
  ["shareSchedulingCoefficient", share80, 2],
  ["interval", duInterval, 16],
];

describe.each(takesReadings)("%s", (_, work, needs) => {
  const cans = (count: number, x: number) => Array.from({ length: count }, () => x);

  it("lacks an answer for too few cans and when every can is dry", () => {
    const few = refusal(() => work(cans(needs - 1, 5)));
    expect(few.message).toBe(`readings must have at least ${needs} cans, got ${needs - 1}`);
    expect(few.missing).toBe(true);
    const dry = refusal(() => work(cans(needs, 0)));
    expect(dry.message).toBe("readings must have a mean above 0, got 0");
    expect(dry.missing).toBe(true);
  });

  it.each([
    [-3, "readings must be 0 or more, got -3 in reading 2"],
    [Number.NaN, "readings must be numbers, got NaN in reading 2"],
    [Infinity, "readings must be at most 1e9, got Infinity in reading 2"],
    [2e9, "readings must be at most 1e9, got 2000000000 in reading 2"],
    [1e-101, "readings must be 0 or at least 1e-100, got 1e-101 in reading 2"],
  ])("refuses a reading of %s", (bad, message) => {
    const error = refusal(() => work([5, bad, ...cans(needs, 5)]));
    expect(error.message).toBe(message);
    expect(error.missing).toBe(false);
  });
});

describe("dry cans", () => {
  it.each([
    [
      () => schedulingCoefficient([0, 4]),
      "readings must have no dry can (mark a can that was not read with x), got 0 in reading 1",
    ],
    [() => quarterSchedulingCoefficient([0, 4, 5, 6]), "readings must have a low quarter above 0, got 0"],
    [() => share80([0, 4, 5, 6]), "readings must have a catch above 0 in 4 cans, got 0"],
    [
      () => duInterval([...Array.from({ length: 15 }, () => 0), 9]),
      "readings must have more wet cans for an interval, got 1",
    ],
    [
      () => interval([0, 0, 0, 0, ...SIXTEEN], "SC.QUARTER", 0.9),
      "readings must have a low quarter above 0 for an interval, got 0",
    ],
  ])("leave some coefficients without an answer (%#)", (work, message) => {
    const error = refusal(work);
    expect(error.message).toBe(message);
    expect(error.missing).toBe(true);
  });
});

describe("interval", () => {
  it("takes at most 20,000 cans", () => {
    const error = refusal(() => duInterval(Array.from({ length: 20_001 }, () => 5)));
    expect(error.message).toBe("readings must have at most 20000 cans for an interval, got 20001");
    expect(error.missing).toBe(true);
  });

  it.each([0.49, 1, Number.NaN])("refuses the level %s", (level) => {
    expect(refusal(() => interval(SIXTEEN, "MEAN", level)).message).toBe(
      `level must be from 0.5 to 0.99, got ${level}`,
    );
  });

  it("refuses an index that it does not know, and says why there is none for the driest can", () => {
    const named = (name: string) => refusal(() => interval(SIXTEEN, name as IntervalIndex, 0.9)).message;
    const known = 'index must be "MEAN", "CU.CHRISTIANSEN", "DU.QUARTER" or "SC.QUARTER"';
    expect(named("toString")).toBe(`${known}, got "toString"`);
    expect(named("SC.CAN")).toBe(`${known} (the lowest can has no dependable interval), got "SC.CAN"`);
  });
});

describe("quantities", () => {
  it.each([
    [() => caughtDepth(5, 0), "mouth must be more than 0 mm, got 0"],
    [() => caughtDepth(-5, 80), "readings must be 0 or more, got -5"],
    [() => caughtRate(-1, 15), "depth must be 0 mm or more, got -1"],
    [() => caughtRate(1, Number.NaN), "minutes must be more than 0 min, got NaN"],
    [() => headRate(0, 1, 1), "flow must be more than 0 L/h, got 0"],
    [() => headRate(1, 0, 1), "spacing must be more than 0 m, got 0"],
    [() => headRate(1, 1, -2), "row_spacing must be more than 0 m, got -2"],
    [() => headRate(1, 1e-10, 1), "spacing must be at least 1e-9 m, got 1e-10"],
    [() => headRate(1, 1e10, 1), "spacing must be at most 1e9 m, got 10000000000"],
    [() => runTime(0, 1, 1), "depth must be more than 0 mm, got 0"],
    [() => runTime(1, Infinity, 1), "rate must be more than 0 mm/h, got Infinity"],
    [() => runTime(1, 1, 0), "multiplier must be more than 0, got 0"],
    [() => annualWater(0, 5, 300, 1, 1), "area must be more than 0 m², got 0"],
    [() => annualWater(1, 5, 367, 1, 1), "days must be more than 0 and at most 366, got 367"],
    [() => annualWater(1, 5, 300, 1, 1.1), "in_bed_share must be more than 0 and at most 1, got 1.1"],
    [() => annualCost(1, -1), "price must be 0 per kL or more, got -1"],
    [
      () => multiplier([4, 5], "cans" as Basis),
      'basis must be "can", "quarter" or a share of the cans from 0.5 to 1, got "cans"',
    ],
    [() => multiplier([4, 5], 0.4), 'basis must be "can", "quarter" or a share of the cans from 0.5 to 1, got 0.4'],
    [() => shareSchedulingCoefficient([4, 5], 1.01), "share must be from 0.5 to 1, got 1.01"],
  ])("are refused out of their range (%#)", (work, message) => {
    expect(refusal(work).message).toBe(message);
  });

  it("stay finite at the ends of their ranges", () => {
    const most = schedulingCoefficient([1e-100, 1e9]);
    expect(annualWater(1e9, 1e9, 366, most, 1e-9)).toBeLessThan(Infinity);
    expect(runTime(1e9, caughtRate(caughtDepth(1e-100, 1e9), 1e9), most)).toBeLessThan(Infinity);
    expect(annualCost(1, 0)).toBe(0);
  });
});
