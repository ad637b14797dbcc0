import { describe, expect, it } from "vitest";
import { bedHeads } from "../../../src/core/bed/bed-heads";
import { cholesky, lowerSolved } from "../../../src/core/bed/cholesky";
import { nonNegative } from "../../../src/core/bed/least-squares";
import { overlapColumns } from "../../../src/core/bed/overlap-columns";
import { ALL_SHAPES, shapeAt, shapeOf } from "../../../src/core/bed/shapes";
import { cellsOfBed } from "../../../src/core/layout/cells";
import { heads } from "../../../src/core/layout/heads";
import { overlap } from "../../../src/core/layout/overlap";
import { namedProfile } from "../../../src/core/layout/profile";
import fc from "../../support/properties";

const numbers = (length: number) =>
  fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: length, maxLength: length });

describe("nonNegative", () => {
  it("keeps the conditions of Karush, Kuhn and Tucker, which only the least sum of squares keeps", () => {
    fc.assert(
      fc.property(fc.array(numbers(8), { minLength: 4, maxLength: 4 }), numbers(8), (columns, y) => {
        const product = (one: number[], other: number[]) => one.reduce((sum, value, i) => sum + value * other[i]!, 0);
        fc.pre(columns.every((column) => product(column, column) > 1));
        const gram = Float64Array.from(columns.flatMap((one) => columns.map((other) => product(one, other))));
        const target = Float64Array.from(columns, (column) => product(column, y));
        const { amounts, rest } = nonNegative(gram, target, product(y, y));
        const left = y.map((value, i) => value - columns.reduce((sum, column, s) => sum + amounts[s]! * column[i]!, 0));
        columns.forEach((column, s) => {
          expect(amounts[s]).toBeGreaterThanOrEqual(0);
          expect(product(column, left)).toBeLessThan(1e-4);
          expect(Math.abs(amounts[s]! * product(column, left))).toBeLessThan(1e-4);
        });
        expect(rest).toBeCloseTo(product(left, left), 6);
      }),
    );
  });
});

describe("cholesky", () => {
  it("gives the triangle whose square is the matrix", () => {
    // by hand: [[2, 0], [1, 3]] times its transpose is [[4, 2], [2, 10]]
    expect(cholesky(Float64Array.of(4, 2, 2, 10), 2)).toEqual(Float64Array.of(2, 0, 1, 3));
    // by hand: 2 x = 4, x + 3 y = 8
    expect(lowerSolved(Float64Array.of(2, 0, 1, 3), Float64Array.of(4, 8))).toEqual(Float64Array.of(2, 2));
  });

  it("takes a pivot that vanishes as a share of its diagonal, where it is given one, and else refuses the matrix", () => {
    // by hand: [[1, 1], [1, 1]] leaves 1 - 1 = 0 for the second pivot; 0.01 of its diagonal has the root 0.1
    expect(cholesky(Float64Array.of(1, 1, 1, 1), 2, 0.01)).toEqual(Float64Array.of(1, 0, 1, 0.1));
    expect(() => cholesky(Float64Array.of(1, 1, 1, 1), 2)).toThrow("matrix must be positive definite, got 0 in row 2");
  });
});

describe("shapes", () => {
  it("throw a volume of 1 over the circle", () => {
    for (const shape of ALL_SHAPES) {
      let volume = 0;
      for (let i = 0; i < 1000; i += 1) volume += ((2 * Math.PI * (i + 0.5)) / 1e6) * shapeAt(shape, (i + 0.5) / 1000);
      expect(volume).toBeCloseTo(1, 3);
    }
  });
});

describe("overlapColumns", () => {
  it.each(["full", "matched", "unmatched"] as const)("agrees with the overlap of a layout, arcs %s", (arcs) => {
    const stand = { width: 6, length: 8, spacing: 3, rowSpacing: 4, arrangement: "border" as const, arcs };
    const cells = cellsOfBed(6, 8, 0.5);
    const expected = overlap(cells, heads(stand, 300), namedProfile("triangular", 3.5, 300)).rates;
    const placed = bedHeads(stand);
    const places = Array.from(expected.values, (_, i) => ({
      x: ((i % expected.columns) + 0.5) * cells.cellWidth,
      y: (Math.floor(i / expected.columns) + 0.5) * cells.cellLength,
    }));
    const state = { outputs: placed.map(() => 300), throws: placed.map(() => 3.5) };
    const [rates] = overlapColumns(placed, places, state, [shapeOf((u) => 1 - u)]);
    rates!.forEach((rate, i) => {
      expect(Math.abs(rate / expected.values[i]! - 1)).toBeLessThan(1e-3);
    });
  });

  it("keeps the water of a head that wind carries, whatever the drift", () => {
    const head = { x: 0, y: 0, number: 1, arc: 360, faces: 0, times: 1 };
    const side = Array.from({ length: 120 }, (_, i) => (i - 59.5) / 30);
    const places = side.flatMap((y) => side.map((x) => ({ x, y })));
    for (const drift of [0, 1, 2]) {
      const wind = { x: 0.2, y: 0.1, drift };
      const state = { outputs: [1], throws: [1], wind };
      const [rates] = overlapColumns([head], places, state, [shapeOf((u) => 1 - u * u)]);
      expect(rates!.reduce((sum, rate) => sum + rate / 900, 0)).toBeCloseTo(1, 1);
    }
  });
});
