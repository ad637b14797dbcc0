import { describe, expect, it } from "vitest";
import { canField } from "../../../src/core/pattern/can-field";
import { rateBetween } from "../../../src/core/pattern/smooth";
import fc from "../../support/properties";

const places = fc
  .uniqueArray(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 6 })
  .map((all) => all.sort((one, other) => one - other).map((place) => place / 4));
const coefficient = fc.integer({ min: 0, max: 9 });
const part = fc.double({ min: 0, max: 1, noNaN: true });
const inside = (all: readonly number[], share: number) => all[0]! + share * (all.at(-1)! - all[0]!);

describe("the rate between cans", () => {
  it("is that of a plane where the cans lie on one", () => {
    fc.assert(
      fc.property(places, places, coefficient, coefficient, part, part, (across, along, a, b, u, v) => {
        const plane = (x: number, y: number) => 1 + a * x + b * y;
        const field = canField(
          along.map((y) => across.map((x) => plane(x, y))),
          across,
          along,
        );
        const [x, y] = [inside(across, u), inside(along, v)];
        const rate = rateBetween(field, x, y);
        return rate !== null && Math.abs(rate / plane(x, y) - 1) < 1e-12;
      }),
    );
  });

  it("is the can's own at a can, and nothing beyond the outer cans", () => {
    const field = canField(
      [
        [2, 4],
        [6, 12],
      ],
      [1, 3],
      [0, 5],
    );
    expect([rateBetween(field, 1, 0), rateBetween(field, 3, 5)]).toEqual([2, 12]);
    expect(rateBetween(field, 2, 2.5)).toBe(6); // (2 + 4 + 6 + 12) / 4
    for (const [x, y] of [
      [0.99, 2],
      [3.01, 2],
      [2, -0.01],
      [2, 5.01],
    ] as const)
      expect(rateBetween(field, x, y)).toBeNull();
  });

  it("is not guessed where a can beside it was not read", () => {
    const field = canField(
      [
        [2, null, 4],
        [6, 12, 8],
      ],
      [0, 2, 4],
      [0, 5],
    );
    expect(rateBetween(field, 1, 1)).toBeNull();
    expect(rateBetween(field, 1, 5)).toBe(9); // half-way from 6 to 12, on the lower row
  });

  it("works along one row of cans", () => {
    expect(rateBetween(canField([[2, 6]], [0, 4], [3]), 1, 3)).toBe(3); // 2 + 4/4
  });

  it("refuses a place that is no number", () => {
    const field = canField([[2, 6]], [0, 4], [3]);
    expect(() => rateBetween(field, Number.NaN, 3)).toThrow("x must be a number, got NaN");
  });
});

describe("a field of cans", () => {
  it("refuses what does not fit together, and says where", () => {
    expect(() => canField([[1, 2]], [0, 1, 2], [0])).toThrow(
      "positions across must be one for each of the 2 columns, got 3",
    );
    expect(() => canField([[1, 2]], [1, 1], [0])).toThrow(
      "positions across must ascend from place to place, got 1 in place 2",
    );
    expect(() => canField([[1, -2]], [1, 2], [0])).toThrow("readings must be 0 or more, got -2 in row 1, column 2");
    expect(() => canField([[0, null]], [1, 2], [0])).toThrow("readings must have a mean above 0, got 0");
    expect(() => canField([[1]], [0], [0, 1])).toThrow("positions along must be one for each of the 1 rows, got 2");
  });
});
