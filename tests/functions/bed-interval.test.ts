import { beforeAll, describe, expect, it } from "vitest";
import { wholeBed } from "../../src/core/bed/interval/whole-bed";
import { readBed } from "../../src/core/bed/read-bed";
import { bedInterval } from "../../src/functions/bed";
import { clearBed } from "../core/bed/made-beds";
import { cell, fakeCustomFunctions } from "../support/custom-functions";

const INPUT = clearBed("nothing wrong found");
const ACROSS = [[...INPUT.across]];
const ALONG = INPUT.along.map((y) => [y]);
const HEADS = INPUT.heads!.map(({ x, y }) => [x, y]);

interface Changes {
  grid?: unknown[][];
  index?: unknown;
  level?: unknown;
  heads?: unknown[][];
  width?: unknown;
  length?: unknown;
}

function call({
  grid = INPUT.grid.map((row) => [...row]),
  index = "DU.QUARTER",
  level,
  heads = HEADS,
  ...sides
}: Changes = {}) {
  const { width, length, spacing, radius } = { ...INPUT, ...sides };
  return cell(() =>
    bedInterval(
      ...([grid, ACROSS, ALONG, width, length, spacing, radius, "border", index] as const),
      ...([undefined, undefined, heads, level] as const),
    ),
  );
}

beforeAll(() => void fakeCustomFunctions());

describe("BED.INTERVAL", () => {
  it("spills estimate, low and high end of the index that is asked for, in any case", () => {
    const whole = wholeBed(readBed(INPUT));
    for (const index of ["MEAN", "CU.CHRISTIANSEN", "DU.QUARTER"] as const) {
      const { estimate, low, high } = whole[index];
      expect(call({ index })).toEqual([[estimate, low, high]]);
      expect(call({ index: ` ${index.toLowerCase()} ` })).toEqual([[estimate, low, high]]);
    }
  });

  it("has level 0.9 where nothing is said", () => {
    expect(call()).toEqual(call({ level: 0.9 }));
    expect(call()).not.toEqual(call({ level: 0.8 }));
  });

  it.each([
    [{ index: "SC.CAN" }, 'index must be "MEAN", "CU.CHRISTIANSEN" or "DU.QUARTER", got "SC.CAN"'],
    [{ index: null }, 'index must be "MEAN", "CU.CHRISTIANSEN" or "DU.QUARTER", got a blank cell'],
    [{ width: 0 }, "width must be more than 0 m, got 0"],
    [{ length: "12" }, 'length must be more than 0 m, got "12"'],
    [{ level: 0.4 }, "level must be from 0.5 to 0.99, got 0.4"],
    [{ heads: [[1, 2, 3]] }, "heads must have 2 columns, across and along, got 3"],
  ])("refuses %j and names the parameter", (changes, message) => {
    expect(call(changes)).toEqual({ error: "#VALUE!", message });
  });

  it("is not available with too few cans", () => {
    const grid = INPUT.grid.map((row, r) => row.map((caught, c) => (r < 3 && c < 5 ? caught : "x")));
    const message = "grid must have at least 16 cans for an interval by fit, got 15";
    expect(call({ grid })).toEqual({ error: "#N/A", message });
  });
});
