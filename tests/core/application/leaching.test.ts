import { expect, it } from "vitest";
import { correctedRunTime, leachingFraction, potWater } from "../../../src/core/application/leaching";
import { grossDepth, leachingMultiplier } from "../../../src/core/application/leaching-depth";
import { drainedShare } from "../../../src/core/uniformity/drained-share";
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

it("a planted pot in a pot without holes gives what an empty pot beside it does not", () => {
  // 4,120 g before, 4,640 g after, 4,510 g once poured off: 520 mL applied, 130 mL drained, a quarter
  expect(potWater(4120, 4640, 4510)).toEqual({ applied: 520, drained: 130 });
  // 1,000 mL applied to the planted pot and 150 mL drained, 0.15; an empty pot catches 1,000 / 1.5, or 1,000 / 2, and
  // gives 0.225, or 0.3: the run time comes out at 0.775 / 0.85, or 0.7 / 0.85, of what is right
  for (const [capture, tooShort] of [
    [1.5, 0.09],
    [2, 0.18],
  ] as const) {
    const right = correctedRunTime(60, leachingFraction(1000, 150), 0.15).minutes;
    const empty = correctedRunTime(60, leachingFraction(1000 / capture, 150), 0.15).minutes;
    expect(1 - empty / right).toBeCloseTo(tooShort, 2);
  }
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
      // with cans of 1 and 2 M - 1 the mean is M, so that the driest gets 10 mm and leaching, and all above 10 drains
      const share = drainedShare([1, 2 * multiplier - 1], leachingMultiplier(multiplier, leaching, "both"));
      expect(applied * share).toBeCloseTo(applied - 10, 9);
    }),
  );
});

it.each([
  [() => potWater(0, 10, 5), "before must be more than 0 g, got 0"],
  [() => potWater(10, 10, 10), "after must be more than the 10 g before, got 10"],
  [() => potWater(10, 20, 21), "poured must be from 10 to 20 g, got 21"],
  [() => potWater(10, 20, 9), "poured must be from 10 to 20 g, got 9"],
  [() => leachingFraction(0, 0), "applied must be more than 0 mL, got 0"],
  [() => leachingFraction(400, -1), "drained must be 0 mL or more, got -1"],
  [() => leachingFraction(400, 401), "drained must be at most the 400 mL applied, got 401"],
  [() => correctedRunTime(-60, 0.2, 0.1), "run_time must be more than 0 min, got -60"],
  [() => correctedRunTime(60, 1, 0.1), "measured must be from 0 and under 1, got 1"],
  [() => correctedRunTime(60, 0.2, 0.95), "target must be from 0 to 0.9, got 0.95"],
  [() => leachingMultiplier(0, 0.1, "both"), "multiplier must be more than 0, got 0"],
  [() => leachingMultiplier(1.4, -0.1, "both"), "leaching must be from 0 to 0.9, got -0.1"],
  [() => leachingMultiplier(1.4, 0.1, "sum" as "both"), 'rule must be "larger" or "both", got "sum"'],
  [() => drainedShare([1, 2], 0), "multiplier must be more than 0, got 0"],
])("refuses bad input (%#)", (work, message) => {
  expect(work).toThrow(message);
});
