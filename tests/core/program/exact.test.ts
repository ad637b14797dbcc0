import loadHighs from "highs";
import { expect, it } from "vitest";
import { bound } from "../../../src/core/program/bound";
import { fitNight } from "../../../src/core/program/fit-night";
import { spans } from "../../../src/core/program/spans";
import { taskOf } from "../../../src/core/program/task";
import { verifyNight } from "../../../src/core/program/verify-night";
import { nursery } from "../../bench/nurseries";
import { endsBy } from "./every-order";
import { exactFinish } from "./exact-night";
import { smallProgram } from "./small";

const SEEDS = Array.from({ length: 25 }, (_, i) => i + 1);
const NURSERIES = Array.from({ length: 300 }, (_, i) => i);
/** Of the nurseries of up to 8 blocks, one in nine; all of them are in the bench. */
const SMALL = NURSERIES.filter((i) => nursery(i).blocks.length <= 8 && i % 27 === 0);
const MANY_STATES = 1_000_000;

it("finishes when HiGHS does, and the exhaustive search too", async () => {
  const highs = await loadHighs();
  for (const seed of SEEDS) {
    const program = smallProgram(seed);
    const night = fitNight(program, 20_000);
    const line = spans(program.windows);
    expect(verifyNight(program, night.schedule)).toEqual([]);
    const finish = exactFinish(highs, program, line, night.finish);
    expect(night.finish, `program ${seed}`).toBe(finish);
    expect(endsBy(program, line, finish - 1, MANY_STATES)).toBe("none");
    expect(endsBy(program, line, finish, MANY_STATES)).toBe(finish);
  }
});

it.each(SMALL)("finishes nursery %i within 2 min of the earliest that there is, and never before its bound", (i) => {
  const program = nursery(i);
  const night = fitNight(program);
  const line = spans(program.windows);
  if (!night.fits) line.at(-1)!.end = night.finish;
  expect(bound(taskOf(program).task)).toBe(night.bound);
  if (night.gap > 0) expect(endsBy(program, line, night.bound - 1, MANY_STATES)).toBe("none");
  if (night.gap > 2) expect(endsBy(program, line, night.finish - 3, MANY_STATES)).toBe("none");
});
