import { controllerSetting } from "../../core/application/controller-setting";
import { InputError } from "../../core/errors";
import { MEASURES } from "../../core/figures/measures";
import { type CanField, canField } from "../../core/pattern/can-field";
import { farAbove } from "../../core/pattern/far-above";
import { loneZero } from "../../core/pattern/lone-zero";
import { partsOfBed } from "../../core/pattern/parts-of-bed";
import type { SummaryRow } from "../../core/summary/summary";
import { bedCans, type PlacedCans } from "../bed/bed-cans";
import type { BedVerdict } from "../bed/bed-verdict";
import { type CellsOf, firstOf, listOf, numberOf, textOf } from "../bed/cells-of";
import { type AnswerFacts, NOT_VALID, toRepeat } from "./answer-sentence";
import { lackOf, MOST_MINUTES } from "./lack-words";

/** What the sentence of the answer is made from, beside the cause and the figures of the test. */
export const FACT_NAMES: readonly string[] = [
  "Block_Name",
  "Test_State",
  "Wind_Mean_ms",
  "Valve_Run_min",
  "Result_Run_Time_min",
  "Pulse_Count",
  "Valve_Step_min",
  "Saved_kL",
  "Used_Now_kL",
  "Used_Now_Heads_kL",
  "Result_Water_kL",
  "Needed_After_kL",
  "Positions_Problem",
  "Cans_Readings",
  "Cans_Across_m",
  "Cans_Along_m",
  "Pressure_Before_kPa",
  "Pressure_After_kPa",
  "Actions_Table",
];

/** The address of a can by its row and column in the audit's form, from 0. */
export type CanCell = (row: number, column: number) => string;

const numbers = (cells: CellsOf, name: string) => listOf(cells, name).filter((cell) => typeof cell === "number");

/** Mean pressure after the test over that before, less 1; undefined where one was not read. */
export function driftOf(before: readonly number[], after: readonly number[]): number | undefined {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  if (before.length === 0 || after.length === 0 || !(mean(before) > 0)) return undefined;
  return mean(after) / mean(before) - 1;
}

function fieldOf({ grid, across, along }: PlacedCans): CanField | null {
  try {
    return canField(grid, across, along);
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

/** A single 0 among wet cans that nobody has answered yet. */
function openZero(cells: CellsOf, cans: PlacedCans, field: CanField, canCell: CanCell): AnswerFacts["zero"] {
  const found = loneZero(field);
  if (!found) return undefined;
  const cell = canCell(cans.rows[found.row]!, cans.columns[found.column]!);
  const answered = (cells("Actions_Table") ?? []).some((line) => String(line[0] ?? "").startsWith(`${cell} reads 0`));
  return answered ? undefined : { cell, between: found.between };
}

/** A can that reads far more than those beside it. */
function highCan(cans: PlacedCans, field: CanField, canCell: CanCell): AnswerFacts["high"] {
  const found = farAbove(field);
  if (!found) return undefined;
  const { row, column, value, around } = found;
  return { cell: canCell(cans.rows[row]!, cans.columns[column]!), value, around };
}

const isUneven = (rows: readonly SummaryRow[], dry: boolean) =>
  dry || rows.some(({ measure, verdict }) => /^(CU|DU|SC)/.test(measure) && verdict.startsWith("outside"));

/** The rate and the limit that it is outside of. */
function rateOf(cells: CellsOf, rows: readonly SummaryRow[]): AnswerFacts["rate"] {
  const row = rows.find(({ measure }) => measure === MEASURES.MAR.name);
  if (!row || typeof row.value !== "number" || !row.verdict.startsWith("outside")) return undefined;
  const [low, high] = [numberOf(cells, "Limit_MAR_Low"), numberOf(cells, "Limit_MAR_High")];
  const limit = high !== undefined && row.value > high ? high : low;
  return limit === undefined ? undefined : { value: row.value, limit };
}

const isTyped = (cells: CellsOf, name: string) => listOf(cells, name).some((cell) => cell !== null && cell !== "");
/** What is wrong about places that are typed; "" where none is typed, which the sheets say by themselves. */
const wrongPlaces = (cells: CellsOf) =>
  isTyped(cells, "Cans_Across_m") || isTyped(cells, "Cans_Along_m") ? textOf(cells, "Positions_Problem") : "";

function waterOf(cells: CellsOf): AnswerFacts["water"] {
  const used = numberOf(cells, "Used_Now_kL") ?? numberOf(cells, "Used_Now_Heads_kL");
  const [needed, after] = [numberOf(cells, "Result_Water_kL"), numberOf(cells, "Needed_After_kL")];
  return used === undefined || needed === undefined || after === undefined ? undefined : { used, needed, after };
}

/** The facts of an audit as it is now; `rows` are the figures of all its cans. */
export function answerFacts(
  cells: CellsOf,
  rows: readonly SummaryRow[],
  verdict: BedVerdict | undefined,
  canCell: CanCell,
): AnswerFacts {
  const test = {
    notValid: textOf(cells, "Test_State") === NOT_VALID,
    wind: numberOf(cells, "Wind_Mean_ms"),
    drift: driftOf(numbers(cells, "Pressure_Before_kPa"), numbers(cells, "Pressure_After_kPa")),
  };
  const repeat = toRepeat(test) !== "";
  const own = numberOf(cells, "Result_Run_Time_min");
  const minutes = numberOf(cells, "Valve_Run_min") ?? own;
  const cans = bedCans(cells);
  const field = fieldOf(cans);
  const high = field ? highCan(cans, field, canCell) : undefined;
  const setting =
    !repeat && !high && minutes !== undefined && minutes > 0 && minutes <= MOST_MINUTES
      ? controllerSetting(minutes, numberOf(cells, "Pulse_Count") ?? 1, numberOf(cells, "Valve_Step_min") ?? 1)
      : undefined;
  const read = numbers(cells, "Cans_Readings");
  return {
    block: String(firstOf(cells, "Block_Name") ?? "").trim(),
    cans: read.length,
    ...test,
    setting,
    minutes,
    ofThisBed: own !== undefined && minutes !== undefined && own < minutes ? own : undefined,
    lack: setting ? "" : lackOf(minutes, textOf(cells, "Result_Run_Time_min")),
    uneven: isUneven(rows, read.includes(0)),
    parts: field ? partsOfBed(field) : "",
    cause: verdict?.lead,
    zero: field ? openZero(cells, cans, field, canCell) : undefined,
    high,
    saved: repeat ? undefined : numberOf(cells, "Saved_kL"),
    water: waterOf(cells),
    rate: rateOf(cells, rows),
    places: wrongPlaces(cells),
  };
}
