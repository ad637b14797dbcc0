import { expect, it } from "vitest";
import { correctedRunTime, leachingFraction } from "../../../src/core/application/leaching";
import { drainedShare, grossDepth, leachingMultiplier } from "../../../src/core/application/leaching-depth";
import fc from "../../support/properties";

const share = fc.double({ min: 0, max: 0.9, noNaN: true });
const above = fc.double({ min: 1, max: 5, noNaN: true });

it("corrects a run time so that the pot keeps as much as before", () => {
  fc.assert(
    fc.property(share, share, (measured, target) => {
      const { minutes } = correctedRunTime(60, measured, target);
      expect(minutes * (1 - target)).toBeCloseTo(60 * (1 - measured), 9);
    }),
  );
});

it("says that the run time is only a floor where nothing drained", () => {
  // 60 (1 - 0) / (1 - 0.25) = 80
  expect(correctedRunTime(60, leachingFraction(400, 0), 0.25)).toEqual({ minutes: 80, floor: true });
  expect(correctedRunTime(60, leachingFraction(400, 1), 0.25).floor).toBe(false);
});

it("applies both never less than the larger, and neither less than the depth", () => {
  fc.assert(
    fc.property(above, share, (multiplier, leaching) => {
      const larger = grossDepth(10, multiplier, leaching, "larger");
      expect(larger).toBeGreaterThanOrEqual(10);
      expect(grossDepth(10, multiplier, leaching, "both")).toBeGreaterThanOrEqual(larger);
    }),
  );
});

it("drains what is applied and not kept", () => {
  fc.assert(
    fc.property(above, share, (multiplier, leaching) => {
      const applied = grossDepth(10, multiplier, leaching, "both");
      expect(applied * drainedShare(leachingMultiplier(multiplier, leaching, "both"))).toBeCloseTo(applied - 10, 9);
    }),
  );
});

it.each([
  [() => leachingFraction(0, 0), "applied must be more than 0 mL, got 0"],
  [() => leachingFraction(400, -1), "drained must be 0 mL or more, got -1"],
  [() => leachingFraction(400, 401), "drained must be at most the 400 mL applied, got 401"],
  [() => correctedRunTime(-60, 0.2, 0.1), "run_time must be more than 0 min, got -60"],
  [() => correctedRunTime(60, 1, 0.1), "measured must be from 0 and under 1, got 1"],
  [() => correctedRunTime(60, 0.2, 0.95), "target must be from 0 to 0.9, got 0.95"],
  [() => leachingMultiplier(0, 0.1, "both"), "multiplier must be more than 0, got 0"],
  [() => leachingMultiplier(1.4, -0.1, "both"), "leaching must be from 0 to 0.9, got -0.1"],
  [() => leachingMultiplier(1.4, 0.1, "sum" as "both"), 'rule must be "larger" or "both", got "sum"'],
  [() => drainedShare(0.9), "multiplier must be at least 1, got 0.9"],
])("refuses bad input (%#)", (work, message) => {
  expect(work).toThrow(message);
});
