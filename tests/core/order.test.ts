import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kthSmallest, lowestMean } from "../../src/core/order";

/** More than the few that are simply sorted. */
const MANY = 5000;

function repeated(values: number[]): Float64Array {
  return Float64Array.from({ length: MANY }, (_, i) => values[(i * 7919) % values.length]!);
}

function expectAllRanks(values: Float64Array): void {
  const sorted = values.slice().sort();
  for (const k of [1, 2, 1250, 2500, 4999, MANY]) expect(kthSmallest(values, k)).toBe(sorted[k - 1]!);
}

describe("kthSmallest", () => {
  it("agrees with a sort for any few numbers", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1e9, noNaN: true }), { minLength: 1 }), (values) => {
        const sorted = Float64Array.from(values).sort();
        sorted.forEach((value, i) => void expect(kthSmallest(values, i + 1) + 0).toBe(value + 0));
      }),
    );
  });

  it("agrees with a sort for many numbers: all different, in few values, over many powers, close together", () => {
    const drawn = fc.sample(fc.double({ min: 0, max: 1e9, noNaN: true }), { numRuns: MANY, seed: 1 });
    expectAllRanks(Float64Array.from(drawn));
    expectAllRanks(repeated([3, 1, 2, 2.5]));
    expectAllRanks(repeated(Array.from({ length: 300 }, (_, i) => 10 ** (i / 3 - 91))));
    expectAllRanks(Float64Array.from({ length: MANY }, (_, i) => 7 + ((i * 7919) % MANY) * 2 ** -50));
    expectAllRanks(repeated([5]));
    expectAllRanks(repeated([0, 1e9]));
  });

  it("takes -0 for 0", () => {
    expect(kthSmallest(repeated([-0, 0, 4, 9]), 2500) + 0).toBe(0);
    expect(kthSmallest(repeated([-0, 0, 4, 9]), 2501)).toBe(4);
  });
});

describe("lowestMean", () => {
  it("is the mean of the k lowest", () => {
    expect(lowestMean([9, 1, 5, 3], 2)).toBe(2);
    expect(lowestMean(repeated([1, 2, 3, 4]), 2500)).toBe(1.5);
  });
});
