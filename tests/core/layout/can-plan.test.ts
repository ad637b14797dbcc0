import { describe, expect, it } from "vitest";
import { canPlaces } from "../../../src/core/layout/cans/places";
import { type CanBed, canPlan } from "../../../src/core/layout/cans/plan";
import { meetsHeads } from "../../../src/core/layout/cans/spacing";
import fc from "../../support/properties";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const headSpacing = fc.oneof(fc.constant(null), between(1, 15));

/** Beds on which cans can be at most 3 m apart and clear of any head spacing. */
const beds: fc.Arbitrary<CanBed> = fc.record({
  width: between(2, 30),
  length: between(2, 45),
  headSpacing,
  headRowSpacing: headSpacing,
  edge: between(0.3, 0.6),
});
const larger: fc.Arbitrary<CanBed> = fc.record({
  width: between(20, 200),
  length: between(20, 300),
  headSpacing,
  headRowSpacing: headSpacing,
});

/** Near the whole, the half or a multiple of the head spacing, written out apart from the code. */
function near(spacing: number, heads: number | null): boolean {
  if (heads === null) return false;
  const multiples = Array.from({ length: 100 }, (_, i) => i + 2);
  const most = 0.1 * heads - 1e-9;
  return (
    (spacing > 0.9 * heads + 1e-9 && spacing < 1.1 * heads - 1e-9) ||
    (spacing > 0.45 * heads + 1e-9 && spacing < 0.55 * heads - 1e-9) ||
    multiples.some((k) => Math.abs(spacing - k * heads) < most)
  );
}

describe("the plan of the cans", () => {
  it("has at least 24 cans, near every edge and corner, in a grid that the Cans sheet holds", () => {
    fc.assert(
      fc.property(fc.oneof(beds, larger), (bed) => {
        const { across, along, count } = canPlan(bed);
        const edge = bed.edge ?? 0.3;
        expect(count).toBe(across.length * along.length);
        expect(count).toBeGreaterThanOrEqual(24);
        expect(across.length).toBeLessThanOrEqual(20);
        expect(along.length).toBeLessThanOrEqual(30);
        expect(Math.min(across.length, along.length)).toBeGreaterThanOrEqual(3);
        expect([across[0], along[0]]).toEqual([edge, edge]);
        expect(across.at(-1)).toBeCloseTo(bed.width - edge, 9);
        expect(along.at(-1)).toBeCloseTo(bed.length - edge, 9);
      }),
    );
  });

  it("keeps cans at most 3 m apart and off the spacing of the heads, without a warning", () => {
    fc.assert(
      fc.property(beds, (bed) => {
        const { spacing, rowSpacing, warnings } = canPlan(bed);
        expect(Math.max(spacing, rowSpacing)).toBeLessThanOrEqual(3 + 1e-9);
        expect(near(spacing, bed.headSpacing)).toBe(false);
        expect(near(rowSpacing, bed.headRowSpacing)).toBe(false);
        return warnings.every((warning) => warning.includes("hardly more than a can"));
      }),
      { numRuns: 500 },
    );
  });

  it("still keeps off the spacing of the heads on a larger bed, and says how far apart the cans are, or how near", () => {
    fc.assert(
      fc.property(larger, (bed) => {
        const { spacing, rowSpacing, warnings } = canPlan(bed);
        expect(near(spacing, bed.headSpacing)).toBe(false);
        expect(near(rowSpacing, bed.headRowSpacing)).toBe(false);
        expect(warnings.length).toBe([spacing, rowSpacing].filter((gap) => gap > 3 + 1e-9).length);
      }),
    );
    expect(canPlan({ width: 0.9, length: 9, headSpacing: null, headRowSpacing: null }).warnings).toEqual([
      "cans are 0.15 m apart across the width, hardly more than a can: leave out the lines between",
    ]);
    // 79.4 m in 19 gaps
    expect(canPlan({ width: 80, length: 20, headSpacing: null, headRowSpacing: null }).warnings).toEqual([
      "cans are 4.18 m apart across the width, more than 3 m: measure the bed in parts for a closer look",
    ]);
  });

  it("takes as few cans as that needs, by trying every grid", () => {
    fc.assert(
      fc.property(beds, (bed) => {
        const edge = bed.edge as number;
        const fits = (cans: number, size: number, heads: number | null) => {
          const spacing = (size - 2 * edge) / (cans - 1);
          return spacing <= 3 && !near(spacing, heads);
        };
        let fewest = Infinity;
        for (let a = 3; a <= 20; a += 1) {
          for (let b = 3; b <= 30; b += 1) {
            const both = fits(a, bed.width, bed.headSpacing) && fits(b, bed.length, bed.headRowSpacing);
            if (both && a * b >= 24) fewest = Math.min(fewest, a * b);
          }
        }
        return canPlan(bed).count <= fewest;
      }),
    );
  });

  it("of 8.6 x 8.6 m with heads every 5 m is 5 x 5 cans every 2 m", () => {
    // 8 m between the outer cans: 2 m; of 24 or more that is the fewest that is square, since 4 x 6 are 2.67 x 1.6 m
    const { across, spacing, rowSpacing } = canPlan({ width: 8.6, length: 8.6, headSpacing: 5, headRowSpacing: 5 });
    expect([spacing, rowSpacing]).toEqual([expect.closeTo(2, 9), expect.closeTo(2, 9)]);
    expect(across).toHaveLength(5);
  });

  it.each([
    [{ width: 0 }, "width must be more than 0 m, got 0"],
    [{ length: Number.NaN }, "length must be more than 0 m, got NaN"],
    [{ width: 0.5 }, "edge must be less than half the width, 0.25 m, got 0.3"],
    [{ edge: 0 }, "edge must be more than 0 m, got 0"],
    [{ headSpacing: 0 }, "head_spacing must be more than 0 m, got 0"],
    [{ headRowSpacing: -4 }, "head_row_spacing must be more than 0 m, got -4"],
  ])("%o is refused", (changes, message) => {
    const bed = { width: 8, length: 12, headSpacing: 4, headRowSpacing: 4, ...changes };
    expect(() => canPlan(bed)).toThrow(expect.objectContaining({ message }));
  });
});

describe("the cans of a plan", () => {
  it("are numbered as one walks: across the bed and back", () => {
    const places = canPlaces({ across: [0.3, 2, 3.7], along: [0.3, 2.3] });
    expect(places.map(({ number, x, y }) => [number, x, y])).toEqual([
      [1, 0.3, 0.3],
      [2, 2, 0.3],
      [3, 3.7, 0.3],
      [4, 3.7, 2.3],
      [5, 2, 2.3],
      [6, 0.3, 2.3],
    ]);
    expect(places.map(({ column, row }) => [column, row])).toEqual([
      [0, 0],
      [1, 0],
      [2, 0],
      [2, 1],
      [1, 1],
      [0, 1],
    ]);
  });
});

it("cans meet the heads within 10 % of a half, the whole or a multiple of their spacing", () => {
  const met = [0.44, 0.46, 0.5, 0.54, 0.56, 0.8, 0.91, 1, 1.09, 1.2, 1.5, 1.95, 3.05].map((ratio) =>
    meetsHeads(4 * ratio, 4),
  );
  expect(met).toEqual([false, true, true, true, false, false, true, true, true, false, false, true, true]);
});
