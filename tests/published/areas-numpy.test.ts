import { afterAll, beforeAll, describe, expect, it } from "vitest";
import * as application from "../../src/functions/application";
import { canAreas } from "../../src/functions/areas";
import { summary } from "../../src/functions/summary";
import * as uniformity from "../../src/functions/uniformity";
import * as water from "../../src/functions/water";
import { published } from "../support/case-files";
import { fakeCustomFunctions } from "../support/custom-functions";

type Many = Record<string, number>;

interface Bed {
  bed: string;
  readings: unknown[][];
  areas: unknown[][];
  expected: Record<"MAR" | "CU.CHRISTIANSEN" | "DU.QUARTER" | "SC.CAN" | "SC.QUARTER", number> &
    Record<"SC.SHARE" | "RUNTIME" | "WATER.ANNUAL" | "COST.ANNUAL", Many>;
  intervals: { index: string; low: number; high: number; standardErrors: { low: number; high: number } }[];
}

interface Grid {
  across: number[];
  along: number[];
  width: number;
  length: number;
  areas: number[][];
}

interface Cases {
  test: Record<"minutes" | "mouth" | "depth" | "area" | "days" | "price" | "share", number>;
  level: number;
  beds: Bed[];
  grids: Grid[];
}

const { test, level, beds, grids } = published("areas-numpy.json") as Cases;
const held = published("areas-held.json") as Cases;

/** Of fewer cans there is no low quarter. */
const FEWEST = 4;

const MOST = 1e-9;
const misses: number[] = [];
const bootstrapMisses: number[] = [];

function expectClose(ours: unknown, theirs: number, what: string): void {
  const miss = Math.abs((ours as number) - theirs) / Math.max(1, Math.abs(theirs));
  misses.push(miss);
  expect(miss, `${what}: expected ${theirs}, got ${String(ours)}`).toBeLessThanOrEqual(MOST);
}

beforeAll(() => void fakeCustomFunctions());

afterAll(() => {
  console.table([
    { source: "areas-numpy", cases: misses.length, "largest miss": Math.max(...misses).toExponential(1) },
    {
      source: "areas-numpy: intervals, in standard errors",
      cases: bootstrapMisses.length,
      "largest miss": Math.max(...bootstrapMisses).toFixed(2),
    },
  ]);
});

describe.each([...beds, ...held.beds])(
  "$bed, by area, against numpy",
  ({ readings: r, areas, expected, intervals }) => {
    const { minutes, mouth, depth, area, days, price, share } = test;
    const read = r.flat().filter((reading) => typeof reading === "number").length;
    const given = <T>(of: Record<string, T>) =>
      Object.entries(of).filter(([basis]) => basis !== "quarter" || read >= FEWEST);
    const basisOf = (basis: string) => (Number(basis) > 0 ? Number(basis) : basis);

    it("has the mean rate, CU, DU and every SC", () => {
      expectClose(application.mar(r, minutes, mouth, areas), expected.MAR, "MAR");
      expectClose(uniformity.cuChristiansen(r, areas), expected["CU.CHRISTIANSEN"], "CU");
      expectClose(uniformity.scCan(r, areas), expected["SC.CAN"], "SC.CAN");
      if (read >= FEWEST) {
        expectClose(uniformity.duQuarter(r, areas), expected["DU.QUARTER"], "DU");
        expectClose(uniformity.scQuarter(r, areas), expected["SC.QUARTER"], "SC.QUARTER");
      }
      for (const [of, value] of Object.entries(expected["SC.SHARE"])) {
        expectClose(uniformity.scShare(r, Number(of), areas), value, `SC.SHARE ${of}`);
      }
    });

    it("has the run time, the water and its cost on every basis", () => {
      for (const [basis, value] of given(expected.RUNTIME)) {
        const by = basisOf(basis);
        const { "WATER.ANNUAL": volumes, "COST.ANNUAL": costs } = expected;
        expectClose(application.runtime(r, minutes, mouth, depth, by, areas), value, `RUNTIME ${basis}`);
        expectClose(water.waterAnnual(r, area, depth, days, by, share, areas), volumes[basis]!, `WATER ${basis}`);
        expectClose(water.costAnnual(r, area, depth, days, price, by, share, areas), costs[basis]!, `COST ${basis}`);
      }
    });

    it("has the same figures in SUMMARY", () => {
      const values = summary(r, minutes, mouth, undefined, areas).map((row) => row[1]);
      expectClose(values[3], expected.MAR, "MAR");
      expectClose(values[4], expected["CU.CHRISTIANSEN"], "CU");
      expectClose(values[6], expected["SC.CAN"], "SC.CAN");
      if (read >= FEWEST) {
        expectClose(values[5], expected["DU.QUARTER"], "DU");
        expectClose(values[7], expected["SC.QUARTER"], "SC.QUARTER");
      }
    });

    it.each(intervals)("has both ends of $index within four standard errors of scipy's", (theirs) => {
      const [[low, high]] = uniformity.interval(r, theirs.index, level, areas) as [[number, number]];
      const { low: ofLow, high: ofHigh } = theirs.standardErrors;
      for (const miss of [Math.abs(low - theirs.low) / ofLow, Math.abs(high - theirs.high) / ofHigh]) {
        bootstrapMisses.push(miss);
        expect(miss).toBeLessThan(4);
      }
    });
  },
);

it.each(grids)("CAN.AREAS of places $across across and $along along is numpy's", (grid) => {
  const ours = canAreas([grid.across], [grid.along], grid.width, grid.length);
  expect(ours).toHaveLength(grid.areas.length);
  ours.forEach((row, r) => {
    expect(row).toHaveLength(grid.across.length);
    row.forEach((area, c) => {
      expectClose(area, grid.areas[r]![c]!, `row ${r + 1}, column ${c + 1}`);
    });
  });
});
