import { describe, expect, it } from "vitest";
import { fitNight, nightSteps } from "../../../src/core/program/fit-night";
import { flowCurve } from "../../../src/core/program/flow-curve";
import type { Program } from "../../../src/core/program/program";
import { verifyNight } from "../../../src/core/program/verify-night";
import { nursery } from "../../bench/nurseries";
import { valve } from "./small";

const NIGHT = [{ start: 0, end: 600 }];
const A = valve("A", 10, 30);
const B = valve("B", 10, 20);

function starts(program: Program): [string, number][] {
  return fitNight(program).schedule.map(({ block, start }) => [block, start]);
}

it.each(Array.from({ length: 20 }, (_, i) => 15 * i + 1))("keeps every rule in nursery %i", (i) => {
  const program = nursery(i);
  const night = fitNight(program, 20_000);
  const long = { ...program, windows: program.windows.map((window) => ({ ...window })) };
  long.windows.at(-1)!.end = (long.windows.at(-1)!.end + night.short.minutes) % 1440;
  expect(verifyNight(long, night.schedule)).toEqual([]);
  expect(night.finish).toBeGreaterThanOrEqual(night.bound);
  expect(night.finish).toBe(Math.max(...night.schedule.map(({ start, minutes }) => start + minutes)));
});

it("gives the same answer again", () => {
  expect(fitNight(nursery(100), 20_000)).toEqual(fitNight(nursery(100), 20_000));
});

it("yields nights on the way, none better than the last, and each keeps every rule", () => {
  const program = nursery(40);
  const steps = nightSteps(program, 100_000);
  const finishes: number[] = [];
  for (let step = steps.next(); ; step = steps.next()) {
    finishes.push(step.value.finish);
    expect(verifyNight(program, step.value.schedule)).toEqual([]);
    if (step.done) break;
  }
  expect(finishes.length).toBeGreaterThan(3);
  expect(finishes).toEqual([...finishes].sort((a, b) => b - a));
});

describe("by hand", () => {
  it("runs two blocks together where the pump gives both, else one after the other", () => {
    expect(fitNight({ blocks: [A, B], pump: 20, windows: NIGHT }).finish).toBe(30);
    const night = fitNight({ blocks: [A, B], pump: 19.99, windows: NIGHT });
    expect([night.finish, night.bound, night.gap, night.proven]).toEqual([50, 50, 0, true]);
  });

  it("keeps a pair apart, with the change-over between the two", () => {
    const program: Program = { blocks: [A, B], pump: 20, windows: NIGHT, apart: [["A", "B"]], changeOver: 90 };
    // 30 min, 1.5 min to change over, and the next whole minute is 32; 32 + 20 = 52
    expect(fitNight(program).finish).toBe(52);
  });

  it("puts one block's pulses into the rests of another", () => {
    const blocks = [valve("A", 10, 10, 3, 20), valve("B", 10, 10, 3, 20)];
    // A 0 30 60, B 10 40 70: the last ends at 80
    expect(fitNight({ blocks, pump: 10, windows: NIGHT }).finish).toBe(80);
  });

  it("never lets a pulse straddle the end of a window", () => {
    const windows = [
      { start: 1320, end: 1350 },
      { start: 0, end: 60 },
    ];
    // 30 min end at 22:30; 20 min come after midnight
    expect(starts({ blocks: [A, B], pump: 10, windows })).toEqual([
      ["A", 1320],
      ["B", 1440],
    ]);
    const longer = valve("A", 10, 31);
    // 31 min fit no more before 22:30
    expect(starts({ blocks: [longer], pump: 10, windows })).toEqual([["A", 1440]]);
  });

  it("waits for the tank to fill", () => {
    // each takes 60 L/h for 30 min = 30 L; 30 L are there, the rest comes in at 30 L/h
    const blocks = [valve("A", 60, 30), valve("B", 60, 30)];
    const night = fitNight({ blocks, pump: 120, windows: NIGHT, tank: { volume: 30, refill: 30 } });
    // 60 L have come by minute 60; the last minute's litre must be there when that minute begins
    expect(night.bound).toBe(60);
    expect(night.finish).toBeLessThanOrEqual(62);
    expect(
      verifyNight({ blocks, pump: 120, windows: NIGHT, tank: { volume: 30, refill: 30 } }, night.schedule),
    ).toEqual([]);
  });

  it("rounds a run time up to the step of the controller", () => {
    const block = { name: "A", area: 100, rate: 12, multiplier: 1.4, depth: 9.4, takeUp: 5, rest: 30 };
    // 9.4 x 1.4 = 13.16 mm in 3 pulses at 12 mm/h: 21.93 min each
    const minutes = (step?: number) =>
      fitNight({ blocks: [block], pump: 5000, windows: NIGHT, ...(step && { step }) }).schedule.map(
        (run) => run.minutes,
      );
    expect(minutes()).toEqual([22, 22, 22]);
    expect(minutes(0.5)).toEqual([22, 22, 22]);
    expect(minutes(5)).toEqual([25, 25, 25]);
  });

  it("has nothing to do where nothing is wanted", () => {
    const night = fitNight({ blocks: [{ ...A, depth: 0 }], pump: 10, windows: NIGHT });
    expect([night.schedule, night.fits, night.finish, night.gapShare, night.litres]).toEqual([[], true, 0, 0, 0]);
  });
});

describe("what is short", () => {
  it("is minutes, and proven where the bound says so", () => {
    const night = fitNight({ blocks: [A, B], pump: 10, windows: [{ start: 0, end: 45 }] });
    // 30 + 20 = 50 min in 45
    expect([night.fits, night.proven, night.short]).toEqual([false, true, { minutes: 5, litres: 0, flow: 0 }]);
  });

  it("is litres over the limit of the day, or over tank and refill", () => {
    // 10 L/h for 50 min = 8.333 L; 2 L and 3 L/h for the 10 h of the window would be 32 L, for the half hour 3.5 L
    const program = { blocks: [A, B], pump: 20, windows: NIGHT };
    expect(fitNight({ ...program, limit: 8 }).short.litres).toBeCloseTo(1 / 3, 9);
    expect(fitNight({ ...program, limit: 8.34 }).fits).toBe(true);
    const short = { ...program, windows: [{ start: 0, end: 30 }], tank: { volume: 2, refill: 3 } };
    expect(fitNight(short).short.litres).toBeCloseTo(8.3333 - 3.5, 3);
    expect(fitNight(short).proven).toBe(true);
  });

  it("is L/h where one block needs more than the pump gives, and then there is no schedule", () => {
    const night = fitNight({ blocks: [A, B], pump: 7.5, windows: NIGHT });
    expect([night.fits, night.proven, night.schedule]).toEqual([false, true, []]);
    expect(night.short).toEqual({ minutes: 0, litres: 0, flow: 2.5 });
  });
});

describe("the flow curve", () => {
  it("is the sum of what runs", () => {
    const blocks = [valve("A", 10, 30), valve("B", 5, 20)];
    const schedule = [
      { block: "A", pulse: 1, start: 0, minutes: 30 },
      { block: "B", pulse: 1, start: 10, minutes: 20 },
      { block: "B", pulse: 2, start: 50, minutes: 20 },
    ];
    const curve = flowCurve({ blocks, pump: 15, windows: NIGHT }, schedule);
    expect(curve.map(({ minute, flow }) => [minute, flow])).toEqual([
      [0, 10],
      [10, 15],
      [30, 0],
      [50, 5],
      [70, 0],
    ]);
  });

  it("holds the water of the night", () => {
    const program = nursery(2);
    const { schedule, litres } = fitNight(program, 5000);
    const curve = flowCurve(program, schedule);
    const held = curve.reduce(
      (sum, { minute, flow }, i) => sum + (flow * ((curve[i + 1]?.minute ?? minute) - minute)) / 60,
      0,
    );
    expect(held).toBeCloseTo(litres, 6);
    expect(Math.max(...curve.map(({ flow }) => flow))).toBeLessThanOrEqual(program.pump);
  });

  it("refuses a pulse of another program", () => {
    const schedule = [{ block: "C", pulse: 1, start: 0, minutes: 30 }];
    expect(() => flowCurve({ blocks: [A], pump: 15, windows: NIGHT }, schedule)).toThrow(
      'block must be one of the program, got "C"',
    );
  });
});
