import { describe, expect, it } from "vitest";
import { readBed } from "../../src/core/bed/read-bed";
import { insideWords, numberList } from "../../src/workbook/bed/outer-heads";
import { weightWords } from "../../src/workbook/bed/weight-words";

const BED = {
  grid: [
    [7, 18, 8],
    [18, 30, 17],
    [8, 17, 8],
  ],
  across: [1, 6, 11],
  along: [1, 8, 15],
  width: 12,
  length: 16,
  spacing: 4,
  rowSpacing: 4,
  radius: 5,
  arcs: "full",
} as const;

describe("heads inside the edge", () => {
  it("are named with how far inside they are, as arranged", () => {
    // 3 across and 4 along, the first at half of 4 m; only the middle ones of the inner rows, 5 and 8, are not outer
    expect(insideWords(readBed({ ...BED, arrangement: "inset" }))).toBe("by 2 m: heads 1 to 4, 6, 7, 9 to 12");
  });

  it("are those typed, each side by its own distance; a side whose heads are on the edge has none", () => {
    const heads = [
      { x: 0, y: 1 },
      { x: 6, y: 1 },
      { x: 11, y: 1 },
      { x: 0, y: 14.5 },
      { x: 6, y: 8 },
      { x: 11, y: 14.5 },
    ];
    // left 0 m; right 12 - 11 = 1 m: heads 3, 6; top 1 m: 1, 2, 3; bottom 16 - 14.5 = 1.5 m: 4, 6
    expect(insideWords(readBed({ ...BED, arrangement: "border", heads }))).toBe("by 1 to 1.5 m: heads 1 to 4, 6");
  });
});

it.each([
  [[1, 2], "1, 2"],
  [[3, 1, 2], "1 to 3"],
  [[1, 3, 5, 6, 7, 9], "1, 3, 5 to 7, 9"],
])("numbers %j are listed as %s", (numbers, words) => {
  expect(numberList(numbers)).toBe(words);
});

it("no cause is said to be surer than causes were found to be on simulated beds", () => {
  expect([60, 95, 95.1, 100].map(weightWords)).toEqual(["60 %", "95 %", "over 95 %", "over 95 %"]);
});
