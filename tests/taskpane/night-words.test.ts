import { describe, expect, it } from "vitest";
import { fitNight } from "../../src/core/program/fit-night";
import type { Program } from "../../src/core/program/program";
import { shortWords, titleWords } from "../../src/taskpane/night/night-words";

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
    expect(lacking({ limit: 5000 })).toBe("1,000 L more than the day's limit");
    expect(lacking({ tank: { volume: 5000, refill: 0 } })).toBe("1,000 L more than the tank has");
    expect(lacking({ limit: 5000, tank: { volume: 5000, refill: 0 } })).toBe(
      "1,000 L more than the day's limit or the tank has",
    );
  });

  it("say what a picture belongs to", () => {
    expect(titleWords(PROGRAM, 7, "Wattle Flat")).toBe("Wattle Flat · July night · pump 200 L/min");
    expect(titleWords(PROGRAM, null, "")).toBe("Night · pump 200 L/min");
  });
});
