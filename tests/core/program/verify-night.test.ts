import { describe, expect, it } from "vitest";
import type { Block, Program, Run } from "../../../src/core/program/program";
import { verifyNight } from "../../../src/core/program/verify-night";
import { valve } from "./small";

const PROGRAM: Program = {
  blocks: [valve("A", 10, 10, 2, 20), valve("B", 10, 20)],
  pump: 15,
  windows: [
    { start: 1380, end: 30 },
    { start: 120, end: 150 },
  ],
  apart: [["A", "B"]],
  changeOver: 60,
  limit: 7,
  tank: { volume: 5, refill: 1 },
};
// A 23:00 to 23:10 and 2:00 to 2:10, B 23:11 to 23:31: 10 L/h for 40 min = 6.67 L; of 5 + 31/60 L there are 5 L used by 23:31
const GOOD: Run[] = [
  { block: "A", pulse: 1, start: 1380, minutes: 10 },
  { block: "B", pulse: 1, start: 1391, minutes: 20 },
  { block: "A", pulse: 2, start: 1560, minutes: 10 },
];

const withRun = (i: number, change: Partial<Run>) => GOOD.map((run, j) => (i === j ? { ...run, ...change } : run));

it("finds nothing in a schedule that keeps every rule, in any order", () => {
  expect(verifyNight(PROGRAM, GOOD)).toEqual([]);
  expect(verifyNight(PROGRAM, [...GOOD].reverse())).toEqual([]);
});

it.each<[string, Partial<Program>, Run[], string[]]>([
  ["a missing pulse", {}, GOOD.slice(0, 2), ['block "A" has 1 pulses, needs 2']],
  [
    "a stranger",
    {},
    [...GOOD, { block: "C", pulse: 1, start: 1500, minutes: 5 }],
    ['block "C" is not of this program', 'block "C", pulse 1 at 01:00 is not whole in a window'],
  ],
  ["a pulse too short", {}, withRun(0, { minutes: 9 }), ['block "A", pulse 1 at 23:00 runs 9 min, needs 10']],
  ["a pulse too long", {}, withRun(2, { minutes: 11.5 }), ['block "A", pulse 2 at 02:00 runs 11.5 min, 10 are enough']],
  [
    "a start between minutes",
    {},
    withRun(2, { start: 1560.5 }),
    ['block "A", pulse 2 at 02:00.5 must start at a whole minute'],
  ],
  [
    "a pulse that ends outside",
    {},
    withRun(2, { start: 1581 }),
    ['block "A", pulse 2 at 02:21 is not whole in a window'],
  ],
  [
    "a pulse that starts before a window",
    {},
    withRun(2, { start: 1559 }),
    ['block "A", pulse 2 at 01:59 is not whole in a window'],
  ],
  ["a pulse a day too late", {}, withRun(2, { start: 3000 }), ['block "A", pulse 2 at 02:00 is not whole in a window']],
  [
    "two on a small pump",
    { apart: [] },
    withRun(1, { start: 1390 }),
    ['block "B", pulse 1 at 23:10 makes 0.4 L/min, the pump gives 0.2 L/min'],
  ],
  [
    "two that are kept apart",
    { pump: 20 },
    withRun(1, { start: 1390 }),
    ['block "A", pulse 1 at 23:00 runs together with block "B"'],
  ],
  [
    "a short rest",
    { windows: [{ start: 1380, end: 200 }], tank: { volume: 9, refill: 0 } },
    [GOOD[0]!, { block: "A", pulse: 2, start: 1409, minutes: 10 }, { block: "B", pulse: 1, start: 1420, minutes: 20 }],
    ['block "A", pulse 2 at 23:29 comes after a rest of 19 min, needs 20'],
  ],
  ["too much water", { limit: 6 }, GOOD, ["the day takes 0.1 kL, the limit is 0.006 kL"]],
  [
    "an empty tank",
    { tank: { volume: 4, refill: 1 } },
    GOOD,
    ['the tank is empty before block "B", pulse 1 at 23:11 ends'],
  ],
])("names %s", (_, change, schedule, broken) => {
  expect(verifyNight({ ...PROGRAM, ...change }, schedule)).toEqual(broken);
});

describe("rounds so that what is broken still shows", () => {
  // 7 mm at 15.02 mm/h takes 27.9627 min
  const block: Block = { name: "A", area: 1200, rate: 15.02, multiplier: 1, depth: 7, flow: 13_450 };
  const program: Program = { blocks: [block], pump: 22_800, windows: [{ start: 0, end: 300 }], limit: 6300 };
  const said = (minutes: number, more: Partial<Program> = {}) =>
    verifyNight({ ...program, ...more }, [{ block: "A", pulse: 1, start: 140, minutes }]);
  const at = 'block "A", pulse 1 at 02:20';

  it("the minutes, to a tenth, or a hundredth where the controller steps by the second", () => {
    expect(said(27.96)).toEqual([`${at} runs 27.9 min, needs 28`]);
    expect(said(27)).toEqual([`${at} runs 27 min, needs 28`]);
    expect(said(28)).toEqual([]);
    expect(said(29, { limit: 1e6 })).toEqual([`${at} runs 29 min, 28 are enough`]);
    expect(said(27.96, { step: 1 / 60 })).toEqual([`${at} runs 27.96 min, needs 27.97`]);
    expect(said(28, { step: 1 / 60 })).toEqual([`${at} runs 28 min, 27.97 are enough`]);
  });

  it("the flow in L/min and the water in kL", () => {
    // 13450 / 60 = 224.17 L/min, 13448 / 60 = 224.13 L/min; 224.17 x 28 = 6277 L
    expect(said(28, { pump: 13_448 })).toEqual([`${at} makes 224.2 L/min, the pump gives 224.1 L/min`]);
    expect(said(28, { limit: 6250 })).toEqual(["the day takes 6.3 kL, the limit is 6.25 kL"]);
  });
});
