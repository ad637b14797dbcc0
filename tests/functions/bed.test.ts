import { beforeAll, describe, expect, it } from "vitest";
import { bedCauses } from "../../src/functions/bed";
import { clearBed } from "../core/bed/made-beds";
import { cell, fakeCustomFunctions } from "../support/custom-functions";
import fc from "../support/properties";

const INPUT = clearBed("one weak head");
const HEADS = INPUT.heads!.map(({ x, y }) => [x, y]);
const GRID = INPUT.grid.map((row) => [...row]);
const ALONG = INPUT.along.map((y) => [y]);

interface Changes {
  grid?: unknown;
  across?: unknown;
  along?: unknown;
  width?: unknown;
  radius?: unknown;
  arrangement?: unknown;
  arcs?: unknown;
  heads?: unknown;
}

function call(changes: Changes = {}): unknown {
  const given = { grid: GRID, across: [INPUT.across], along: ALONG, width: 9, radius: 3.2, heads: HEADS, ...changes };
  const { grid, across, along, width, radius, heads } = given as unknown as Record<string, never>;
  const [arrangement, arcs] = [changes.arrangement ?? "border", changes.arcs];
  return cell(() => bedCauses(grid, across, along, width, 12, 3, radius, arrangement, arcs, undefined, heads));
}

beforeAll(() => void fakeCustomFunctions());

describe("BED.CAUSES", () => {
  it("spills the header, the verdict and all nine causes by falling weight", () => {
    const [header, verdict, ...rows] = call() as [string, number, string, string][];
    expect(header).toEqual(["cause", "weight %", "where", "next check"]);
    expect(verdict![0]).toBe("one weak head");
    expect(verdict!.slice(2)).toEqual(["head at 3.0, 6.0 m", "bucket head 10 at 3.0, 6.0 m and head 6 at 3.0, 3.0 m"]);
    expect(rows[0]).toEqual(verdict);
    expect(rows).toHaveLength(9);
    expect(rows.reduce((sum, [, weight]) => sum + weight, 0)).toBeCloseTo(100, 9);
  });

  it("answers the same for heads as arranged and for the same heads typed", () => {
    expect(call({ heads: undefined })).toEqual(call());
    expect(call({ heads: [["", null]] })).toEqual(call());
  });

  it("skips a can that was not read, however Excel hands it over", () => {
    const without = (unread: unknown) =>
      GRID.map((row, r) => row.map((caught, c) => (r === 1 && c === 2 ? unread : caught)));
    const expected = call({ grid: without("x") });
    expect(expected).not.toEqual(call());
    for (const unread of [null, "", " X ", { type: "Empty" }])
      expect(call({ grid: without(unread) })).toEqual(expected);
  });

  it.each([
    [{ across: [[0.4, 1.8]] }, "across must have one place for each of the 7 columns, got 2"],
    [{ along: [ALONG.flat()].map((row) => row.slice(1)) }, "along must have one place for each of the 9 rows, got 8"],
    [{ across: [[0.4, 1.8, 1.7, 3, 4, 5, 6]] }, "across must ascend from place to place, got 1.7 in row 1, column 3"],
    [{ width: 8 }, "across must lie within the bed, from 0 to 8 m, got 8.6 in row 1, column 7"],
    [{ radius: 0 }, "radius must be more than 0 m, got 0"],
    [{ arrangement: "edge" }, 'arrangement must be "border", "inset", "centre" or "staggered", got "edge"'],
    [{ heads: [[1, 2, 3]] }, "heads must have 2 columns, across and along, got 3"],
    [
      {
        heads: [
          [1, 2],
          ["", ""],
          [1, ""],
        ],
      },
      "heads must be numbers, got a blank cell in row 3, column 2",
    ],
    [
      {
        heads: [
          [1, 2],
          ["", ""],
          [40, 2],
        ],
      },
      'heads must be within a throw, 3.2 m, of the bed, got "40, 2" in row 3',
    ],
    [{ grid: [[1, -2]] }, "grid must be 0 or more, got -2 in row 1, column 2"],
  ])("refuses %j and names the parameter", (changes, message) => {
    expect(call(changes)).toEqual({ error: "#VALUE!", message });
  });

  it("is not available where all cans are dry, or none was read", () => {
    const all = (value: unknown) => GRID.map((row) => row.map(() => value));
    const message = "grid must have a mean above 0, got 0";
    expect(call({ grid: all(0) })).toEqual({ error: "#N/A", message });
    expect(call({ grid: all("x") })).toEqual({ error: "#N/A", message });
  });

  it("answers finite numbers and texts for any catches", () => {
    const caught = fc.oneof(
      fc.double({ min: 0.001, max: 100, noNaN: true }),
      fc.constantFrom<unknown>("x", 0, 1e9, 1e-100),
    );
    const row = fc.array(caught, { minLength: 4, maxLength: 4 });
    const sizes = fc.double({ min: 0.01, max: 20, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 3, maxLength: 3 }),
        sizes,
        fc.constantFrom("full", "matched"),
        (grid, radius, arcs) => {
          const across = [[0, 2, 5, 9]];
          const result = call({ grid, across, along: [[0, 6, 12]], radius, arcs, heads: undefined });
          if (Array.isArray(result)) {
            expect(result.flat().every((value) => typeof value === "string" || Number.isFinite(value))).toBe(true);
          } else {
            expect((result as { error: string }).error).toBe("#N/A");
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
