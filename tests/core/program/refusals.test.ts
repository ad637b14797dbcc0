import { expect, it } from "vitest";
import { fitNight } from "../../../src/core/program/fit-night";
import type { Block, Program } from "../../../src/core/program/program";
import { valve } from "./small";

const BLOCK: Block = { name: "A", area: 100, rate: 12, multiplier: 1.4, depth: 5, takeUp: 4, rest: 30 };
const GOOD: Program = { blocks: [BLOCK, { ...BLOCK, name: "B" }], pump: 5000, windows: [{ start: 1200, end: 360 }] };
const block = (change: object): Partial<Program> => ({ blocks: [BLOCK, { ...BLOCK, name: "B", ...change }] });
const windows = (...pairs: [unknown, unknown][]): Partial<Program> => ({
  windows: pairs.map(([start, end]) => ({ start: start as number, end: end as number })),
});
const MINUTES = "be a whole number of minutes after midnight from 0 to";

it("takes the program that the refusals below start from", () => {
  expect(fitNight(GOOD).fits).toBe(true);
});

it.each<[Partial<Program>, string]>([
  [{ pump: 0 }, "pump must be more than 0 L/h, got 0"],
  [{ pump: Number.NaN }, "pump must be more than 0 L/h, got NaN"],
  [{ limit: -1 }, "limit must be more than 0 L, got -1"],
  [{ tank: { volume: 0, refill: 1 } }, "tank must be more than 0 L, got 0"],
  [{ tank: { volume: 5, refill: -1 } }, "refill must be 0 L/h or more, got -1"],
  [{ changeOver: -1 }, "change_over must be from 0 to 3600 s, got -1"],
  [{ step: 0 }, `step must be from ${1 / 60} to 5 min, got 0`],
  [windows(), "windows must hold at least 1 window, got 0"],
  [windows([-1, 60]), `start must ${MINUTES} 1439, got -1 in window 1`],
  [windows([1440, 60]), `start must ${MINUTES} 1439, got 1440 in window 1`],
  [windows([0, 60.5]), `end must ${MINUTES} 1440, got 60.5 in window 1`],
  [windows([0, "6:00"]), `end must ${MINUTES} 1440, got "6:00" in window 1`],
  [windows([60, 60]), 'end must differ from the start, got "01:00" in window 1'],
  [
    windows([1200, 360], [300, 420]),
    'windows must come one after another within 24 hours, got "05:00 to 07:00" in window 2',
  ],
  [block({ flow: 0 }), 'flow must be more than 0 L/h, got 0 in block "B"'],
  [block({ area: 0 }), 'area must be more than 0 m², got 0 in block "B"'],
  [block({ rate: null }), 'rate must be more than 0 mm/h, got a blank cell in block "B"'],
  [block({ multiplier: 0 }), 'multiplier must be more than 0, got 0 in block "B"'],
  [block({ depth: -5 }), 'depth must be 0 mm or more, got -5 in block "B"'],
  [block({ depth: undefined }), 'depth must be 0 mm or more, got a blank cell in block "B"'],
  [block({ takeUp: 0 }), 'take_up must be more than 0 mm, got 0 in block "B"'],
  [block({ rest: -1 }), 'rest must be 0 min or more, got -1 in block "B"'],
  [block({ name: "A" }), 'name must be a text that no other block has, got "A" in block 2'],
  [block({ name: " " }), 'name must be a text that no other block has, got " " in block 2'],
  [block({ takeUp: 600, depth: 400 }), 'depth must need at most 1440 min a pulse, not 2800, got 400 in block "B"'],
  [{ apart: [["A", "C"]] }, 'apart must name two blocks, got "C" in pair A, C'],
  [{ apart: [["A", "A"]] }, 'apart must name two different blocks, got "A" in pair A, A'],
  [{ blocks: Array.from({ length: 501 }, (_, i) => valve(String(i), 1, 1)) }, "blocks must be at most 500, got 501"],
])("refuses bad input (%#)", (change, message) => {
  expect(() => fitNight({ ...GOOD, ...change })).toThrow(message);
});
