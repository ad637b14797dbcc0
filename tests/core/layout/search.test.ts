import * as formulajs from "@formulajs/formulajs";
import { describe, expect, it } from "vitest";
import { coverage } from "../../../src/core/layout/coverage";
import { judgement } from "../../../src/core/layout/judgement";
import type { SearchInput, SearchLimits } from "../../../src/core/layout/search/input";
import { finalistPatches, ranking } from "../../../src/core/layout/search/ranking";
import { type Candidate, search } from "../../../src/core/layout/search/search";
import { patchSchedulingCoefficient } from "../../../src/core/uniformity/patch";
import { doubleLoop } from "./double-loop";
import { searchOf } from "./searches";

const all = (input: SearchInput): Candidate[] => [...search(input).candidates];
const everything = all(searchOf());
/** A hundred spacings [m]. */
const MANY = Array.from({ length: 100 }, (_, i) => 2 + i / 100);

/** The cheapest layout within an SC, a mean rate and a pump, by a plain loop of its own. */
function cheapest(input: SearchInput, coefficient: number, rate: number, pump: number) {
  let best = { cost: Infinity, name: "" };
  for (const { name, profile, price } of input.heads) {
    for (const stand of input.stands) {
      for (const spacing of input.spacings) {
        for (const rowSpacing of input.rowSpacings) {
          const { width, length, cell } = input;
          const { rates, millilitresAMinute } = doubleLoop({
            ...{ width, length, cell, spacing, rowSpacing },
            ...stand,
            profile,
          });
          const list = rates.flat();
          const mean = list.reduce((sum, x) => sum + x, 0) / list.length;
          const driest = Math.min(...list);
          const flow = (millilitresAMinute * 60) / 1000;
          if (!(driest > 0) || mean / driest > coefficient || mean > rate || flow > pump) continue;
          const gaps = Math.round(width / spacing);
          const across = stand.arrangement === "centre" ? 1 : gaps + (stand.arrangement === "border" ? 1 : 0);
          const along = Math.round(length / rowSpacing) + (stand.arrangement === "border" ? 1 : 0);
          const pipe = across * length + width;
          const capital = across * along * (price + input.riserPrice) + pipe * input.pipePrice;
          const hours = input.depth / driest;
          const water = ((flow * hours) / 1000) * input.days;
          const cost = water * input.waterPrice - (formulajs.PMT(input.discountRate, input.life, capital) as number);
          if (cost < best.cost)
            best = { cost, name: `${name}, ${stand.arrangement}, ${stand.arcs}, ${across}x${along}` };
        }
      }
    }
  }
  return best;
}

describe("a search", () => {
  it("tries every head, arrangement and pair of gaps once", () => {
    // 2 heads; border full, border matched and inset each with 3 x 3 gaps, the centre line with 3: 2 (27 + 3)
    expect(search(searchOf()).total).toBe(60);
    expect(everything).toHaveLength(60);
    // 4.1 m comes to the two gaps of 4 m
    expect(search(searchOf({ spacings: [2, 4, 4.1, 8] })).total).toBe(60);
  });

  it.each([
    [1.5, 30, 12_000],
    [2, 25, 20_000],
    [4, 60, 6000],
  ])(
    "finds the same best layout as a plain loop within SC %d, MAR %d and a pump of %d",
    (coefficient, highRate, flow) => {
      const input = searchOf({ limits: { coefficient, highRate, flow } });
      const [best] = ranking(all(input)).within;
      const plain = cheapest(input, coefficient, highRate, flow);
      const { arrangement, arcs } = best!.plan;
      const across = (best!.pipe - 8) / 12;
      const along = best!.judgement.heads / across;
      expect(`${best!.head}, ${arrangement}, ${arcs}, ${across}x${along}`).toBe(plain.name);
      expect((best!.yearlyCost as number) / plain.cost).toBeCloseTo(1, 6);
    },
  );

  it("pipes staggered heads row by row", () => {
    // 8 x 12 m, 4 x 4 m: rows of 3, 2, 3, 2 heads at 0, 4, 8, 12 m: 10 heads; 4 laterals of 8 m and a main of 12 m
    const stands = [{ arrangement: "staggered", arcs: "full" }] as const;
    const [found] = all(searchOf({ spacings: [4], rowSpacings: [4], stands: [...stands] }));
    expect(found!.judgement.heads).toBe(10);
    expect(found!.pipe).toBe(4 * 8 + 12);
    expect(found!.capital).toBe(10 * (6 + 4) + 44 * 2.5);
  });

  it("gives each candidate the figures of its own plan", () => {
    for (const { plan, judgement: found } of everything) {
      for (const [name, value] of Object.entries(judgement(coverage(plan)))) {
        const ours = found[name as keyof typeof found];
        if (typeof value === "number") expect((ours as number) / value, name).toBeCloseTo(1, 9);
        else expect(ours, name).toBe(value);
      }
    }
  });

  it("costs the water of the heads, with heads, risers and pipe over their life", () => {
    // border, 2 x 2 gaps of 4 x 6 m: 3 x 3 heads, 3 laterals of 12 m and a main of 8 m: 44 m
    const one = everything.find(({ pipe, judgement }) => pipe === 44 && judgement.heads === 9)!;
    expect(one.capital).toBe(9 * (6 + 4) + 44 * 2.5);
    expect(one.yearlyCapital).toBeCloseTo(-(formulajs.PMT(0.06, 10, 200) as number), 9);
    // 96 m2, 6 mm on 300 days: 172.8 kL for each unit of the water factor
    expect(one.water).toBeCloseTo(172.8 * (one.judgement.driestWater as number), 9);
    expect(one.waterCost).toBeCloseTo(3 * (one.water as number), 9);
    expect(one.yearlyCost).toBeCloseTo((one.waterCost as number) + one.yearlyCapital, 9);
  });

  it("counts by the low quarter where that is the basis", () => {
    const one = all(searchOf({ basis: "quarter" }))[0]!;
    expect(one.water).toBeCloseTo(172.8 * (one.judgement.quarterWater as number), 9);
  });

  it("calculates no candidate before it is asked for, and can be stopped", () => {
    const fine = search(searchOf({ width: 250, length: 250, cell: 0.25, spacings: [3], rowSpacings: [3] }));
    let asked = 0;
    for (const _ of fine.candidates) {
      asked += 1;
      if (asked === 2) break;
    }
    expect(asked).toBe(2);
    expect(fine.total).toBe(8);
  });
});

describe("the ranking", () => {
  const ruled = (limits: SearchLimits) => ranking(all(searchOf({ limits })));

  it("is by yearly cost, and keeps every candidate", () => {
    const { within, outside } = ruled({ coefficient: 2 });
    expect(within.length + outside.length).toBe(60);
    const costs = within.map(({ yearlyCost }) => yearlyCost as number);
    expect(costs.length).toBeGreaterThan(5);
    expect([...costs].sort((a, b) => a - b)).toEqual(costs);
    const last = outside.at(-1)!;
    expect([last.yearlyCost, last.breaks]).toEqual(["dry spots", expect.arrayContaining(["drySpots"])]);
  });

  it.each([
    [{ coefficient: 1.5 }, "coefficient", (of: Candidate) => (of.judgement.driestCoefficient as number) > 1.5],
    [{ lowRate: 20 }, "lowRate", (of: Candidate) => of.judgement.meanRate < 20],
    [{ highRate: 20 }, "highRate", (of: Candidate) => of.judgement.meanRate > 20],
    [{ flow: 9000 }, "flow", (of: Candidate) => of.judgement.flow > 9000],
  ] as const)("says how many %o ruled out", (limits, name, breaks) => {
    const { within, ruledOut } = ruled(limits);
    const dry = everything.filter(({ judgement }) => judgement.driestCoefficient === "dry spots");
    const broken = everything.filter(breaks);
    const both = dry.filter(breaks).length;
    expect(within).toHaveLength(60 - dry.length - broken.length + both);
    expect(ruledOut).toEqual([
      { limit: "drySpots", alone: dry.length - both, withOthers: both },
      { limit: name, alone: broken.length - both, withOthers: both },
    ]);
    expect(broken.length).toBeGreaterThan(both);
  });

  it("keeps a layout that just meets its limits", () => {
    const { judgement } = everything[0]!;
    const { meanRate, flow, driestCoefficient } = judgement;
    const limits = { lowRate: meanRate, highRate: meanRate, flow, coefficient: driestCoefficient as number };
    expect(ruled(limits).within.map(({ judgement }) => judgement)).toContainEqual(judgement);
  });

  it("calculates the driest patch of the ten best", () => {
    const ranked = ruled({});
    const patches = finalistPatches(ranked, 0.05);
    expect(patches).toHaveLength(10);
    expect(patches[0]).toBe(patchSchedulingCoefficient(coverage(ranked.within[0]!.plan).rates, 0.05));
  });
});

describe("a search is refused before any work", () => {
  const heads = searchOf().heads;
  it.each([
    [{ width: 0 }, "width must be more than 0 m, got 0"],
    [{ length: -1 }, "length must be more than 0 m, got -1"],
    [{ cell: 6 }, "cell must be at most the throw, 4 m, got 6"],
    [{ heads: [] }, "heads must hold at least one to try, got 0"],
    [{ spacings: [] }, "spacings must hold at least one to try, got 0"],
    [{ rowSpacings: [] }, "row_spacings must hold at least one to try, got 0"],
    [{ stands: [] }, "layouts must hold at least one to try, got 0"],
    [{ spacings: [4, 0] }, "spacings must be more than 0 m, got 0 in row 2"],
    [{ rowSpacings: [-4] }, "row_spacings must be more than 0 m, got -4 in row 1"],
    [{ heads: [heads[0]!, { ...heads[1]!, price: -2 }] }, "price must be 0 or more, got -2 in row 2"],
    [{ riserPrice: Number.NaN }, "riser_price must be 0 or more, got NaN"],
    [{ pipePrice: -1 }, "pipe_price must be 0 per m or more, got -1"],
    [{ waterPrice: -1 }, "water_price must be 0 per kL or more, got -1"],
    [{ life: 0 }, "life must be more than 0 years, got 0"],
    [{ discountRate: 6 }, "discount_rate must be from 0 to 1, got 6"],
    [{ depth: 0 }, "depth must be more than 0 mm, got 0"],
    [{ days: 400 }, "days must be more than 0 and at most 366, got 400"],
    [{ basis: "half" as never }, 'basis must be "driest" or "quarter", got "half"'],
    [{ limits: { coefficient: 0.9 } }, "sc_limit must be at least 1, got 0.9"],
    [{ limits: { lowRate: 12, highRate: 5 } }, "lowest_rate must be at most the highest, 5 mm/h, got 12"],
    [{ limits: { flow: 0 } }, "pump_flow must be more than 0 L/h, got 0"],
    [
      { spacings: MANY, rowSpacings: MANY },
      "candidates must be at most 10,000 (heads x spacings x row spacings x layouts), got 80000",
    ],
    [
      { stands: [{ arrangement: "inset", arcs: "matched" }] },
      'arcs must be "full" where the arrangement is "inset", got "matched"',
    ],
  ] as [Partial<SearchInput>, string][])("%o", (changes, message) => {
    expect(() => search(searchOf(changes))).toThrow(expect.objectContaining({ message }));
  });
});
