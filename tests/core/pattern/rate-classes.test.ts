import { describe, expect, it } from "vitest";
import { RATE_CLASSES, rateClass } from "../../../src/core/pattern/rate-classes";
import fc from "../../support/properties";

describe("classes of a coverage map", () => {
  it("follow one on another from nothing upwards", () => {
    expect(RATE_CLASSES.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(RATE_CLASSES.map(({ from }) => from)).toEqual([0, ...RATE_CLASSES.slice(0, -1).map(({ to }) => to)]);
  });

  it("a lower end belongs to its class", () => {
    const shares = [0, 0.49, 0.5, 0.75, 0.89, 0.9, 1, 1.09, 1.1, 1.25, 1.49, 1.5, 40];
    expect(shares.map((share) => rateClass(share, 1).number)).toEqual([1, 1, 2, 3, 3, 4, 4, 4, 5, 6, 6, 7, 7]);
  });

  it("depend on the rate over the mean alone", () => {
    const rate = fc.double({ min: 0.001, max: 1000, noNaN: true });
    fc.assert(fc.property(rate, rate, (r, m) => rateClass(4 * r, 4 * m) === rateClass(r, m)));
  });

  it("refuse a rate below 0 and a mean of 0", () => {
    expect(() => rateClass(-1, 2)).toThrow("rate must be 0 mm/h or more, got -1");
    expect(() => rateClass(1, 0)).toThrow("mean must be more than 0 mm/h, got 0");
  });

  it("can be told apart without colour", () => {
    expect(new Set(RATE_CLASSES.map(({ symbol }) => symbol)).size).toBe(7);
  });
});
