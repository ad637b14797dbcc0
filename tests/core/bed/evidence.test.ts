import { describe, expect, it } from "vitest";
import type { BedHead } from "../../../src/core/bed/bed-heads";
import { type BedCauses, causes } from "../../../src/core/bed/causes/causes";
import { Evidence, nozzle } from "../../../src/core/bed/causes/evidence";
import { type Measured, meanTaken, taken } from "../../../src/core/bed/causes/measured";
import { measuredWords } from "../../../src/core/bed/causes/measured-words";
import { nextCheck } from "../../../src/core/bed/causes/next-check";
import { readBed } from "../../../src/core/bed/read-bed";
import { clearBed } from "./made-beds";

const full = (number: number): BedHead => ({ x: number, y: 0, number, arc: 360, faces: 0, times: 1 });
const HEADS = [full(1), full(2), full(3), full(4)];
const NONE = [null, null, null, null];
const SOUND = { outputs: [1, 1, 1, 1] };
const measured = (given: Partial<Measured>): Measured => ({ flows: NONE, pressures: NONE, ...given });
const cost = (given: Partial<Measured>, claim = SOUND as Parameters<Evidence["cost"]>[0]) =>
  new Evidence(HEADS, measured(given)).cost(claim);
const MAKER = { flow: 200, pressure: 200 };

describe("what is measured at the heads, held against a cause", () => {
  it("costs nothing where nothing is measured, one bucket alone says nothing, or all agree", () => {
    expect(new Evidence(HEADS).cost(SOUND)).toBe(0);
    expect(cost({})).toBe(0);
    expect(cost({ flows: [90, null, null, null] })).toBe(0);
    expect(cost({ flows: [200, 200, 200, null], pressures: [200, 200, null, null], maker: MAKER })).toBeCloseTo(0, 9);
  });

  it("takes a bucket at half of the others for a weak head and not for a sound bed", () => {
    // by hand: at the level of the others (0.5 - 1)/0.065 squared is 59, at most 25 for one head
    const flows = [200, 100, 200, 200];
    expect(cost({ flows })).toBeCloseTo(25, 9);
    expect(cost({ flows }, { outputs: [1, 0.5, 1, 1] })).toBeCloseTo(0, 9);
    expect(cost({ flows: [200, 0, 200, 200] }, { outputs: [1, 0, 1, 1] })).toBeCloseTo(0, 9);
  });

  it("expects of a part circle with a smaller nozzle its part of the flow", () => {
    const quarter: BedHead = { ...full(1), arc: 90, faces: 45 };
    expect(nozzle(quarter)).toBe(0.25);
    expect(nozzle({ arc: 90, times: 4 })).toBe(1);
    const evidence = new Evidence([quarter, full(2)], measured({ flows: [50, 200] }));
    expect(evidence.cost({ outputs: [1, 1] })).toBeCloseTo(0, 9);
  });

  it("takes a gauge at the maker's pressure for right, at half of it for too low", () => {
    const right = { pressures: [200, 200, null, null], maker: MAKER };
    const low = { pressures: [100, 100, null, null], maker: MAKER };
    const claim = { ...SOUND, low: true };
    expect(cost(right, claim)).toBeGreaterThan(cost(right));
    expect(cost(low)).toBeGreaterThan(cost(low, claim));
    expect(new Evidence(HEADS, measured(right)).rightPressure).toBe(true);
    expect(new Evidence(HEADS, measured(low)).rightPressure).toBe(false);
  });

  it("takes pressures that halve along the line for a fall, and the supply for the side that it falls from", () => {
    const fall = { outputs: [1, 0.9, 0.8, 0.7], pressures: [1, 0.81, 0.64, 0.5], towards: "bottom" as const };
    const pressures = [200, 162, 128, 100];
    expect(cost({ pressures }, fall)).toBeCloseTo(0, 9);
    expect(cost({ pressures })).toBeGreaterThan(10);
    const of = (supply: Measured["supply"]) => cost({ supply: supply! }, fall);
    expect(of("top")).toBeLessThan(0);
    expect(of("top")).toBeLessThan(of("left"));
    expect(of("left")).toBeLessThan(of("bottom"));
  });

  it("takes a calm log for no wind, and a wind the other way for another cause", () => {
    const blown = { ...SOUND, wind: { x: 0.4, y: 0, drift: 0 } };
    expect(cost({ wind: { speed: 0.3 } }, blown)).toBeGreaterThan(cost({ wind: { speed: 0.3 } }));
    expect(cost({ wind: { speed: 4 } }, blown)).toBeLessThan(cost({ wind: { speed: 4 } }));
    const way = (x: number) => cost({ wind: { speed: 4, towards: { x, y: 0 } } }, blown);
    expect(way(-1) - way(1)).toBeCloseTo(12, 9); // by hand: 6 (1 - cos 180°) = 12
  });

  it("means what was taken", () => {
    expect(taken([null, 3])).toEqual([{ at: 1, value: 3 }]);
    expect(meanTaken([null, 3, 5])).toBe(4);
    expect(meanTaken([null])).toBeUndefined();
  });
});

describe("a verdict with what was measured at the heads", () => {
  const weak = readBed(clearBed("one weak head"));
  const all = (value: number) => weak.heads.map(() => value);
  const at = weak.heads.findIndex(({ x, y }) => x === 3 && y === 6);
  const weightOf = ({ causes: found }: BedCauses, name: string) => found.find(({ cause }) => cause === name)!.weight;

  it("is surer of a weak head whose bucket is low, and says what to do with it", () => {
    const flows = all(200).map((flow, k) => (k === at ? 20 : flow));
    const found = causes(weak, { flows, pressures: weak.heads.map(() => null) });
    expect(found.causes[0]).toMatchObject({ cause: "one weak head", head: at });
    expect(weightOf(found, "one weak head")).toBeGreaterThanOrEqual(weightOf(causes(weak), "one weak head"));
    expect(nextCheck(found)).toBe(`clean or replace head ${weak.heads[at]!.number}, then test again`);
    expect(measuredWords(weak.heads, found.measured!)).toEqual([
      `bucket at head ${weak.heads[at]!.number}: 10 % of the others`,
    ]);
  });

  it("names none where the bucket of the weak head is as full as the others, and says so", () => {
    const found = causes(weak, { flows: all(200), pressures: weak.heads.map(() => null) });
    expect(found.doubts).toContain("measured");
    expect(nextCheck(found)).toBe("measure at the heads again: bucket, gauge or wind log do not fit the cans");
  });

  it("does not call a hollow pattern low pressure where a gauge has the maker's", () => {
    const hollow = readBed(clearBed("pressure too low"));
    const none = hollow.heads.map(() => null);
    const pressures = hollow.heads.map((_, k) => (k < 3 ? 200 : null));
    expect(causes(hollow, { flows: none, pressures, maker: MAKER }).causes[0]!.cause).not.toBe("pressure too low");
    const low = causes(hollow, { flows: none, pressures: pressures.map((p) => p && p / 2), maker: MAKER });
    expect(low.causes[0]!.cause).toBe("pressure too low");
    expect(nextCheck(low)).toBe("raise the pressure, by fewer heads at once or a larger pipe, then test again");
  });

  it("names each thing that was measured", () => {
    const words = measuredWords(HEADS, {
      flows: [200, 198, 202, null],
      pressures: [200, 190, null, null],
      maker: MAKER,
      wind: { speed: 1.2, towards: { x: -0.7, y: -0.7 } },
      supply: "top",
    });
    // by hand: 198/200 and 202/200; 190/195 = 97.4 %, 200/195 = 102.6 %; 195/200 = 97.5 %
    expect(words).toEqual([
      "bucket at 3 heads: 99 to 101 % of their mean",
      "pressure at 2 heads: 97 to 103 % of their mean",
      "mean pressure: 98 % of the maker's",
      "mean wind: 1.2 m/s, towards the top left",
      "supply: top side",
    ]);
    expect(measuredWords(HEADS, measured({ flows: [0, 0, null, null], pressures: [150, null, null, null] }))).toEqual([
      "bucket at 2 heads: all 0",
    ]);
  });
});
