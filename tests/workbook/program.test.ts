import { beforeAll, describe, expect, it } from "vitest";
import { runTime } from "../../src/core/application/run-time";
import { fitNight } from "../../src/core/program/fit-night";
import { flowCurve } from "../../src/core/program/flow-curve";
import { jobs } from "../../src/core/program/jobs";
import { verifyNight } from "../../src/core/program/verify-night";
import type { Entries, Results } from "../../src/workbook/form/build";
import { FIRST_BLOCK } from "../../src/workbook/nursery/program/places";
import { PROGRAM } from "../../src/workbook/nursery/program/program";
import { NURSERY } from "../../src/workbook/nursery/start/start";
import { START_TIMES } from "../../src/workbook/nursery/start-times/start-times";
import { DEMAND_STUB } from "../support/demand-stub";
import { nurseryPlan } from "../support/nursery-plans";
import { recalculatedEntries } from "../support/recalculated";

const SHEETS = [NURSERY, DEMAND_STUB, PROGRAM, START_TIMES];
const PLANS = Array.from({ length: 24 }, (_, index) => {
  const plan = nurseryPlan(index);
  const night = fitNight(plan.program, 20_000);
  const lines = night.schedule.slice(0, 240);
  const written = lines.map(({ block, pulse, start, minutes }) => [block, pulse, start / 1440, minutes]);
  return { ...plan, night, lines, entries: { ...plan.entries, Start_Times: written } satisfies Entries };
});
const FIRST_LINE = 6;

/** Off by 1e-9 of the value at most. */
const near = (found: unknown, expected: number) =>
  expect(Math.abs(Number(found) - expected), `${found} against ${expected}`).toBeLessThanOrEqual(
    1e-9 * Math.max(1, Math.abs(expected)),
  );

describe("Program and Start times, calculated by LibreOffice with wrong values planted", () => {
  let books: Results[];
  beforeAll(async () => {
    books = await recalculatedEntries(
      SHEETS,
      PLANS.map(({ entries }) => entries),
    );
  });

  it("give the run times, pulses, minutes, litres and flows of core", () => {
    PLANS.forEach(({ program }, index) => {
      const at = (letter: string, i: number) => books[index]!.get(`Program!${letter}${FIRST_BLOCK + i}`);
      const found = jobs(program);
      program.blocks.forEach(({ depth, rate, multiplier, area, flow, rest = 0 }, i) => {
        const job = found[i]!;
        near(at("J", i), depth);
        near(at("K", i), runTime(depth, rate, multiplier));
        expect(at("L", i)).toBe(job.number);
        near(at("M", i), job.minutes);
        near(at("N", i), ((flow ?? area * rate) * job.number * job.minutes) / 60);
        near(at("O", i), (flow ?? area * rate) / 60);
        expect(at("P", i)).toBe(job.number > 1 && rest === 0 ? "ok, but pulses without a rest" : "ok");
      });
    });
  });

  it("cut a run by the typed depth per pulse, else by that of the group, else not at all", () => {
    const kinds = PLANS.flatMap(({ entries }: { entries: Entries }) =>
      (entries.Program_Blocks as (string | number)[][]).map((line) => {
        const group = (entries.Demand_Groups as string[][])[0]!.indexOf(String(line[1]));
        const ofGroup = (entries.Demand_Take_Up_mm as (number | "")[][])[0]![group] ?? "";
        return `${line[6] === "" ? "blank" : "typed"}, ${ofGroup === "" ? "blank" : "of the group"}`;
      }),
    );
    expect([...new Set(kinds)].sort()).toEqual([
      "blank, blank",
      "blank, of the group",
      "typed, blank",
      "typed, of the group",
    ]);
    PLANS.forEach(({ program }, index) => {
      program.blocks.forEach(({ takeUp, depth, multiplier }, i) => {
        // pulses of at most the depth that the mix takes up; the depth is that which the mean can gets
        const expected = takeUp === undefined ? 1 : Math.ceil((depth * multiplier) / takeUp - 1e-9);
        expect(books[index]!.get(`Program!L${FIRST_BLOCK + i}`)).toBe(Math.max(1, expected));
      });
    });
  });

  it("add up the day as core does", () => {
    PLANS.forEach(({ program, night }, index) => {
      const named = (row: number) => books[index]!.get(`Program!C${row}`);
      near(Number(named(13)) * 1000, fitNight(program, 1).litres);
      near(Number(named(14)) * 1000, program.limit! - night.litres);
      const { windows, tank, pump } = program;
      const length = (start: number, end: number) => (end - start + 1440) % 1440 || 1440;
      const span = length(windows[0]!.start, windows.at(-1)!.end) / 60;
      near(Number(named(15)) * 1000, tank!.volume + tank!.refill * span);
      near(Number(named(16)) * 60, Math.max(...program.blocks.map(({ flow, area, rate }) => flow ?? area * rate)));
      near(
        Number(named(17)) * 60,
        windows.reduce((sum, { start, end }) => sum + length(start, end), 0),
      );
      near(Number(named(18)), night.litres / pump);
    });
  });

  it("see of each line whether it is inside the hours, and the flow of all that run at its start", () => {
    PLANS.forEach(({ program, night, lines }, index) => {
      const at = (letter: string, i: number) => books[index]!.get(`Start times!${letter}${FIRST_LINE + i}`);
      if (lines.length < night.schedule.length || night.finish - program.windows[0]!.start > 1440) return;
      const curve = flowCurve(program, night.schedule);
      const late = program.windows.at(-1)!;
      lines.forEach(({ start, minutes }, i) => {
        const flow = curve.filter(({ minute }) => minute <= start).at(-1)!.flow;
        if (!program.changeOver) near(Number(at("H", i)) * 60, flow);
        const end = start + minutes;
        const after = end - program.windows[0]!.start > ((late.end - program.windows[0]!.start + 1440) % 1440 || 1440);
        expect([index, i, at("I", i) === "outside the hours"]).toEqual([index, i, after]);
        if (night.fits) expect([index, i, at("I", i)]).toEqual([index, i, "ok"]);
      });
    });
  });

  it("say whether the start times belong to the Program", () => {
    PLANS.forEach(({ program, night, lines }, index) => {
      const status = String(books[index]!.get("Start times!A4"));
      if (lines.length < night.schedule.length) expect(status).toContain("Fit the night anew.");
      else if (night.fits) {
        expect(status).toMatch(/^These start times belong to the Program/);
        expect(verifyNight(program, night.schedule)).toEqual([]);
      } else expect(status).toMatch(/lines? needs? a look|^These start times take .* kL, but the daily limit is/);
    });
  });
});
