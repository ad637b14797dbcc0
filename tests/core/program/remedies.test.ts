import { describe, expect, it } from "vitest";
import { fitNight } from "../../../src/core/program/fit-night";
import type { Program } from "../../../src/core/program/program";
import { type Remedy, remedies } from "../../../src/core/program/remedies";
import { twelveMonths } from "../../../src/core/program/twelve-months";
import { valve } from "./small";

/** At 60 mm/h a depth of 1 mm runs a minute: 30 min x 1.5 = 45 min, and 30 min. */
const UNEVEN = { ...valve("A", 10, 30), takeUp: 100, multiplier: 1.5 };
const EVEN = valve("B", 10, 30);
const PROGRAM: Program = { blocks: [UNEVEN, EVEN], pump: 15, windows: [{ start: 0, end: 70 }] };

function found(program: Program): Remedy[] {
  return [...remedies(program, fitNight(program), 5000)];
}

describe("remedies", () => {
  it("finds the pump, the longer window, the more uniform block and the block less, each by trying", () => {
    // 45 + 30 = 75 min in 70: 5 min short; both together need 20 L/h; 30 x 1.33 = 39.9, so 40 + 30 = 70 min
    const all = found(PROGRAM);
    expect(all).toEqual([
      { change: "pump", to: 20 },
      { change: "window", minutes: 5 },
      { change: "multiplier", block: "A", to: 1.33 },
      { change: "block", block: "B" },
      { change: "block", block: "A" },
    ]);
  });

  it("finds the pair that must be let together", () => {
    const program: Program = { ...PROGRAM, pump: 20, apart: [["A", "B"]] };
    expect(found(program)).toContainEqual({ change: "apart", pair: ["A", "B"] });
  });

  it("finds the pump where one block alone needs more than it gives, and nothing that does not help", () => {
    expect(found({ ...PROGRAM, pump: 9, windows: [{ start: 0, end: 80 }] })).toEqual([{ change: "pump", to: 11 }]);
  });

  it("finds the limit of the day, and the multiplier that keeps it", () => {
    // 10 L/h for 75 min = 12.5 L; 11.7 L are 70.2 min, so A runs 40 min: 1.33
    expect(found({ ...PROGRAM, windows: [{ start: 0, end: 80 }], limit: 11.7 })).toEqual([
      { change: "limit", to: 13 },
      { change: "multiplier", block: "A", to: 1.33 },
      { change: "block", block: "B" },
      { change: "block", block: "A" },
    ]);
  });

  it("finds the tank", () => {
    const program: Program = { ...PROGRAM, windows: [{ start: 0, end: 80 }], tank: { volume: 8, refill: 0 } };
    expect(found(program)).toContainEqual({ change: "tank", to: 13 });
  });

  it("gives no longer window past 24 hours", () => {
    const blocks = [valve("A", 10, 1000), valve("B", 10, 600)];
    const all = found({ blocks, pump: 15, windows: [{ start: 0, end: 1440 }] });
    expect(all.map(({ change }) => change)).toEqual(["pump", "block", "block"]);
  });

  it("gives changes that make it fit when they are made", () => {
    const changed: Program[] = found(PROGRAM).map((remedy) => {
      if (remedy.change === "pump") return { ...PROGRAM, pump: remedy.to };
      if (remedy.change === "window") return { ...PROGRAM, windows: [{ start: 0, end: 70 + remedy.minutes }] };
      if (remedy.change === "block")
        return { ...PROGRAM, blocks: PROGRAM.blocks.filter(({ name }) => name !== remedy.block) };
      return { ...PROGRAM, blocks: [{ ...UNEVEN, multiplier: 1.33 }, EVEN] };
    });
    expect(changed.map((program) => fitNight(program).fits)).toEqual(changed.map(() => true));
  });
});

describe("twelveMonths", () => {
  it("says which months do not fit, which are missing and what is wrong, and computes the others", () => {
    const months = Array.from({ length: 12 }, (): Program | undefined => ({ ...PROGRAM, blocks: [EVEN] }));
    months[0] = PROGRAM;
    months[5] = undefined;
    months[6] = { ...PROGRAM, pump: 0 };
    const year = [...twelveMonths(months, 5000)];
    expect(year.map(({ month }) => month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(year.map(({ night }) => night?.fits)).toEqual([
      false,
      true,
      true,
      true,
      true,
      undefined,
      undefined,
      true,
      true,
      true,
      true,
      true,
    ]);
    expect(year[5]?.problem).toBe("month 6 is missing");
    expect(year[6]?.problem).toBe("pump must be more than 0 L/h, got 0");
  });

  it("takes twelve", () => {
    expect(() => [...twelveMonths([PROGRAM])]).toThrow("months must be 12, got 1");
  });
});
