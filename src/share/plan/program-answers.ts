import { cellAt } from "../../cells/places";
import { correctedRunTime, leachingFraction, potWater } from "../../core/application/leaching";
import { runTime } from "../../core/application/run-time";
import { RUN_TIME } from "../../core/figures/run-time";
import { jobs } from "../../core/program/jobs";
import type { Block, Program } from "../../core/program/program";
import { isBlank, nameIn } from "../../workbook/nursery/program/problems";
import {
  PROGRAM_NAMES,
  type ProgramSheet,
  programSheetOf,
  stated,
} from "../../workbook/nursery/program/stated-program";
import { type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { orNull } from "../or-null";
import { gridOf, type PlanAnswer } from "./plan-cells";

/** What the sheets Program and Demand of a file hold; null where it has no Program. */
export function programSheet(book: FileBook): ProgramSheet | null {
  if (PROGRAM_NAMES.some((name) => !namedArea(book, name))) return null;
  return programSheetOf((name) => {
    const { sheet, top, left, bottom, right } = namedArea(book, name)!;
    return stated({ sheet, address: `${cellAt(top, left)}:${cellAt(bottom, right)}` }, gridOf(book, name));
  });
}

const LABELS: readonly (readonly [label: string, unit: string])[] = [
  ["Depth", "mm"],
  [RUN_TIME.TIME.name, "min"],
  [RUN_TIME.PULSES.short, ""],
  ["Minutes each", "min"],
  ["Water", "L/day"],
  ["Flow", "L/min"],
];
const MINUTES = 60;

function answersOf(block: Block, program: Program): (number | null)[] {
  const { depth, rate, multiplier, area, flow } = block;
  const one = orNull(() => jobs({ ...program, blocks: [block], apart: [] }))?.[0];
  const litres = (flow ?? area * rate) / MINUTES;
  const pulses = depth === 0 ? 0 : (one?.number ?? null);
  const minutes = depth === 0 ? 0 : (one?.minutes ?? null);
  return [
    depth,
    orNull(() => runTime(depth, rate, multiplier)),
    pulses,
    minutes,
    pulses === null || minutes === null ? null : litres * pulses * minutes,
    litres,
  ];
}

/** Depth, run time, pulses, water and flow of the blocks whose lines are whole, by core from what was typed. */
export function programAnswers(sheet: ProgramSheet, program: Program): PlanAnswer[] {
  return sheet.blocks.flatMap((line, row) => {
    const block = isBlank(line) ? undefined : program.blocks.find(({ name }) => name === nameIn(line[0]!));
    if (!block) return [];
    return answersOf(block, program).map((value, column): PlanAnswer => {
      const [label, unit] = LABELS[column]!;
      return { area: "Program_Answers", row, column, label: `${label}, ${block.name}`, unit, value };
    });
  });
}

/** What the leaching test gives, by core from what was typed. */
export function leachingAnswers(book: FileBook): PlanAnswer[] {
  const typed = (name: string) => gridOf(book, name)[0]?.[0] as number;
  const water = orNull(() =>
    potWater(typed("Leaching_Before_g"), typed("Leaching_After_g"), typed("Leaching_Poured_g")),
  );
  const measured = water && orNull(() => leachingFraction(water.applied, water.drained));
  const run =
    measured === null
      ? null
      : orNull(() => correctedRunTime(typed("Leaching_Run_min"), measured, typed("Leaching_Target")).minutes);
  const one = { row: 0, column: 0 };
  return [
    { ...one, area: "Leaching_Measured", label: "Leaching fraction measured", unit: "", value: measured },
    { ...one, area: "Leaching_Run_Time_min", label: `${RUN_TIME.TIME.name} corrected`, unit: "min", value: run },
  ];
}
