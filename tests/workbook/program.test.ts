import { beforeAll, describe, expect, it } from "vitest";
import { runTime } from "../../src/core/application/run-time";
import { fitNight } from "../../src/core/program/fit-night";
import { flowCurve } from "../../src/core/program/flow-curve";
import { jobs } from "../../src/core/program/jobs";
import { verifyNight } from "../../src/core/program/verify-night";
import { buildWorkbook, type Entries } from "../../src/workbook/build";
import { NURSERY } from "../../src/workbook/sheets/nursery";
import { PROGRAM } from "../../src/workbook/sheets/program";
import { CHECKS_FROM, FIRST_BLOCK } from "../../src/workbook/sheets/program-places";
import { START_TIMES } from "../../src/workbook/sheets/start-times";
import { type Calculated, calculated } from "../support/audits";
import { DEMAND_STUB } from "../support/demand-stub";
import { formulaResults } from "../support/formula-results";
import { converted } from "../support/libreoffice";
import { nurseryPlan } from "../support/nursery-plans";
import { plantedResults } from "../support/planted";

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
  let books: Map<string, string | number | boolean>[];
  beforeAll(async () => {
    const planted = plantedResults(SHEETS);
    const files = await Promise.all(PLANS.map(({ entries }) => buildWorkbook(SHEETS, entries, planted)));
    books = (await converted(files, "xlsx")).map(formulaResults) as typeof books;
  });

  it("give the run times, pulses, minutes, litres and flows of core", () => {
    PLANS.forEach(({ program }, index) => {
      const at = (letter: string, i: number) => books[index]!.get(`Program!${letter}${FIRST_BLOCK + i}`);
      const found = jobs(program);
      program.blocks.forEach(({ depth, rate, multiplier, area, flow }, i) => {
        const job = found[i]!;
        near(at("J", i), depth);
        near(at("K", i), runTime(depth, rate, multiplier));
        expect(at("L", i)).toBe(job.number);
        near(at("M", i), job.minutes);
        near(at("N", i), ((flow ?? area * rate) * job.number * job.minutes) / 60);
        near(at("O", i), (flow ?? area * rate) / 60);
        expect(at("P", i)).toBe("ok");
      });
    });
  });

  it("cut a run by the typed take-up, else by that of the group, else not at all", () => {
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
      } else expect(status).toMatch(/lines? needs? a look|^These start times take .* kL, but the limit of the day is/);
    });
  });
});

const [{ entries: good }] = PLANS as [(typeof PLANS)[0]];
const first = (line: (string | number)[]): Entries => ({ ...good, Program_Blocks: [line] });
const ROW = ["Bed 1", "", 400, 12, 1.4, 6, "", "", ""];
const changed = (column: number, value: string | number) => ROW.map((each, i) => (i === column ? value : each));
const SAYS = `P${FIRST_BLOCK}`;
const SETTINGS = `C${CHECKS_FROM + 1}`;
const WRONG: [string, Entries, string, string][] = [
  ["no name", first(changed(0, "")), SAYS, "needs a name"],
  ["no MAR", first(changed(3, "")), SAYS, "needs MAR"],
  ["a MAR of 0", first(changed(3, 0)), SAYS, "MAR must be more than 0 mm/h"],
  ["a negative area", first(changed(2, -3)), SAYS, "area must be more than 0 m²"],
  ["words for an area", first(changed(2, "large")), SAYS, "area must be more than 0 m²"],
  ["no area and no flow", first(changed(2, "")), SAYS, "needs an area or a flow"],
  ["a multiplier of 0", first(changed(4, 0)), SAYS, "multiplier must be more than 0"],
  ["a negative depth", first(changed(5, -1)), SAYS, "depth must be 0 mm or more"],
  ["words for a depth", first(changed(5, "much")), SAYS, "depth must be a number"],
  ["neither depth nor group", first(changed(5, "")), SAYS, "needs a depth or a group"],
  [
    "a group that is not on Demand",
    first(["Bed 1", "palms", 400, 12, 1.4, "", "", "", ""]),
    SAYS,
    "group is not on Demand",
  ],
  [
    "a group without a depth in the month",
    {
      ...first(["Bed 1", "ferns", 400, 12, 1.4, "", "", "", ""]),
      Demand_Depths: Array.from({ length: 12 }, () => ["needs pot tops"]),
    },
    SAYS,
    "needs Demand",
  ],
  [
    "a group and no month",
    { ...first(["Bed 1", "ferns", 400, 12, 1.4, "", "", "", ""]), Program_Month: "" },
    SAYS,
    "needs the month",
  ],
  ["a take-up of 0", first(changed(6, 0)), SAYS, "take-up must be more than 0 mm"],
  ["a take-up far too small", first(changed(6, 0.001)), SAYS, "over 1000 pulses: take-up?"],
  [
    "a take-up of 0 on Demand",
    { ...first(changed(1, "ferns")), Demand_Take_Up_mm: [[0]] },
    SAYS,
    "take-up on Demand must be over 0 mm",
  ],
  [
    "words for a take-up on Demand where one is typed",
    { ...first(ROW.map((each, i) => (i === 1 ? "ferns" : i === 6 ? 5 : each))), Demand_Take_Up_mm: [["little"]] },
    SAYS,
    "ok",
  ],
  ["a negative rest", first(changed(7, -5)), SAYS, "rest must be 0 min or more"],
  ["a flow of 0", first(changed(8, 0)), SAYS, "flow must be more than 0 L/min"],
  ["a pulse of days", first(changed(5, 900)), SAYS, "a pulse is longer than a day"],
  ["more flow than the pump", first(changed(8, 100000)), SAYS, "flow over the pump's"],
  ["no water wanted", first(changed(5, 0)), SAYS, "no water this month"],
  ["two blocks of one name", { ...good, Program_Blocks: [ROW, ROW] }, `P${FIRST_BLOCK + 1}`, "two blocks of this name"],
  ["a window of no length", { ...good, Program_Windows: [[0.5, 0.5]] }, "N5", "both times are the same"],
  [
    "half a window",
    {
      ...good,
      Program_Windows: [
        [0.5, ""],
        ["", ""],
      ],
    },
    "N5",
    "needs both times",
  ],
  [
    "words for a window",
    {
      ...good,
      Program_Windows: [
        ["dusk", "dawn"],
        ["", ""],
      ],
    },
    "N5",
    "must be times of day",
  ],
  [
    "overlapping windows",
    {
      ...good,
      Program_Windows: [
        [20 / 24, 2 / 24],
        [1 / 24, 5 / 24],
      ],
    },
    "N6",
    "overlaps an earlier line",
  ],
  [
    "windows over a day",
    {
      ...good,
      Program_Windows: [
        [20 / 24, 2 / 24],
        [3 / 24, 21 / 24],
      ],
    },
    "N6",
    "not within 24 hours",
  ],
  ["a pair with a stranger", { ...good, Program_Apart: [["Bed 1", "Bed x"]] }, "R5", "Bed x is no block"],
  ["half a pair", { ...good, Program_Apart: [["Bed 1", ""]] }, "R5", "needs two blocks"],
  [
    "one wrong pair among the checks",
    { ...good, Program_Apart: [["Bed 1", ""]] },
    `C${CHECKS_FROM + 3}`,
    "1 pair: see what is said there.",
  ],
  [
    "one line that is not whole among the checks",
    first(changed(3, "")),
    `C${CHECKS_FROM + 4}`,
    "1 line is not complete or not right: see what is said there.",
  ],
  ["a pair of one", { ...good, Program_Apart: [["Bed 1", "Bed 1"]] }, "R5", "twice the same block"],
  ["a month of 13", { ...good, Program_Month: 13 }, SETTINGS, "The month must be a whole number from 1 to 12."],
  ["a pump of 0", { ...good, Pump_Flow_Lmin: 0 }, SETTINGS, "The flow of the pump must be more than 0 L/min."],
  [
    "words for the pump",
    { ...good, Pump_Flow_Lmin: "big" },
    SETTINGS,
    "The flow of the pump must be more than 0 L/min.",
  ],
  ["a step of 0", { ...good, Controller_Step_min: 0 }, SETTINGS, "The controller's step must be from 1/60 to 5 min."],
  ["a negative change-over", { ...good, Change_Over_s: -1 }, SETTINGS, "The change-over must be from 0 to 3600 s."],
  ["a limit of 0", { ...good, Day_Limit_kL: 0 }, SETTINGS, "The limit of the day must be more than 0 kL."],
  ["a negative tank", { ...good, Tank_kL: -1 }, SETTINGS, "The tank must be more than 0 kL."],
  ["words for the refill", { ...good, Tank_Refill_Lmin: "bore" }, SETTINGS, "The refill must be 0 L/min or more."],
];

const lineOf = (...line: (string | number)[]): Entries => ({ ...first(ROW), Start_Times: [line] });
const WRONG_LINES: [string, Entries, string][] = [
  ["a block of no Program", lineOf("Bed 9", 1, 0.9, 20), "no such block"],
  ["a line without a block", lineOf("", 1, 0.9, 20), "needs a block"],
  ["a line without a start", lineOf("Bed 1", 1, "", 20), "needs start and minutes"],
  ["words for a start", lineOf("Bed 1", 1, "dusk", 20), "needs start and minutes"],
  ["negative minutes", lineOf("Bed 1", 1, 0.9, -20), "needs start and minutes"],
  ["a start far off", lineOf("Bed 1", 1, 1e300, 20), "needs start and minutes"],
  ["a start at noon", lineOf("Bed 1", 1, 0.5, 20), "outside the hours"],
  ["a small pump", { ...lineOf("Bed 1", 1, 0.9, 20), Pump_Flow_Lmin: 10 }, "over the pump's flow"],
];

describe("what is typed wrong in a Program", () => {
  let found: Calculated[];
  beforeAll(async () => {
    const programs = await calculated(
      WRONG.map(([, entries]) => entries).map(({ Start_Times, ...entries }) => entries as Entries),
      SHEETS.slice(0, -1),
    );
    found = [...programs, ...(await calculated([...WRONG_LINES.map(([, entries]) => entries), {}], SHEETS))];
  });

  it.each(WRONG_LINES.map(([title, , said], index) => ({ title, said, index })))(
    "sees $title among the start times",
    ({ said, index }) => {
      expect(found[WRONG.length + index]!.at("Start times!I6")).toBe(said);
    },
  );

  it.each(WRONG.map(([title, , place, said], index) => ({ title, place, said, index })))(
    "says what to do about $title",
    ({ place, said, index }) => {
      expect(found[index]!.at(`Program!${place}`)).toBe(said);
    },
  );

  it("never shows an error value", () => {
    const errors = found.flatMap(({ at, places }, index) =>
      places
        .filter((place) => /^(#|Err:)/.test(String(at(place))))
        .map((place) => [WRONG[index]?.[0], place, at(place)]),
    );
    expect(errors).toEqual([]);
  });

  it("says on a blank form only what it needs", () => {
    const { at, places } = found.at(-1)!;
    const said = new Set(
      places
        .filter((place) => /^(Program|Start times)!/.test(place) && !/![K-X]\d+$/.test(place))
        .map((place) => String(at(place))),
    );
    expect([...said].filter((text) => text && !/needs|^no |No start times yet/.test(text))).toEqual([]);
  });
});
