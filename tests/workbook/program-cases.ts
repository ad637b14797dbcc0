import type { Entries } from "../../src/workbook/form/build";
import { CHECKS_FROM, FIRST_BLOCK } from "../../src/workbook/nursery/program/places";
import { nurseryPlan } from "../support/nursery-plans";

const good: Entries = nurseryPlan(0).entries;
const first = (line: (string | number)[]): Entries => ({ ...good, Program_Blocks: [line] });
const ROW = ["Bed 1", "", 400, 12, 1.4, 6, "", "", ""];
const changed = (column: number, value: string | number) => ROW.map((each, i) => (i === column ? value : each));
const SAYS = `P${FIRST_BLOCK}`;
const SETTINGS = `C${CHECKS_FROM + 1}`;
/** What is typed, and what is said of it where. */
export const WRONG: [string, Entries, string, string][] = [
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
  ["a depth per pulse of 0", first(changed(6, 0)), SAYS, "depth per pulse must be more than 0 mm"],
  ["a depth per pulse far too small", first(changed(6, 0.001)), SAYS, "over 1000 pulses: depth per pulse?"],
  [
    "a depth per pulse of 0 on Demand",
    { ...first(changed(1, "ferns")), Demand_Take_Up_mm: [[0]] },
    SAYS,
    "depth per pulse on Demand must be over 0 mm",
  ],
  [
    "words for a depth per pulse on Demand where one is typed",
    { ...first(ROW.map((each, i) => (i === 1 ? "ferns" : i === 6 ? 5 : each))), Demand_Take_Up_mm: [["little"]] },
    SAYS,
    "ok, but pulses without a rest",
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
    "1 line is incomplete or wrong: see what is said there.",
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
  ["a limit of 0", { ...good, Day_Limit_kL: 0 }, SETTINGS, "The daily limit must be more than 0 kL."],
  ["a negative tank", { ...good, Tank_kL: -1 }, SETTINGS, "The tank must be more than 0 kL."],
  ["words for the refill", { ...good, Tank_Refill_Lmin: "bore" }, SETTINGS, "The refill must be 0 L/min or more."],
];

const lineOf = (...line: (string | number)[]): Entries => ({ ...first(ROW), Start_Times: [line] });
/** Lines of start times, and what is said of them. */
export const WRONG_LINES: [string, Entries, string][] = [
  ["a block of no Program", lineOf("Bed 9", 1, 0.9, 20), "no such block"],
  ["a line without a block", lineOf("", 1, 0.9, 20), "needs a block"],
  ["a line without a start", lineOf("Bed 1", 1, "", 20), "needs start and minutes"],
  ["words for a start", lineOf("Bed 1", 1, "dusk", 20), "needs start and minutes"],
  ["negative minutes", lineOf("Bed 1", 1, 0.9, -20), "needs start and minutes"],
  ["a start far off", lineOf("Bed 1", 1, 1e300, 20), "needs start and minutes"],
  ["a start at noon", lineOf("Bed 1", 1, 0.5, 20), "outside the hours"],
  ["a small pump", { ...lineOf("Bed 1", 1, 0.9, 20), Pump_Flow_Lmin: 10 }, "over the pump's flow"],
];
