import { describe, expect, it } from "vitest";
import { cellsOfBed } from "../../../src/core/layout/cells";
import { caution, coverage } from "../../../src/core/layout/coverage";
import { gapCount } from "../../../src/core/layout/gaps";
import { headCounts, heads, headTotal, parseArcs, parseArrangement } from "../../../src/core/layout/heads";
import { namedProfile } from "../../../src/core/layout/profile";
import { planOf } from "./plans";

const places = (changes: Parameters<typeof planOf>[0]) => heads(planOf(changes), 400).map(({ x, y }) => [x, y]);

describe("the gaps between heads", () => {
  it("are at most 5 % wider than asked for", () => {
    // 10.5 / (1.05 5) = 2 exactly; a little more wants a third gap
    expect(gapCount(10.5, 5)).toBe(2);
    expect(gapCount(10.51, 5)).toBe(3);
    expect(gapCount(0.1, 5)).toBe(1);
  });
});

describe("the heads of a bed", () => {
  it("are on every point of the grid on the border, the edges included", () => {
    expect(places({ width: 4, length: 8 })).toEqual([
      [0, 0],
      [4, 0],
      [0, 4],
      [4, 4],
      [0, 8],
      [4, 8],
    ]);
  });

  it("are half a gap inside when inset, and in one line at half the width along the centre", () => {
    expect(places({ width: 8, length: 4, arrangement: "inset" })).toEqual([
      [2, 2],
      [6, 2],
    ]);
    expect(places({ width: 8, length: 8, arrangement: "centre" })).toEqual([
      [4, 2],
      [4, 6],
    ]);
  });

  it("shift every second row by half a gap when staggered, with one head fewer", () => {
    const staggered = planOf({ width: 8, length: 8, arrangement: "staggered" });
    const found = heads(staggered, 400).map(({ x, y }) => [x, y]);
    expect(found).toEqual([
      [0, 0],
      [4, 0],
      [8, 0],
      [2, 4],
      [6, 4],
      [0, 8],
      [4, 8],
      [8, 8],
    ]);
    expect(headTotal(staggered)).toBe(8);
    expect(headTotal(planOf({ width: 8, length: 4, arrangement: "staggered" }))).toBe(5);
  });

  it("throw part circles when staggered where they are on an edge, full ones in a shifted row between", () => {
    // 4 corners a quarter, 2 heads between corners a half, 2 of the shifted row the whole of 400 L/h
    const staggered = planOf({ width: 8, length: 8, arrangement: "staggered", arcs: "matched" });
    expect(heads(staggered, 400).map(({ flow }) => flow)).toEqual([100, 200, 100, 400, 400, 100, 200, 100]);
    // a shifted last row: both heads on the edge, none in a corner
    const short = planOf({ width: 8, length: 4, arrangement: "staggered", arcs: "matched" });
    expect(heads(short, 400).map(({ flow }) => flow)).toEqual([100, 200, 100, 200, 200]);
  });

  it("follow the row spacing along the length", () => {
    expect(headCounts(planOf({ width: 8, length: 12, spacing: 4, rowSpacing: 6 }))).toEqual([3, 3]);
  });

  it("throw half circles on an edge and quarters in a corner, matched with half and a quarter of the flow", () => {
    const flows = (arcs: "matched" | "unmatched") =>
      heads(planOf({ width: 8, length: 8, arcs }), 400).map(({ flow, times }) => [flow, times]);
    const [corner, edge, inner] = [
      [100, 1],
      [200, 1],
      [400, 1],
    ] as const;
    expect(flows("matched")).toEqual([corner, edge, corner, edge, inner, edge, corner, edge, corner]);
    expect(flows("unmatched").slice(0, 5)).toEqual([
      [400, 4],
      [400, 2],
      [400, 4],
      [400, 2],
      [400, 1],
    ]);
  });
});

describe("a layout is refused before any work", () => {
  it.each([
    [{ width: 0 }, "width must be more than 0 m, got 0"],
    [{ length: -3 }, "length must be more than 0 m, got -3"],
    [{ spacing: Number.NaN }, "spacing must be more than 0 m, got NaN"],
    [{ rowSpacing: 0 }, "row_spacing must be more than 0 m, got 0"],
    [{ cell: 0 }, "cell must be more than 0 m, got 0"],
    [{ cell: 0.01 }, "cell must be larger for a bed of this size (at most 1,000,000 cells), got 0.01"],
    [{ cell: 5 }, "cell must be at most the throw, 4 m, got 5"],
    [{ width: 1, length: 1, cell: 0.002 }, "cell must be at least a thousandth of the throw, 0.004 m, got 0.002"],
    [
      { spacing: 0.05, rowSpacing: 0.05 },
      "cell must be larger, the spacing wider or the throw shorter (at most 1e8 wetted cells over all heads), got 0.25",
    ],
    [{ arrangement: "inset", arcs: "matched" }, 'arcs must be "full" where the arrangement is "inset", got "matched"'],
  ] as const)("%o", (changes, message) => {
    const started = performance.now();
    expect(() => coverage(planOf(changes))).toThrow(expect.objectContaining({ message: message }));
    expect(performance.now() - started).toBeLessThan(50);
  });

  it("or its words are not known", () => {
    expect(() => parseArrangement("middle")).toThrow(
      expect.objectContaining({
        message: 'arrangement must be "border", "inset", "centre" or "staggered", got "middle"',
      }),
    );
    expect(() => parseArcs(null)).toThrow(
      expect.objectContaining({ message: 'arcs must be "full", "matched" or "unmatched", got a blank cell' }),
    );
  });
});

it("a throw shorter than half a gap is allowed, with a caution", () => {
  const short = planOf({ profile: namedProfile("triangular", 1.5, 400) });
  expect(coverage(short).heads.length).toBe(36);
  expect(caution(short)).toBe("the throw, 1.5 m, is shorter than half the head spacing, 2 m");
  expect(caution(planOf())).toBe("");
});

it("a bed has cells of equal size, the nearest whole number along each side and at least one", () => {
  expect(cellsOfBed(2, 3, 0.24)).toEqual({ rows: 13, columns: 8, cellWidth: 0.25, cellLength: 3 / 13 });
  expect(cellsOfBed(0.1, 0.1, 0.25)).toEqual({ rows: 1, columns: 1, cellWidth: 0.1, cellLength: 0.1 });
});
