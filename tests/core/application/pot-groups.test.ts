import { describe, expect, it } from "vitest";
import { potGroups } from "../../../src/core/application/pot-groups";
import { reachedShare } from "../../../src/core/application/reached-share";
import { InputError } from "../../../src/core/errors";
import { drainedShare } from "../../../src/core/uniformity/drained-share";
import fc from "../../support/properties";

const CANS = [4, 8, 12];

describe("the water that reaches the pots", () => {
  it("is 79 % where round pots touch on a square grid, and all of it under square ones", () => {
    // a circle over its square: pi / 4
    expect(reachedShare((Math.PI * 200 ** 2) / 4, 200, 1)).toBeCloseTo(Math.PI / 4, 12);
    expect(reachedShare(200 ** 2, 200, 1)).toBe(1);
  });

  it("grows with the leaves that lead water in, up to all of it", () => {
    // 100 mm square pots at 200 mm take a quarter; with a capture factor of 2 half of it, with 4 and more all
    expect([1, 2, 4, 9].map((capture) => reachedShare(100 ** 2, 200, capture))).toEqual([0.25, 0.5, 1, 1]);
  });

  it("needs an area, a spacing and a factor", () => {
    expect(() => reachedShare(0, 200, 1)).toThrow("area must be more than 0 mm², got 0");
    expect(() => reachedShare(1, -1, 1)).toThrow("spacing must be more than 0 mm, got -1");
    expect(() => reachedShare(1, 1, 0)).toThrow("capture must be more than 0, got 0");
  });
});

describe("several pot sizes in a block", () => {
  it("run as the neediest needs, and the others get and drain more", () => {
    // cans 4, 8, 12 (mean 8) at K 1.25. Group of 10 mm: falls 6.25, 12.5, 18.75; 2.5 + 8.75 of 37.5 mm drain.
    // Group of 5 mm, which gets 2.5 times its depth: 1.25 + 7.5 + 13.75 of 37.5 mm.
    const { depth, groups, drained, reached } = potGroups(
      [
        { depth: 5, area: 40 },
        { depth: 10, area: 60 },
      ],
      CANS,
      1.25,
    );
    expect(depth).toBe(10);
    expect(groups.map(({ share }) => share)).toEqual([0.4, 0.6]);
    expect(groups.map(({ multiplier }) => multiplier)).toEqual([2.5, 1.25]);
    expect(groups[0]!.drained).toBeCloseTo(22.5 / 37.5, 12);
    expect(groups[1]!.drained).toBeCloseTo(11.25 / 37.5, 12);
    expect(drained).toBeCloseTo(0.4 * 0.6 + 0.6 * 0.3, 12);
    expect(reached).toBe(1);
  });

  it("drain by the water that reaches each of them", () => {
    // half the area each; 0.2 of the water of the one and 0.6 of the other reaches pots: 0.1 and 0.3 of all of it
    const groups = [
      { depth: 5, area: 1, reached: 0.2 },
      { depth: 10, area: 1, reached: 0.6 },
    ];
    const { drained, reached } = potGroups(groups, CANS, 1.25);
    expect(reached).toBeCloseTo(0.4, 12);
    expect(drained).toBeCloseTo((0.1 * 0.6 + 0.3 * 0.3) / 0.4, 12);
  });

  it("of one group are a block of one size", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        fc.double({ min: 0.1, max: 90, noNaN: true }),
        (k, depth) => {
          const one = potGroups([{ depth, area: 7 }], CANS, k, [1, 2, 3]);
          expect(one.depth).toBe(depth);
          expect(one.drained).toBeCloseTo(drainedShare(CANS, k, [1, 2, 3]), 12);
        },
      ),
    );
  });

  it("need a group, and depths and areas above 0", () => {
    const message = (groups: Parameters<typeof potGroups>[0]) => {
      try {
        potGroups(groups, CANS, 1.25);
      } catch (error) {
        return error instanceof InputError ? error.message : "";
      }
      return "";
    };
    expect(message([])).toBe("groups must have at least 1 group, got 0");
    expect(message([{ depth: 0, area: 1 }])).toBe("depth must be more than 0 mm, got 0");
    expect(message([{ depth: 1, area: 0 }])).toBe("area must be more than 0, got 0");
    expect(message([{ depth: 1, area: 1, reached: 0 }])).toBe("reached must be more than 0, got 0");
  });
});
