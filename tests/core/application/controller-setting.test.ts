import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { controllerSetting } from "../../../src/core/application/controller-setting";

describe("the setting of a controller", () => {
  it("rounds each pulse up: 67 min in two pulses are 2 × 33.5, so 2 × 34", () =>
    expect(controllerSetting(67, 2, 1)).toEqual({ pulses: 2, each: 34, total: 68 }));

  it("adds no step for a rounding error: 0.1 + 0.2 is 0.3", () =>
    expect(controllerSetting(0.1 + 0.2, 1, 0.1).each).toBeCloseTo(0.3, 12));

  it("never gives less than calculated, nor a whole step more in a pulse", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1440, noNaN: true }),
        fc.integer({ min: 1, max: 20 }),
        (minutes, pulses) => {
          const { each, total } = controllerSetting(minutes, pulses, 1);
          expect(Number.isInteger(each)).toBe(true);
          expect(total).toBeGreaterThanOrEqual(minutes - 1e-6);
          expect(each).toBeLessThan(minutes / pulses + 1);
        },
      ),
    ));

  it("refuses what is not more than 0", () =>
    expect(() => controllerSetting(10, 1, 0)).toThrow("step must be more than 0 min, got 0"));
});
