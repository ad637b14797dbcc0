import { describe, expect, it } from "vitest";
import { bedHeads } from "../../../src/core/bed/bed-heads";
import { type BedInput, readBed } from "../../../src/core/bed/read-bed";

const BED: BedInput = {
  grid: [
    [10, null, 12],
    [14, 16, 18],
  ],
  across: [0.5, 2, 3.5],
  along: [1, 7],
  width: 4,
  length: 8,
  spacing: 4,
  rowSpacing: 4,
  radius: 4,
  arrangement: "border",
  arcs: "full",
};

const refused: [string, Partial<BedInput>, string][] = [
  ["a place too few", { across: [0.5, 2] }, "across must have one place for each of the 3 columns, got 2"],
  ["a place too many", { along: [1, 2, 7] }, "along must have one place for each of the 2 rows, got 3"],
  ["places that fall", { across: [0.5, 0.4, 2] }, "across must ascend from place to place, got 0.4 in place 2"],
  ["a place beyond the bed", { along: [1, 9] }, "along must lie within the bed, from 0 to 8 m, got 9 in place 2"],
  ["a throw of 0", { radius: 0 }, "radius must be more than 0 m, got 0"],
  ["a spacing below 0", { spacing: -1 }, "spacing must be more than 0 m, got -1"],
  ["a width of 0", { width: 0 }, "width must be more than 0 m, got 0"],
  ["a length without a number", { length: Number.NaN }, "length must be more than 0 m, got NaN"],
  ["a row spacing of 0", { rowSpacing: 0 }, "row_spacing must be more than 0 m, got 0"],
  ["spacing for too many heads", { spacing: 0.01 }, "spacing must be wider (at most 200 heads), got 0.01"],
  [
    "part circles away from the border",
    { arrangement: "inset", arcs: "matched" },
    'arcs must be "full" where the arrangement is "inset", got "matched"',
  ],
  ["no heads in a list", { heads: [] }, "heads must have at least 1 head, got 0"],
  [
    "a head out of reach",
    { heads: [{ x: 2, y: 13 }] },
    'heads must be within a throw, 4 m, of the bed, got "2, 13" in row 1',
  ],
  [
    "two heads in one place",
    {
      heads: [
        { x: 2, y: 3 },
        { x: 2, y: 3 },
      ],
    },
    'heads must be at different places, got "2, 3" in row 2',
  ],
  ["a head without a place", { heads: [{ x: 2, y: Number.NaN }] }, "heads must be numbers, got NaN in row 1, column 2"],
  [
    "a catch below 0",
    {
      grid: [
        [1, 2, 3],
        [4, -5, 6],
      ],
    },
    "grid must be 0 or more, got -5 in row 2, column 2",
  ],
  [
    "dry cans only",
    {
      grid: [
        [0, 0, 0],
        [0, null, 0],
      ],
    },
    "grid must have a mean above 0, got 0",
  ],
];

describe("readBed", () => {
  it.each(refused)("refuses %s and names the parameter", (_, change, message) => {
    expect(() => readBed({ ...BED, ...change })).toThrow(expect.objectContaining({ name: "InputError", message }));
  });

  it("lists the cans that were read with their places, and skips the others", () => {
    const { cans, mean } = readBed(BED);
    expect(cans.map(({ x, y, caught }) => [x, y, caught])).toEqual([
      [0.5, 1, 10],
      [3.5, 1, 12],
      [0.5, 7, 14],
      [2, 7, 16],
      [3.5, 7, 18],
    ]);
    expect(mean).toBe((10 + 12 + 14 + 16 + 18) / 5);
  });
});

describe("bedHeads", () => {
  const stand = { ...BED, heads: undefined };

  it("has a head more than gaps where a gap may come out 5 % wider", () => {
    expect(bedHeads({ ...stand, width: 4.2 })).toHaveLength(2 * 3);
    expect(bedHeads({ ...stand, width: 4.21 })).toHaveLength(3 * 3);
  });

  it("turns part circles into the bed: the arc times the rate of unmatched ones is a whole circle", () => {
    const faces = bedHeads({ ...stand, arcs: "unmatched" }).map(({ arc, faces, times }) => [arc, faces, arc * times]);
    expect(faces).toEqual([
      [90, 45, 360],
      [90, 135, 360],
      [180, 0, 360],
      [180, 180, 360],
      [90, 315, 360],
      [90, 225, 360],
    ]);
  });

  it("cuts typed heads within 0.05 m of an edge, and no others", () => {
    const typed = bedHeads({ ...stand, arcs: "matched", arrangement: "inset" }, [
      { x: 0.05, y: 4 },
      { x: 0.06, y: 4 },
      { x: 3.96, y: 8 },
    ]);
    expect(typed.map(({ arc, faces, times }) => [arc, faces, times])).toEqual([
      [180, 0, 1],
      [360, 0, 1],
      [90, 225, 1],
    ]);
  });
});
