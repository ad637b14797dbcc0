import { describe, expect, it } from "vitest";
import { verifyNight } from "../../src/core/program/verify-night";
import type { Said } from "../../src/taskpane/night/night-messages";
import { nightRun } from "../../src/taskpane/night/night-run";

/** Twelve blocks of odd lengths, whose bound is not met at once. */
const PROGRAM = {
  blocks: Array.from({ length: 12 }, (_, i) => ({
    name: `Bed ${i}`,
    area: 41 + 7 * i,
    rate: 60,
    multiplier: 1,
    depth: 11 + i,
    takeUp: 3,
    rest: 7,
  })),
  pump: 190 * 60,
  windows: [{ start: 1200, end: 480 }],
};

describe("work beside the page", () => {
  it("leaves the best night so far when it is stopped, and that keeps every rule", async () => {
    const heard: Said[] = [];
    const run = nightRun({ kind: "fit", program: PROGRAM }, (said) => heard.push(said));
    run.stop();
    expect(await run.finished).toBe(false);
    const last = heard.at(-1)!;
    if (last.kind !== "night") throw new Error(last.kind);
    expect(last.night.placed).toBeLessThan(100_000);
    expect(verifyNight(PROGRAM, last.night.schedule)).toEqual([]);
  });

  it("tells how far it is, and that it came to its end", async () => {
    const placed: number[] = [];
    const run = nightRun({ kind: "fit", program: PROGRAM }, (said) => {
      if (said.kind === "night") placed.push(said.night.placed);
    });
    expect(await run.finished).toBe(true);
    expect(placed.length).toBeGreaterThan(5);
    expect([...placed].sort((a, b) => a - b)).toEqual(placed);
  });

  it("fails in words where the program is wrong", async () => {
    const run = nightRun({ kind: "fit", program: { ...PROGRAM, pump: 0 } }, () => {});
    await expect(run.finished).rejects.toThrow("pump must be more than 0 L/h, got 0");
  });
});
