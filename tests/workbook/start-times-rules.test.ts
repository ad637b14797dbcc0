import { beforeAll, describe, expect, it } from "vitest";
import { fitNight } from "../../src/core/program/fit-night";
import type { Program, Run } from "../../src/core/program/program";
import { verifyNight } from "../../src/core/program/verify-night";
import type { Entries } from "../../src/workbook/form/build";
import { PROGRAM } from "../../src/workbook/nursery/program/program";
import { NURSERY } from "../../src/workbook/nursery/start/start";
import { FIRST } from "../../src/workbook/nursery/start-times/places";
import { START_TIMES } from "../../src/workbook/nursery/start-times/start-times";
import { type Calculated, calculated } from "../support/audits";
import { DEMAND_STUB } from "../support/demand-stub";
import { nurseryPlan } from "../support/nursery-plans";
import { randomNumbers } from "../support/random";

interface Night {
  program: Program;
  entries: Entries;
  schedule: Run[];
}

const random = randomNumbers(31);
const among = (count: number) => Math.floor(random() * count);
const FITTED: Night[] = [3, 11, 22].map((index) => {
  const { program, entries } = nurseryPlan(index);
  return { program, entries, schedule: [...fitNight(program, 20_000).schedule] };
});

const withRuns = (night: Night, change: (run: Run, index: number) => Run): Night => ({
  ...night,
  schedule: night.schedule.map(change),
});
const typed = (night: Night, program: Partial<Program>, entries: Entries): Night => ({
  ...night,
  program: { ...night.program, ...program },
  entries: { ...night.entries, ...entries },
});

const CHANGES: Record<string, (night: Night) => Night> = {
  "as fitted": (night) => night,
  "three starts moved": (night) => {
    const moved = new Map([0, 1, 2].map(() => [among(night.schedule.length), among(180) - 60]));
    const first = night.program.windows[0]!.start;
    return withRuns(night, (run, index) => {
      const start = run.start + (moved.get(index) ?? 0);
      return { ...run, start: first + ((start - first + 1440) % 1440) };
    });
  },
  "every start a little earlier or later": (night) => {
    const first = night.program.windows[0]!.start;
    return withRuns(night, (run) => ({ ...run, start: Math.max(first, run.start + among(21) - 10) }));
  },
  "minutes changed": (night) =>
    withRuns(night, (run) => ({ ...run, minutes: Math.max(0.5, run.minutes + [0, -0.75, 7][among(3)]!) })),
  "pulses of a block the other way round": (night) => {
    const { block } = night.schedule.find(({ pulse }) => pulse === 2)!;
    const last = night.schedule.filter((run) => run.block === block).length;
    return withRuns(night, (run) => (run.block === block ? { ...run, pulse: last + 1 - run.pulse } : run));
  },
  "a pulse with a number too high": (night) =>
    withRuns(night, (run, index) => (index === night.schedule.length - 1 ? { ...run, pulse: run.pulse + 5 } : run)),
  "a small tank": (night) => {
    const volume = 500 * Math.round(fitNight(night.program, 1).litres / 1000);
    return typed(night, { tank: { volume, refill: 600 } }, { Tank_kL: volume / 1000, Tank_Refill_Lmin: 10 });
  },
  "every block kept apart from the next": (night) => {
    const names = night.program.blocks.map(({ name }) => name).slice(0, 13);
    const apart = names.slice(1).map((name, i) => [names[i]!, name] as [string, string]);
    return typed(night, { apart }, { Program_Apart: apart });
  },
  "long rests": (night) => {
    const lines = night.entries.Program_Blocks as (string | number)[][];
    return typed(
      night,
      { blocks: night.program.blocks.map((block) => ({ ...block, rest: 60 })) },
      { Program_Blocks: lines.map((line) => line.map((cell, i) => (i === 7 ? 60 : cell))) },
    );
  },
  "a long change-over": (night) => typed(night, { changeOver: 600 }, { Change_Over_s: 600 }),
  "a weak pump": (night) => {
    const pump = 60 * Math.round((0.7 * night.program.pump) / 60);
    return typed(night, { pump }, { Pump_Flow_Lmin: pump / 60 });
  },
};

const SAID: [verified: RegExp, native: RegExp][] = [
  [/is not whole in a window/, /^outside the hours$/],
  [/L\/min, the pump gives/, /^over the pump's flow$/],
  [/runs together with block/, /^runs with .+, kept apart$/],
  [/comes after a rest of/, /^rest too short$/],
  [/must be pulse \d+$/, /^should be pulse \d+$/],
  [/ min, needs /, /^too few minutes$/],
  [/ are enough$/, /^more minutes than needed$/],
  [/the tank is empty before/, /^tank empty before its end$/],
];

/** What core says of a run, pairs looked at from both sides. */
function verified({ program, schedule }: Night, run: Run): string[] {
  const turned = (program.apart ?? []).map(([one, other]): [string, string] => [other, one]);
  const broken = verifyNight({ ...program, apart: [...(program.apart ?? []), ...turned] }, schedule);
  const clock = `${String(Math.floor(run.start / 60) % 24).padStart(2, "0")}:${String(run.start % 60).padStart(2, "0")}`;
  return broken.filter((said) => said.includes(`block "${run.block}", pulse ${run.pulse} at ${clock} `));
}

const NIGHTS = Object.entries(CHANGES).flatMap(([title, change]) =>
  FITTED.map((night) => ({ title, night: change(night) })),
);

describe("the checks of Start times, calculated by LibreOffice", () => {
  let books: Calculated[];
  beforeAll(async () => {
    const entries = NIGHTS.map(({ night }): Entries => {
      const lines = night.schedule.map(({ block, pulse, start, minutes }) => [
        block,
        pulse,
        (start % 1440) / 1440,
        minutes,
      ]);
      return { ...night.entries, Start_Times: lines };
    });
    books = await calculated(entries, [NURSERY, DEMAND_STUB, PROGRAM, START_TIMES]);
  }, 600_000);

  it("find the lines that core's check of a night finds, each for a reason of core's", () => {
    const reasons = new Map<RegExp, number>();
    NIGHTS.forEach(({ title, night }, index) => {
      night.schedule.forEach((run, line) => {
        const native = String(books[index]!.at(`Start times!I${FIRST + line}`));
        const broken = verified(night, run);
        const place = `${title}, night ${index}, line ${line + 1}: ${native} | ${broken.join(" | ")}`;
        expect(native === "ok", place).toBe(broken.length === 0);
        if (native === "ok") return;
        const [rule, words] = SAID.find(([, said]) => said.test(native))!;
        expect(
          broken.some((said) => rule.test(said)),
          place,
        ).toBe(true);
        reasons.set(words, (reasons.get(words) ?? 0) + 1);
      });
    });
    expect(SAID.filter(([, words]) => !reasons.has(words))).toEqual([]);
  });

  it("say that the start times belong to the Program where core finds nothing, and only there", () => {
    NIGHTS.forEach(({ title, night }, index) => {
      const belongs = /^These start times belong to the Program/.test(String(books[index]!.at("Start times!A4")));
      expect([title, index, belongs]).toEqual([title, index, verifyNight(night.program, night.schedule).length === 0]);
    });
  });
});

describe("a night that takes more than the limit of the day", () => {
  it("is said so", async () => {
    const [{ entries, schedule }] = FITTED as [Night];
    const lines = schedule.map(({ block, pulse, start, minutes }) => [block, pulse, (start % 1440) / 1440, minutes]);
    const [book] = await calculated(
      [{ ...entries, Start_Times: lines, Day_Limit_kL: 1.5 }],
      [NURSERY, DEMAND_STUB, PROGRAM, START_TIMES],
    );
    const { litres } = fitNight(FITTED[0]!.program, 1);
    expect(book!.at("Start times!A4")).toBe(
      `These start times take ${Math.round(litres / 100) / 10} kL, but the daily limit is 1.5 kL.`,
    );
  });
});
