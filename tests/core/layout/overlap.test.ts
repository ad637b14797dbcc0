import { describe, expect, it } from "vitest";
import { coverage, type Plan } from "../../../src/core/layout/coverage";
import { gapCount } from "../../../src/core/layout/gaps";
import { judgement } from "../../../src/core/layout/judgement";
import { overlap } from "../../../src/core/layout/overlap";
import { measuredProfile, namedProfile } from "../../../src/core/layout/profile";
import fc from "../../support/properties";
import { doubleLoop } from "./double-loop";
import { anyPlan, planOf } from "./plans";

const relativeTo = (scale: number, a: number, b: number) => Math.abs(a - b) <= 1e-6 * scale;
const peak = (values: Float64Array) => values.reduce((most, rate) => Math.max(most, rate), 0);
/** Rates that a bed only gets from the last rounding of a head's edge are measured against the head. */
const scale = (plan: Plan, values: Float64Array) => Math.max(peak(values), peak(plan.profile.rates) / 1000);

describe("the rates of a layout", () => {
  it("are those of a plain double loop in centimetres, millilitres and minutes", () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const { rates, heads } = coverage(plan);
        const plain = doubleLoop(plan);
        const most = scale(plan, rates.values);
        expect(heads.reduce((sum, head) => sum + head.flow, 0)).toBeCloseTo((plain.millilitresAMinute * 60) / 1000, 6);
        expect(plain.rates.length).toBe(rates.rows);
        return plain.rates.flat().every((rate, i) => relativeTo(most, rate, rates.values[i]!));
      }),
      { numRuns: 150 },
    );
  });

  it("are the same from the other side, and from the other end but where only one end is staggered", () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const { rates } = coverage(plan);
        const { rows, columns, values } = rates;
        const most = scale(plan, values);
        const alikeEnds = plan.arrangement !== "staggered" || gapCount(plan.length, plan.rowSpacing) % 2 === 0;
        return values.every((rate, i) => {
          const [row, column] = [Math.floor(i / columns), i % columns];
          const along = values[(rows - 1 - row) * columns + column]!;
          const across = values[row * columns + columns - 1 - column]!;
          return (!alikeEnds || relativeTo(most, rate, along)) && relativeTo(most, rate, across);
        });
      }),
      { numRuns: 100 },
    );
  });

  it("double with the flows, and no index changes", () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const { distances, rates, flow } = plan.profile;
        const single = coverage(plan);
        const double = coverage({ ...plan, profile: measuredProfile(distances, rates, 2 * flow) });
        const most = scale(plan, single.rates.values);
        double.rates.values.forEach((rate, i) => {
          if (!relativeTo(most, rate, 2 * single.rates.values[i]!)) throw new Error(`cell ${i}`);
        });
        if (single.rates.values.length < 4 || peak(single.rates.values) < most) return;
        const [one, two] = [judgement(single), judgement(double)];
        expect(two.christiansen).toBeCloseTo(one.christiansen, 6);
        expect(two.distribution).toBeCloseTo(one.distribution, 6);
        expect(two.inBedShare).toBeCloseTo(one.inBedShare, 9);
        expect(two.flow).toBeCloseTo(2 * one.flow, 6);
        if (typeof one.driestWater === "number" && typeof two.driestWater === "number") {
          expect(two.driestWater / one.driestWater).toBeCloseTo(1, 9);
        }
      }),
      { numRuns: 100 },
    );
  });

  it("move with bed and heads together", () => {
    fc.assert(
      fc.property(anyPlan, fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 9 }), (plan, right, up) => {
        const { cells, heads, rates } = coverage(plan);
        const moved = heads.map((head) => ({
          ...head,
          x: head.x + right * cells.cellWidth,
          y: head.y + up * cells.cellLength,
        }));
        const wider = { ...cells, rows: cells.rows + up, columns: cells.columns + right };
        const there = overlap(wider, moved, plan.profile).rates;
        const most = scale(plan, rates.values);
        return rates.values.every((rate, i) => {
          const [row, column] = [Math.floor(i / rates.columns), i % rates.columns];
          return relativeTo(most, rate, there.values[(row + up) * there.columns + column + right]!);
        });
      }),
      { numRuns: 100 },
    );
  });

  it("are with matched arcs those of full circles", () => {
    const full = coverage(planOf()).rates.values;
    const matched = coverage(planOf({ arcs: "matched" })).rates.values;
    matched.forEach((rate, i) => {
      expect(rate).toBeCloseTo(full[i]!, 9);
    });
  });

  it("are with unmatched arcs twice as high by a head on an edge, and four times by one in a corner", () => {
    // one gap each way, throw 2 m in a bed of 6 x 6 m: each cell near a corner sees one head only
    const bed = { width: 6, length: 6, spacing: 6, rowSpacing: 6, profile: namedProfile("triangular", 2, 100) };
    const full = coverage(planOf(bed)).rates.values;
    const corner = coverage(planOf({ ...bed, arcs: "unmatched" })).rates.values;
    expect(corner[0]).toBeCloseTo(4 * full[0]!, 9);
    // two gaps along: the head half way along the edge is at row 12 of 24
    const edge = { ...bed, rowSpacing: 3 };
    const middle = 12 * 24;
    expect(coverage(planOf({ ...edge, arcs: "unmatched" })).rates.values[middle]).toBeCloseTo(
      2 * coverage(planOf(edge)).rates.values[middle]!,
      9,
    );
  });
});
