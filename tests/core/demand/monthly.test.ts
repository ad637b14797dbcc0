import { sampleStandardDeviation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { type MonthGiven, monthlyDemand } from "../../../src/core/demand/monthly-demand";
import { lessRain, weatherUse } from "../../../src/core/demand/weather-use";
import { potUse, weighedUse } from "../../../src/core/demand/weighings";
import fc from "../../support/properties";

describe("potUse", () => {
  it("has the standard error of a statistics package", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.1, max: 5000, noNaN: true }), { minLength: 2, maxLength: 12 }),
        (volumes) => {
          const { error, pots, few } = potUse(volumes);
          expect(error).toBeCloseTo(sampleStandardDeviation(volumes) / Math.sqrt(volumes.length), 6);
          expect([pots, few]).toEqual([volumes.length, volumes.length < 5]);
        },
      ),
    );
  });

  it("is sure where all pots use the same", () => {
    expect(potUse([400, 400, 400, 400, 400])).toEqual({ volume: 400, error: 0, pots: 5, few: false });
  });
});

it("takes a loss over other than a day as so much a day", () => {
  // 300 g in 18 h are 400 in 24
  expect(weighedUse(5000, 4700, 18)).toBe(400);
});

describe("monthlyDemand", () => {
  const weighed: MonthGiven = { volumes: [380, 400, 420, 390, 410] };

  it("uses the pots weighed, else by the weather, less useful rain", () => {
    const months: (MonthGiven | undefined)[] = Array.from({ length: 12 }, () => weighed);
    months[1] = { et0: 5, coefficient: 2, area: 0.04, rain: 28 };
    months[6] = { ...weighed, rain: 31 * 20 };
    const year = monthlyDemand(months, 190, 1.5);
    // 400 mL on 190 mm at capture 1.5: 9.405 mm; SE: deviations 20 0 20 10 10, (1000 / 4)^0.5 / 5^0.5 = 7.07
    expect(year[0]).toEqual({
      month: 1,
      volume: 400,
      error: expect.closeTo(7.071, 3),
      depth: expect.closeTo(9.405, 3),
    });
    // 5 x 2 x 0.04 = 0.4 L, so 9.405 mm less 28 / 28 = 1 mm a day
    expect(year[1]).toEqual({ month: 2, volume: 400, depth: expect.closeTo(8.405, 3) });
    // 20 mm of rain a day are more than enough
    expect(year[6]?.depth).toBe(0);
  });

  it("computes what it can and says what is missing or wrong", () => {
    const months: (MonthGiven | undefined)[] = Array.from({ length: 12 }, () => weighed);
    months[2] = undefined;
    months[3] = { et0: 5, area: 0.04 };
    months[4] = { ...weighed, rain: -3.1 };
    months[5] = { volumes: [400] };
    months[6] = { volumes: [400, -1] };
    months[7] = {};
    const year = monthlyDemand(months, 190, 1);
    expect(year.map(({ problem }) => problem)).toEqual([
      undefined,
      undefined,
      "month 3 is missing",
      "coefficient must be more than 0, got a blank cell in month 4",
      "rain must be 0 mm or more, got -3.1 in month 5",
      "volumes must be of at least 2 pots, got 1 in month 6",
      "volumes must be 0 mL or more, got -1 in month 7",
      "et0 must be from 0 to 30 mm/day, got a blank cell in month 8",
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    expect(year.filter(({ depth }) => depth !== undefined)).toHaveLength(6);
  });
});

it.each([
  [() => weighedUse(0, 1, 24), "before must be more than 0 g, got 0"],
  [() => weighedUse(5000, 5100, 24), "after must be at most the 5000 g before, got 5100"],
  [() => weighedUse(5000, 4900, 0), "hours must be more than 0 h, got 0"],
  [() => potUse([1, Number.NaN]), "volumes must be 0 mL or more, got NaN in pot 2"],
  [() => weatherUse(-1, 1, 1), "et0 must be from 0 to 30 mm/day, got -1"],
  [() => weatherUse(5, 0, 1), "coefficient must be more than 0, got 0"],
  [() => weatherUse(5, 1, 0), "area must be more than 0 m², got 0"],
  [() => lessRain(5, -1), "rain must be 0 mm or more, got -1"],
  [() => monthlyDemand([], 190, 1), "months must be 12, got 0"],
  [() => monthlyDemand(Array(12), 0, 1), "top must be more than 0 mm, got 0"],
])("refuses bad input (%#)", (work, message) => {
  expect(work).toThrow(message);
});
