import { describe, expect, it } from "vitest";
import { canField, canFieldOfList } from "../../../src/core/pattern/can-field";
import { seen } from "../../../src/core/pattern/seen";
import fc from "../../support/properties";

/** A bed 3 m apart across and 5 m apart along: 1 is a dry can, 9 a wet one, x one that was not read. */
function bed(...lines: string[]) {
  const rates = lines.map((line) => [...line].map((can) => (can === "x" ? null : Number(can))));
  return canField(
    rates,
    [...lines[0]!].map((_, column) => 3 * column),
    lines.map((_, row) => 5 * row),
  );
}

describe("the sentence on a coverage map", () => {
  it.each([
    [
      "nothing dry",
      bed("999", "999", "999"),
      "The edges get about as much as the middle. No can gets under three quarters of the mean.",
    ],
    [
      "an edge that gets 96 % of the middle",
      // edges (7 * 9 + 6)/8 = 8.625 of 9; right (9 + 6 + 9)/3 = 8 of 9
      bed("999", "996", "999"),
      "The edges get about as much as the middle. The right half gets 89 % of the left half. 1 of 9 cans gets under three quarters of the mean, on one long edge.",
    ],
    [
      "a dry long edge",
      bed("199", "199", "999"),
      // edges 56/8 = 7 of 9; left (1 + 1 + 9)/3 of 9
      "The edges get 78 % of the middle. The left half gets 41 % of the right half. 2 of 9 cans get under three quarters of the mean, all on one long edge.",
    ],
    [
      "a dry short edge",
      bed("999", "999", "119"),
      "The edges get 78 % of the middle. The bottom half gets 41 % of the top half. 2 of 9 cans get under three quarters of the mean, all on one short edge.",
    ],
    [
      "both long edges",
      bed("191", "999", "191", "999"),
      // edges (4 + 54)/10 = 5.8 of 9
      "The edges get 64 % of the middle. 4 of 12 cans get under three quarters of the mean, all on the long edges.",
    ],
    [
      "all round",
      bed("11999", "99991", "99999", "19999", "91999"),
      // edges (5 + 99)/16 = 6.5 of 9; left 58/10 of right 82/10
      "The edges get 72 % of the middle. The left half gets 71 % of the right half. 5 of 25 cans get under three quarters of the mean, all on the edges.",
    ],
    // edges (4 + 36)/8 = 5 of 9
    [
      "corners",
      bed("191", "999", "191"),
      "The edges get 56 % of the middle. 4 of 9 cans get under three quarters of the mean, all in the corners.",
    ],
    // edges 64/8 = 8 of 9; top 19/3 of 9
    [
      "one corner",
      bed("199", "999", "999"),
      "The edges get 89 % of the middle. The top half gets 70 % of the bottom half. 1 of 9 cans gets under three quarters of the mean, in one corner.",
    ],
    [
      "one place inside",
      bed("9999", "9119", "9999", "9999"),
      // middle (2 + 18)/4 = 5, edges 9; top (36 + 20)/8 = 7 of 9
      "The edges get 180 % of the middle. The top half gets 78 % of the bottom half. 2 of 16 cans get under three quarters of the mean, all in one place inside the bed.",
    ],
    [
      "here and there",
      bed("99999", "91999", "99999", "99919", "19999"),
      // middle 65/9 = 7.22, edges 136/16 = 8.5; halves 74/82, over 0.9
      "The edges get 118 % of the middle. 3 of 25 cans get under three quarters of the mean, 1 of them on the edges.",
    ],
    [
      "cans not read",
      bed("1x9", "199", "9x9"),
      // edges 38/6 = 6.33 of 9; left (1 + 1 + 9)/3 of 9
      "The edges get 70 % of the middle. The left half gets 41 % of the right half. 2 of 7 cans get under three quarters of the mean, all on one long edge.",
    ],
  ])("tells %s", (_, field, sentence) => {
    expect(seen(field).sentence).toBe(sentence);
  });

  it("names an edge by the compass where the bearing of the length is known", () => {
    const edge = (field: ReturnType<typeof bed>, bearing: number) =>
      /all on (.*)\.$/.exec(seen(field, bearing).sentence)?.[1];
    // The length runs south, as on a map with north at the top: the first row is the north edge and the left one the west.
    expect(edge(bed("119", "999", "999"), 180)).toBe("the north edge");
    expect(edge(bed("199", "199", "999"), 180)).toBe("the west edge");
    expect(edge(bed("991", "991", "999"), 180)).toBe("the east edge");
    expect(edge(bed("999", "999", "119"), 225)).toBe("the south-west edge");
    expect(edge(bed("999", "999", "119"), 359)).toBe("the north edge");
  });

  it("is the same for the mirror image", () => {
    const line = fc.array(fc.constantFrom(1, 5, 9), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(line, { minLength: 3, maxLength: 5 }), (rates) => {
        const along = rates.map((_, row) => row * 2);
        const mirrored = rates.map((each) => [...each].reverse());
        const swap: Record<string, string> = { left: "right", right: "left" };
        const ours = seen(canField(rates, [0, 1, 2, 3], along)).sentence;
        const theirs = seen(canField(mirrored, [0, 1, 2, 3], along)).sentence;
        return ours === theirs.replaceAll(/left|right/g, (side) => swap[side]!);
      }),
    );
  });

  it("refuses a bearing off the compass", () => {
    expect(() => seen(bed("19", "99"), 361)).toThrow("bearing must be from 0 to 360 deg, got 361");
  });
});

describe("a field from a list of cans", () => {
  it("is the same as the grid that the list was read from, whatever its order", () => {
    const points = [
      { x: 3, y: 0, rate: 2 },
      { x: 0, y: 5, rate: 3 },
      { x: 0, y: 0, rate: 1 },
    ];
    expect(canFieldOfList(points)).toEqual(
      canField(
        [
          [1, 2],
          [3, null],
        ],
        [0, 3],
        [0, 5],
      ),
    );
  });

  it("refuses two cans at one place and more places than a sheet holds", () => {
    const twice = [
      { x: 0, y: 0, rate: 1 },
      { x: 0, y: 0, rate: 2 },
    ];
    expect(() => canFieldOfList(twice)).toThrow('cans must be at different places, got "0, 0" in line 2');
    const scattered = Array.from({ length: 25 }, (_, index) => ({ x: index, y: index, rate: 1 }));
    expect(() => canFieldOfList(scattered)).toThrow(
      'cans must form a grid of at most 20 across and 30 along, got "25 across and 25 along"',
    );
  });
});
