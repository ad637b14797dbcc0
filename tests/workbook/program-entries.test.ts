import { describe, expect, it } from "vitest";
import type { Input } from "../../src/cells/cell";
import { fitNight } from "../../src/core/program/fit-night";
import { verifyNight } from "../../src/core/program/verify-night";
import { PROGRAM_SHEET } from "../../src/taskpane/night/program-sheet";
import { readNow } from "../../src/taskpane/workbook/reading";
import { programOf } from "../../src/workbook/nursery/program/entries";
import { cellOf, nightBook, SMALL } from "../taskpane/night-book";

const read = async (entries: Record<string, Input[][]>, month?: number) =>
  programOf((await readNow(nightBook(entries), PROGRAM_SHEET))!, month);
const block = (...line: Input[]) => ({ ...SMALL, Program_Blocks: [...SMALL.Program_Blocks!, line] });
const at = (name: string, line: number, column: number) => {
  const { sheet, address } = cellOf(name, line, column);
  return `${sheet}!${address}`;
};

describe("the program that the sheets state", () => {
  it("has the units of core, and the depth of a group in the month", async () => {
    const { program, wrong, missing, month } = await read({
      ...SMALL,
      Change_Over_s: [[30]],
      Controller_Step_min: [[0.5]],
      Day_Limit_kL: [[80]],
      Tank_kL: [[40]],
      Tank_Refill_Lmin: [[50]],
      Program_Apart: [["Bed 1", " Bed 2"]],
    });
    expect([wrong, missing, month]).toEqual([[], [], 7]);
    expect(program).toEqual({
      blocks: [
        { name: "Bed 1", area: 100, rate: 60, multiplier: 1, depth: 20 },
        { name: "Bed 2", area: 100, rate: 60, multiplier: 1, depth: 40, takeUp: 20, rest: 10 },
        { name: "=Bed 3", area: 100, rate: 60, multiplier: 1, depth: 30 },
      ],
      pump: 12_000, // 200 L/min
      windows: [{ start: 1200, end: 1320 }],
      apart: [["Bed 1", "Bed 2"]],
      changeOver: 30,
      step: 0.5,
      limit: 80_000,
      tank: { volume: 40_000, refill: 3000 },
    });
    expect(verifyNight(program!, fitNight(program!).schedule)).toEqual([]);
    expect((await read(SMALL, 1)).program!.blocks[2]!.depth).toBe(90);
  });

  it("takes the typed depth per pulse before the group's, and the group's where none is typed", async () => {
    const lines = [
      ["Bed 4", "ferns", 100, 60, 1, 5, "", "", ""],
      ["Bed 5", "ferns", 100, 60, 1, 5, 3, "", ""],
      ["Bed 6", "", 100, 60, 1, 5, "", "", ""],
    ];
    const takeUps = async (ofGroup: Input[]) => {
      const { program, wrong } = await read({ ...SMALL, Program_Blocks: lines, Demand_Take_Up_mm: [ofGroup] });
      return [program?.blocks.map(({ takeUp }) => takeUp), wrong];
    };
    expect(await takeUps([4])).toEqual([[4, 3, undefined], []]);
    expect(await takeUps([])).toEqual([[undefined, 3, undefined], []]);
    const place = at("Demand_Take_Up_mm", 0, 0);
    expect((await takeUps([0]))[1]).toEqual([`depth per pulse must be more than 0 mm, got 0 in ${place}`]);
  });

  it("takes a typed flow in L/min, also without an area", async () => {
    const { program } = await read(block("Bed 4", "", "", 12, 1.5, 6, "", "", 90));
    expect(program!.blocks[3]).toMatchObject({ name: "Bed 4", flow: 5400, rate: 12 });
  });

  it("computes the others and names a half-filled line with its cell", async () => {
    const { program, missing, wrong } = await read(block("Bed 4", "", "", "", 1.5, 6, "", "", ""));
    expect(program!.blocks.map(({ name }) => name)).toEqual(["Bed 1", "Bed 2", "=Bed 3"]);
    expect(missing).toEqual([`MAR, an area or a flow for Bed 4 in ${at("Program_Blocks", 3, 0)}`]);
    expect(wrong).toEqual([]);
  });

  it("says which group has no depth, with the words of Demand", async () => {
    const depths = Array.from({ length: 12 }, () => ["needs pot tops"]);
    const { program, missing, leftOut } = await read({ ...SMALL, Demand_Depths: depths });
    expect(program!.blocks).toHaveLength(2);
    expect(leftOut).toEqual(["=Bed 3 (needs the depth of ferns in July)"]);
    expect(missing).toEqual([
      `the depth of ferns in July (${at("Demand_Depths", 6, 0)}: needs pot tops) for =Bed 3 in ${at("Program_Blocks", 2, 0)}`,
    ]);
    expect((await read({ ...SMALL, Program_Month: [] })).missing).toEqual([
      `the month (${at("Program_Month", 0, 0)}) for =Bed 3 in ${at("Program_Blocks", 2, 0)}`,
    ]);
  });

  it("says once what several blocks lack, with their number", async () => {
    const lines = [1, 2, 3].map((bed) => [`Bed ${bed}`, "ferns", 100, 60, 1]);
    const { missing } = await read({ ...SMALL, Program_Blocks: lines, Program_Month: [] });
    expect(missing).toEqual([
      `the month (${at("Program_Month", 0, 0)}) for 3 blocks, the first is Bed 1 in ${at("Program_Blocks", 0, 0)}`,
    ]);
  });

  it("names on a blank form only what it needs", async () => {
    const { program, missing, wrong } = await read({});
    expect([program, wrong]).toEqual([null, []]);
    expect(missing).toEqual([
      `the flow of the pump in ${at("Pump_Flow_Lmin", 0, 0)}`,
      `hours when water may run in ${at("Program_Windows", 0, 0)}`,
    ]);
  });

  const first = (column: number) => at("Program_Blocks", 3, column);
  const windows = (...lines: Input[][]) => ({ ...SMALL, Program_Windows: lines });
  it.each<[string, Record<string, Input[][]>, string]>([
    ["a negative area", block("B", "", -3, 60, 1, 5), `area must be more than 0 m², got -3 in ${first(2)}`],
    ["words for an area", block("B", "", "large", 60, 1, 5), `area must be more than 0 m², got "large" in ${first(2)}`],
    ["a MAR of 0", block("B", "", 100, 0, 1, 5), `MAR must be more than 0 mm/h, got 0 in ${first(3)}`],
    ["a multiplier of 0", block("B", "", 100, 60, 0, 5), `multiplier must be more than 0, got 0 in ${first(4)}`],
    ["a negative depth", block("B", "", 100, 60, 1, -5), `depth must be 0 mm or more, got -5 in ${first(5)}`],
    [
      "a depth per pulse of 0",
      block("B", "", 100, 60, 1, 5, 0),
      `depth per pulse must be more than 0 mm, got 0 in ${first(6)}`,
    ],
    ["a negative rest", block("B", "", 100, 60, 1, 5, 5, -1), `rest must be 0 min or more, got -1 in ${first(7)}`],
    ["a flow of 0", block("B", "", 100, 60, 1, 5, "", "", 0), `flow must be more than 0 L/min, got 0 in ${first(8)}`],
    [
      "a group that is not there",
      block("B", "palms", 100, 60, 1),
      `group must be one that Demand has, got "palms" in ${first(1)}`,
    ],
    [
      "two blocks of one name",
      block("bed 1", "", 100, 60, 1, 5),
      `name must be one that no other block has, got "bed 1" in ${first(0)}`,
    ],
    [
      "a pulse of days",
      block("B", "", 100, 60, 1, 2000),
      `depth must need at most 1440 min a pulse, not 2000, got 2000 in ${first(0)}:${first(8).split("!")[1]}`,
    ],
    [
      "a pump of 0",
      { ...SMALL, Pump_Flow_Lmin: [[0]] },
      `pump must be more than 0 L/min, got 0 in ${at("Pump_Flow_Lmin", 0, 0)}`,
    ],
    [
      "a month of 13",
      { ...SMALL, Program_Month: [[13]] },
      `month must be from 1 to 12, got 13 in ${at("Program_Month", 0, 0)}`,
    ],
    [
      "half a month",
      { ...SMALL, Program_Month: [[1.5]] },
      `month must be a whole number from 1 to 12, got 1.5 in ${at("Program_Month", 0, 0)}`,
    ],
    [
      "a long change-over",
      { ...SMALL, Change_Over_s: [[4000]] },
      `change_over must be from 0 to 3600 s, got 4000 in ${at("Change_Over_s", 0, 0)}`,
    ],
    [
      "a step of 0",
      { ...SMALL, Controller_Step_min: [[0]] },
      `step must be from 0.016666666666666666 to 5 min, got 0 in ${at("Controller_Step_min", 0, 0)}`,
    ],
    [
      "a limit of 0",
      { ...SMALL, Day_Limit_kL: [[0]] },
      `limit must be more than 0 kL, got 0 in ${at("Day_Limit_kL", 0, 0)}`,
    ],
    ["a negative tank", { ...SMALL, Tank_kL: [[-1]] }, `tank must be more than 0 kL, got -1 in ${at("Tank_kL", 0, 0)}`],
    [
      "words for hours",
      windows(["dusk", 0.9]),
      `start must be a time of day from 0:00 to 24:00, got "dusk" in ${at("Program_Windows", 0, 0)}`,
    ],
    [
      "hours of no length",
      windows([0.5, 0.5]),
      `end must differ from the start, got "12:00" in ${at("Program_Windows", 0, 0)}:${cellOf("Program_Windows", 0, 1).address}`,
    ],
    [
      "overlapping hours",
      windows([0.75, 0.9], [0.85, 0.95]),
      `windows must come one after another within 24 hours, got "20:24 to 22:48" in ${at("Program_Windows", 1, 0)}:${cellOf("Program_Windows", 1, 1).address}`,
    ],
    [
      "a pair with a stranger",
      {
        ...SMALL,
        Program_Apart: [
          ["Bed 1", "Bed 2"],
          ["Bed 1", "Bed x"],
        ],
      },
      `line 2 of the blocks that may not run together must name two blocks of the Program, got "Bed x" in ${at("Program_Apart", 1, 1)}`,
    ],
    [
      "a pair of one",
      { ...SMALL, Program_Apart: [["Bed 1", "bed 1"]] },
      `line 1 of the blocks that may not run together must name two different blocks, got "bed 1" in ${at("Program_Apart", 0, 1)}`,
    ],
  ])("refuses %s and names the cell", async (_, entries, said) => {
    const { program, wrong } = await read(entries);
    expect(wrong).toEqual([said]);
    expect(program).toBeNull();
  });

  it("is nothing where the workbook has no Program", async () => {
    const host = nightBook({});
    await host.removeSheet("Program");
    expect(await readNow(host, PROGRAM_SHEET)).toBeNull();
  });
});
