import { describe, expect, it } from "vitest";
import { canAreas } from "../../../src/core/pattern/can-areas";
import { strips } from "../../../src/core/pattern/strips";
import fc from "../../support/properties";

describe("strips of ground", () => {
  it("fill the whole side, whatever the places", () => {
    const places = fc.uniqueArray(fc.integer({ min: 0, max: 400 }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(places, (some) => {
        const sorted = some.map((place) => place / 10).sort((one, other) => one - other);
        const found = strips(sorted, 40);
        return found.every(({ from }, i) => from === (i === 0 ? 0 : found[i - 1]!.to)) && found.at(-1)!.to === 40;
      }),
    );
  });

  it("are refused beyond the bed and where places do not ascend", () => {
    expect(() => strips([1, 7], 6)).toThrow("positions must lie within the bed, from 0 to 6 m, got 7 in place 2");
    expect(() => strips([3, 3], 6)).toThrow("positions must ascend from place to place, got 3 in place 2");
    expect(() => strips([1], 0)).toThrow("size must be more than 0 m, got 0");
  });
});

describe("areas of cans", () => {
  it("add up to the bed", () => {
    // columns 0 to 1.5 and 1.5 to 4; rows 0 to 2, 2 to 5 and 5 to 10
    expect(canAreas([0.5, 2.5], [1, 3, 7], 4, 10)).toEqual([
      [3, 5],
      [4.5, 7.5],
      [7.5, 12.5],
    ]);
  });
});
