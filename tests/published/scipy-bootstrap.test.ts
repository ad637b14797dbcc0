import { afterAll, describe, expect, it } from "vitest";
import { bcaEnds, bootstrap } from "../../src/core/uniformity/bootstrap";
import { countedChristiansen, countedDistribution, countedMean } from "../../src/core/uniformity/counted";
import { published } from "../support/case-files";

const INDICES = {
  MEAN: countedMean,
  "CU.CHRISTIANSEN": countedChristiansen,
  "DU.QUARTER": countedDistribution,
};

interface Reference {
  bed: string;
  readings: number[];
  index: keyof typeof INDICES;
  low: number;
  high: number;
  z0: number;
  acceleration: number;
  /** Standard deviations over 200 runs of scipy with 2,000 resamples. */
  standardErrors: { low: number; high: number; z0: number };
}

const { level, beds } = published("scipy-bootstrap.json") as { level: number; beds: Reference[] };

const misses: number[] = [];

afterAll(() => {
  const largest = Math.max(...misses).toFixed(2);
  console.table([{ source: "scipy-bootstrap", cases: misses.length, "largest miss, in standard errors": largest }]);
});

describe.each(beds)("$index of $bed against scipy.stats.bootstrap", (reference) => {
  const ours = bootstrap(Float64Array.from(reference.readings).sort(), INDICES[reference.index]);
  const errors = (value: number, name: "low" | "high" | "z0") => {
    const found = Math.abs(value - reference[name]) / reference.standardErrors[name];
    misses.push(found);
    return found;
  };

  it("has both ends within four standard errors", () => {
    const [low, high] = bcaEnds(ours, level);
    expect(errors(low, "low")).toBeLessThan(4);
    expect(errors(high, "high")).toBeLessThan(4);
  });

  it("has z0 within four standard errors", () => {
    expect(errors(ours.bias, "z0")).toBeLessThan(4);
  });

  it("has the same acceleration, which no random number touches", () => {
    expect(ours.acceleration).toBeCloseTo(reference.acceleration, 10);
  });
});
