import { expect, it } from "vitest";
import { pulses } from "../../../src/core/application/pulses";
import fc from "../../support/properties";

const quantity = fc.double({ min: 0.5, max: 300, noNaN: true });

it("keeps the run time, is no deeper than the mix takes up, and needs every pulse", () => {
  fc.assert(
    fc.property(quantity, quantity, quantity, quantity, (runTime, rate, takeUp, rest) => {
      fc.pre((runTime * rate) / 60 / takeUp < 1000);
      const { number, minutes, elapsed } = pulses(runTime, rate, takeUp, rest);
      expect(number * minutes).toBeCloseTo(runTime, 9);
      expect(elapsed).toBeCloseTo(runTime + (number - 1) * rest, 9);
      const deepest = takeUp * (1 + 1e-8);
      expect((minutes * rate) / 60).toBeLessThanOrEqual(deepest);
      if (number > 1) expect((runTime * rate) / 60 / (number - 1)).toBeGreaterThan(takeUp);
    }),
  );
});

it("does not add a pulse for a rounding of binary fractions", () => {
  // 9.9 mm / 3.3 mm = 3, though in binary fractions it is 3.0000000000000004
  expect(9.9 / 3.3).toBeGreaterThan(3);
  expect(pulses(49.5, 12, 3.3, 0).number).toBe(3);
});

it.each([
  [() => pulses(0, 12, 5, 30), "run_time must be more than 0 min, got 0"],
  [() => pulses(60, Number.NaN, 5, 30), "rate must be more than 0 mm/h, got NaN"],
  [() => pulses(60, 12, 0, 30), "take_up must be more than 0 mm, got 0"],
  [() => pulses(60, 12, 5, -1), "rest must be 0 min or more, got -1"],
  [() => pulses(60, 12, 0.01, 1), "take_up must be deeper (at most 1000 pulses for 12 mm), got 0.01"],
])("refuses bad input (%#)", (work, message) => {
  expect(work).toThrow(message);
});
