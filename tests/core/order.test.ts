import { describe, expect, it } from "vitest";
import { kthSmallest, lowestMean } from "../../src/core/order";
import fc from "../support/properties";

/** Fewer and more than those that are split without digits. */
const SIZES = [5000, 20_000];
const [FEWER, MANY] = SIZES as [number, number];

function repeated(values: number[], count = MANY): Float64Array {
  return Float64Array.from({ length: count }, (_, i) => values[(i * 7919) % values.length]!);
}

function expectAllRanks(values: Float64Array): void {
  const sorted = values.slice().sort();
  const n = values.length;
  for (const k of [1, 2, n / 4, n / 2, n - 1, n]) expect(kthSmallest(values, k)).toBe(sorted[k - 1]!);
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

  it.each(SIZES)(
    "agrees with a sort for %i numbers: different, in few values, over many powers, close, in order",
    (n) => {
      const drawn = fc.sample(fc.double({ min: 0, max: 1e9, noNaN: true }), { numRuns: n, seed: 1 });
      expectAllRanks(Float64Array.from(drawn));
      expectAllRanks(Float64Array.from(drawn).sort());
      expectAllRanks(Float64Array.from(drawn).sort().reverse());
      expectAllRanks(repeated([3, 1, 2, 2.5], n));
      expectAllRanks(
        repeated(
          Array.from({ length: 300 }, (_, i) => 10 ** (i / 3 - 91)),
          n,
        ),
      );
      expectAllRanks(Float64Array.from({ length: n }, (_, i) => 7 + ((i * 7919) % n) * 2 ** -50));
      expectAllRanks(repeated([5], n));
      expectAllRanks(repeated([0, 1e9], n));
    },
  );

  it("takes -0 for 0", () => {
    for (const n of SIZES) {
      expect(kthSmallest(repeated([-0, 0, 4, 9], n), n / 2) + 0).toBe(0);
      expect(kthSmallest(repeated([-0, 0, 4, 9], n), n / 2 + 1)).toBe(4);
    }
  });
});

describe("lowestMean", () => {
  it("is the mean of the k lowest", () => {
    expect(lowestMean([9, 1, 5, 3], 2)).toBe(2);
    expect(lowestMean(repeated([1, 2, 3, 4], FEWER), 2500)).toBe(1.5);
    expect(lowestMean(repeated([1, 2, 3, 4]), 10_000)).toBe(1.5);
  });

  it("counts a part of the last one", () => {
    // 1 + 3 + half of 5, over 2.5
    expect(lowestMean([9, 1, 5, 3], 2.5)).toBeCloseTo(6.5 / 2.5, 12);
    expect(lowestMean(repeated([1, 2, 3, 4], FEWER), 1250.5)).toBeCloseTo((1250 + 0.5 * 2) / 1250.5, 12);
  });
});
