import { describe, expect, it } from "vitest";
import { fitNight } from "../../src/core/program/fit-night";
import type { Program } from "../../src/core/program/program";
import { fitWords, lackWords, shortWords, titleWords } from "../../src/taskpane/night/night-words";

/** 60 min at 6000 L/h: 6000 L. */
const PROGRAM: Program = {
  blocks: [{ name: "Bed 1", area: 100, rate: 60, multiplier: 1, depth: 60 }],
  pump: 12_000,
  windows: [{ start: 1200, end: 1320 }],
};
const lacking = (more: Partial<Program>) => {
  const program = { ...PROGRAM, ...more };
  return shortWords(program, fitNight(program))[0];
};

describe("the words of a night", () => {
  it("name the day's limit and the tank only where they are", () => {
    expect(lacking({ limit: 5000 })).toBe("1 kL more than the day's limit");
    expect(lacking({ tank: { volume: 5000, refill: 0 } })).toBe("1 kL more than the tank has");
    expect(lacking({ limit: 5000, tank: { volume: 5000, refill: 0 } })).toBe(
      "1 kL more than the day's limit or the tank has",
    );
  });

  it("say how many blocks are larger than the pump, and the largest", () => {
    const bed = (name: string, flow: number, depth = 5) => ({ ...PROGRAM.blocks[0]!, name, flow: flow * 60, depth });
    const blocks = [bed("Low Bed", 160), bed("Hill Top", 210), bed("Shed Row", 90), bed("Dry Row", 300, 0)];
    expect(lacking({ blocks, pump: 150 * 60 })).toBe(
      "2 of 3 blocks want more than the pump gives; the largest: Hill Top, 210 L/min, 60 L/min more",
    );
    expect(lacking({ blocks, pump: 80 * 60 })).toMatch(
      /^all 3 blocks want more than the pump gives; the largest: Hill/,
    );
    expect(lacking({ blocks, pump: 170 * 60 })).toBe("Hill Top wants 210 L/min, 40 L/min more than the pump gives");
  });

  it("say the water that is over in kL with one decimal, rounded up", () => {
    expect(lacking({ limit: 4820 })).toBe("1.2 kL more than the day's limit");
  });

  it("name three of the blocks that are left out, and what else the Program needs", () => {
    const stated = { program: PROGRAM, month: 7, wrong: [], missing: ["a depth for 4 blocks"] };
    const leftOut = ["A", "B", "C", "D"].map((name) => `${name} (needs a depth)`);
    expect(lackWords({ ...stated, leftOut })).toBe(
      "4 of 5 blocks are left out: A (needs a depth), B (needs a depth), C (needs a depth) and 1 more",
    );
    const missing = ["a second block for the pair in Program!P5"];
    expect(lackWords({ ...stated, missing, leftOut: [] })).toBe(`the Program still needs ${missing}`);
    expect(lackWords({ ...stated, missing: [], leftOut: [] })).toBe("");
    const [night, lack] = [fitNight({ ...PROGRAM, limit: 5000 }), "1 of 2 blocks is left out: A (needs a depth)"];
    expect(fitWords(PROGRAM, night, lack)).toMatch(/^It does not fit: .* Besides, 1 of 2 blocks is left out: A/);
  });

  it("say what is left of the allowed hours, without those between them", () => {
    // done at 21:00: an hour of the first window and 30 min of the second, 05:00 to 05:30, are left
    const program = { ...PROGRAM, windows: [...PROGRAM.windows, { start: 300, end: 330 }] };
    const said = "It fits: finished at 21:00; 1 h 30 min of the allowed hours are left.";
    expect(fitWords(program, fitNight(program), "")).toBe(said);
  });

  it("say what a picture belongs to", () => {
    expect(titleWords(PROGRAM, 7, "Wattle Flat")).toBe("Wattle Flat · July night · pump 200 L/min");
    expect(titleWords(PROGRAM, null, "")).toBe("Night · pump 200 L/min");
  });
});
