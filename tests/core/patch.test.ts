import { describe, expect, it } from "vitest";
import type { Grid } from "../../src/core/grid";
import { patchSchedulingCoefficient } from "../../src/core/uniformity/patch";
import fc from "../support/properties";

function grid(rows: number[][]): Grid {
  return { rows: rows.length, columns: rows[0]!.length, values: Float64Array.from(rows.flat()) };
}

/** Every rectangle that is large enough and has no smaller one of its own proportion, one after another. */
function everyPatch(rows: number[][], share: number): number {
  const columns = rows[0]!.length;
  const cells = share * rows.length * columns - 1e-9;
  let lowest = Infinity;
  for (let h = 1; h <= rows.length; h += 1) {
    for (let w = 1; w <= columns; w += 1) {
      if (w * h < cells || (w - 1) * h >= cells || w * (h - 1) >= cells) continue;
      for (let top = 0; top + h <= rows.length; top += 1) {
        for (let left = 0; left + w <= columns; left += 1) {
          const patch = rows.slice(top, top + h).flatMap((row) => row.slice(left, left + w));
          lowest = Math.min(lowest, patch.reduce((sum, x) => sum + x, 0) / patch.length);
        }
      }
    }
  }
  const all = rows.flat();
  return all.reduce((sum, x) => sum + x, 0) / all.length / lowest;
}

const bed = fc
  .record({ rows: fc.integer({ min: 2, max: 7 }), columns: fc.integer({ min: 2, max: 7 }) })
  .chain(({ rows, columns }) =>
    fc.array(fc.array(fc.double({ min: 0.1, max: 100, noNaN: true }), { minLength: columns, maxLength: columns }), {
      minLength: rows,
      maxLength: rows,
    }),
  );
const share = fc.double({ min: 0.01, max: 0.5, noNaN: true });

describe("the driest patch", () => {
  it("is found as by trying every rectangle", () => {
    fc.assert(
      fc.property(bed, share, (rows, part) => {
        expect(patchSchedulingCoefficient(grid(rows), part)).toBeCloseTo(everyPatch(rows, part), 9);
      }),
    );
  });

  it("is the same when the bed is turned or mirrored", () => {
    fc.assert(
      fc.property(bed, share, (rows, part) => {
        const ours = patchSchedulingCoefficient(grid(rows), part);
        const turned = rows[0]!.map((_, column) => rows.map((row) => row[column]!));
        expect(patchSchedulingCoefficient(grid(turned), part)).toBeCloseTo(ours, 9);
        expect(patchSchedulingCoefficient(grid(rows.map((row) => [...row].reverse())), part)).toBeCloseTo(ours, 9);
      }),
    );
  });

  it("can be a long thin edge that no square shows", () => {
    // Mean (4 x 2 + 12 x 10) / 16 = 8; the left column alone has 2; every 2 x 2 square has 6 or more
    const rows = Array.from({ length: 4 }, () => [2, 10, 10, 10]);
    expect(patchSchedulingCoefficient(grid(rows), 0.25)).toBe(4);
  });

  it("is refused when it is dry, even beside large readings", () => {
    const rows = [
      [0, 0, 0.1],
      [0.3, 0.7, 1e9],
    ];
    expect(() => patchSchedulingCoefficient(grid(rows), 0.3)).toThrow("readings must have no dry patch, got 0");
  });

  it("is refused in a bed that is too small or not full, and for a share out of range", () => {
    const small = grid([[1, 2, 3]]);
    expect(() => patchSchedulingCoefficient(small, 0.5)).toThrow("readings must have at least 4 cans, got 3");
    expect(() => patchSchedulingCoefficient({ ...small, rows: 2 }, 0.5)).toThrow(
      "grid must be full with 6 readings, got 3",
    );
    for (const part of [0, -1, 0.6, Number.NaN]) {
      expect(() => patchSchedulingCoefficient(small, part)).toThrow(
        `share must be more than 0 and at most 0.5, got ${part}`,
      );
    }
  });
});
