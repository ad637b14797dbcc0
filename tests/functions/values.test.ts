import { beforeAll, describe, expect, it } from "vitest";
import * as application from "../../src/functions/application";
import * as uniformity from "../../src/functions/uniformity";
import * as water from "../../src/functions/water";
import { fakeCustomFunctions } from "../support/custom-functions";

/** Yeager, Container Plant Irrigation Considerations (University of Florida): sixteen cups, mL; sum 816, mean 51. */
const CUPS = [
  [53, 56, 61, 66],
  [47, 49, 57, 61],
  [42, 43, 50, 53],
  [40, 41, 48, 49],
];

/** A circle of 100 mm holds pi 2500 mm2, so 2.5 pi mL are 1 mm deep in it. */
const ONE_MM = 2.5 * Math.PI;

beforeAll(() => void fakeCustomFunctions());

describe("uniformity", () => {
  it("CU.CHRISTIANSEN is 90.67 for ten cans", () => {
    // mean 15, deviations 3+0+1+3+1+1+2+2+0+1 = 14; 100 (1 - 14/150)
    const cans = [[12, 15, 14, 18, 16, 14, 13, 17, 15, 16]];
    expect(uniformity.cuChristiansen(cans)).toBeCloseTo(90.6667, 4);
  });

  it("DU.QUARTER is 81.37 for the sixteen cups", () => {
    // 40+41+42+43 = 166; 100 (166/4) / 51
    expect(uniformity.duQuarter(CUPS)).toBeCloseTo(81.3725, 4);
  });

  it("SC.CAN is 1.357 for four readings", () => {
    // Sammis, New Mexico State University: .95/.7, printed 1.35
    expect(uniformity.scCan([[1, 0.9, 0.7, 1.2]])).toBeCloseTo(1.3571, 4);
  });

  it("SC.QUARTER is the mean over the mean of the driest quarter", () => {
    // 51 / 41.5
    expect(uniformity.scQuarter(CUPS)).toBeCloseTo(1.2289, 4);
  });

  it("SC.SHARE is the mean over the catch that the share reaches", () => {
    // 0.75 of 16 is 12; from the largest: 66 61 61 57 56 53 53 50 49 49 48 47; 51/47
    expect(uniformity.scShare(CUPS, 0.75)).toBeCloseTo(1.0851, 4);
    // all 16: 51/40
    expect(uniformity.scShare(CUPS, 1)).toBeCloseTo(1.275, 10);
  });

  it("SC.PATCH finds the driest patch, whichever way the bed is turned", () => {
    // 0.25 of 16 is 4: the lowest row holds 178, the left column 182, the lowest square 42+43+40+41 = 166; 51/41.5
    expect(uniformity.scPatch(CUPS, 0.25)).toBeCloseTo(1.2289, 4);
    const turned = CUPS.map((_, c) => CUPS.map((row) => row[c]));
    expect(uniformity.scPatch(turned, 0.25)).toBe(uniformity.scPatch(CUPS, 0.25));
  });

  it("INTERVAL has the low end on the left, the high end on the right and the index between", () => {
    for (const [index, value] of [
      ["MEAN", 51],
      ["DU.QUARTER", 81.37],
      ["SC.QUARTER", 1.2289],
    ] as const) {
      const [[low, high]] = uniformity.interval(CUPS, index) as [[number, number]];
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
    }
  });

  it("INTERVAL is at 0.9 where no level is given, and any case of the index will do", () => {
    expect(uniformity.interval(CUPS, " du.quarter ", null)).toEqual(uniformity.interval(CUPS, "DU.QUARTER", 0.9));
  });

  it("INTERVAL of equal cans is that value twice", () => {
    expect(uniformity.interval([Array.from({ length: 16 }, () => 7)], "MEAN")).toEqual([[7, 7]]);
  });
});

describe("rate, time, water and cost", () => {
  it("DEPTH.CAUGHT keeps the shape and leaves an unread can blank", () => {
    const depths = application.depthCaught(
      [
        [ONE_MM, "x"],
        [0, 4 * ONE_MM],
      ],
      100,
    );
    expect(depths).toEqual([
      [expect.closeTo(1, 12), ""],
      [0, expect.closeTo(4, 12)],
    ]);
    expect(application.depthCaught([[3, null]], "mm")).toEqual([[3, ""]]);
  });

  it("RATE.CAUGHT is the depth in an hour", () => {
    // 3 mm in 15 min
    expect(application.rateCaught([[3], [""]], 15, "mm")).toEqual([[12], [""]]);
  });

  it("MAR is the mean depth in an hour", () => {
    // mean of 2 and 4 mm in 20 min: 9 mm/h
    expect(application.mar([[2, "x", 4]], 20, "mm")).toBeCloseTo(9, 12);
    expect(application.mar([[2 * ONE_MM, 4 * ONE_MM]], 20, 100)).toBeCloseTo(9, 12);
  });

  it("RATE.HEAD is the flow over the ground that a head is for", () => {
    // 480 L/h over 8 m x 6 m
    expect(application.rateHead(480, 8, 6)).toBe(10);
  });

  it("RUNTIME is the base time times the multiplier", () => {
    // 4 mm in 20 min on average: 12 mm/h; 6 mm take 30 min; SC.CAN 4/2 = 2, so 60 min
    const cans = [[2, 4, 4, 6]];
    expect(application.runtime(cans, 20, "mm", 6)).toBeCloseTo(60, 12);
    expect(application.runtime(cans, 20, "mm", 6, "can")).toBeCloseTo(60, 12);
    // the low quarter of four cans is one can
    expect(application.runtime(cans, 20, "mm", 6, "quarter")).toBeCloseTo(60, 12);
    // 0.75 of the cans reach 4 mm: 30 min
    expect(application.runtime(cans, 20, "mm", 6, 0.75)).toBeCloseTo(30, 12);
  });

  it("WATER.ANNUAL and COST.ANNUAL count what the heads must throw", () => {
    // 200 m2, 5 mm, 300 days, multiplier 2: 600,000 L; 3/4 of it lands on the bed: 800 kL; 2.50 a kL
    const cans = [[2, 4, 4, 6]];
    expect(water.waterAnnual(cans, 200, 5, 300)).toBeCloseTo(600, 9);
    expect(water.waterAnnual(cans, 200, 5, 300, "can", 0.75)).toBeCloseTo(800, 9);
    expect(water.waterAnnual(cans, 200, 5, 300, 0.75)).toBeCloseTo(300, 9);
    expect(water.costAnnual(cans, 200, 5, 300, 2.5, "can", 0.75)).toBeCloseTo(2000, 9);
    expect(water.costAnnual(cans, 200, 5, 300, 0)).toBe(0);
  });
});

it("a single value counts as one cell", () => {
  expect(application.depthCaught(3 as never, "mm")).toEqual([[3]]);
});
