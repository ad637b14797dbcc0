import type { Cell } from "../../cells/cell";
import { controllerSetting } from "../../core/application/controller-setting";
import { loneZero } from "../../core/pattern/lone-zero";
import { partsOfBed } from "../../core/pattern/parts-of-bed";
import type { Snapshot } from "../../hosts/snapshot";
import { type AnswerFacts, NOT_VALID, toRepeat } from "../../workbook/answer/answer-sentence";
import type { BedVerdict } from "../../workbook/bed/bed-verdict";
import type { Source } from "../map/source";
import { cellText, namedCells, numberIn, textIn } from "../workbook/named";
import type { Audit } from "./audit";

const CELLS = [
  "Block_Name",
  "Test_State",
  "Wind_Mean_ms",
  "Valve_Run_min",
  "Result_Run_Time_min",
  "Pulse_Count",
  "Controller_Step_min",
  "Multiplier_Basis",
  "Saved_kL",
  "Used_Now_kL",
  "Used_Now_Heads_kL",
  "Result_Water_kL",
  "Needed_After_kL",
  "Positions_Problem",
];
/** What the sentence of the answer is made from. */
export const FACT_NAMES: readonly string[] = [
  ...CELLS,
  "Cans_Readings",
  "Cans_Across_m",
  "Cans_Along_m",
  "Pressure_Before_kPa",
  "Pressure_After_kPa",
  "Actions_Table",
];

const numbers = (cells: Cell[][] | undefined) => (cells ?? []).flat().filter((cell) => typeof cell === "number");

/** Mean pressure after the test over that before, less 1; undefined where one was not read. */
export function driftOf(before: readonly number[], after: readonly number[]): number | undefined {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  if (before.length === 0 || after.length === 0 || !(mean(before) > 0)) return undefined;
  return mean(after) / mean(before) - 1;
}

/** A single 0 among wet cans that nobody has answered yet; readings as typed. */
function openZero(
  snapshot: Snapshot,
  source: Source,
): (AnswerFacts["zero"] & { column: number; row: number }) | undefined {
  const { across, along } = source.field;
  const cans = snapshot.named("Cans_Readings")!;
  const cells = source.cells.map((line) =>
    line.map((cell) => {
      const value = cell ? snapshot.cell({ ...cell, sheet: cans.area.sheet }) : null;
      return typeof value === "number" ? value : null;
    }),
  );
  const found = loneZero({ rates: cells, across, along });
  if (!found) return undefined;
  const cell = source.cells[found.row]![found.column]!.address;
  const answered = (snapshot.named("Actions_Table")?.cells ?? []).some((line) =>
    String(line[0] ?? "").startsWith(`${cell} reads 0`),
  );
  return answered ? undefined : { cell, between: found.between, row: found.row, column: found.column };
}

const isTyped = (snapshot: Snapshot, name: string) =>
  (snapshot.named(name)?.cells ?? []).flat().some((cell) => cellText(cell ?? "") !== "");
/** What is wrong about places that are typed; "" where none is typed, which the sheets say by themselves. */
const wrongPlaces = (snapshot: Snapshot, problem: string) =>
  isTyped(snapshot, "Cans_Across_m") || isTyped(snapshot, "Cans_Along_m") ? problem : "";

const isUneven = ({ rows, catches }: Audit) =>
  catches.dry > 0 || rows.some(({ measure, verdict }) => /^(CU|DU|SC)/.test(measure) && verdict.startsWith("outside"));

function waterOf(of: (name: string) => number | undefined): AnswerFacts["water"] {
  const used = of("Used_Now_kL") ?? of("Used_Now_Heads_kL");
  const [needed, after] = [of("Result_Water_kL"), of("Needed_After_kL")];
  return used === undefined || needed === undefined || after === undefined ? undefined : { used, needed, after };
}

/** The facts of an audit workbook as it is now; `audit` is of all its cans. */
export function answerFacts(
  snapshot: Snapshot,
  audit: Audit,
  source: Source | null,
  verdict: BedVerdict | undefined,
): AnswerFacts {
  const found = namedCells(snapshot, CELLS);
  const of = (name: string) => numberIn(found[name]);
  const test = {
    notValid: textIn(found.Test_State) === NOT_VALID,
    wind: of("Wind_Mean_ms"),
    drift: driftOf(
      numbers(snapshot.named("Pressure_Before_kPa")?.cells),
      numbers(snapshot.named("Pressure_After_kPa")?.cells),
    ),
  };
  const repeat = toRepeat(test) !== "";
  const minutes = of("Valve_Run_min") ?? of("Result_Run_Time_min");
  const setting =
    !repeat && minutes !== undefined && minutes > 0
      ? controllerSetting(minutes, of("Pulse_Count") ?? 1, of("Controller_Step_min") ?? 1)
      : undefined;
  return {
    block: textIn(found.Block_Name).trim(),
    cans: audit.catches.values.length,
    ...test,
    setting,
    minutes,
    lack: setting ? "" : `the run time ${textIn(found.Result_Run_Time_min) || "needs the sheet Run time"}`,
    uneven: isUneven(audit),
    parts: source ? partsOfBed(source.field) : "",
    cause: verdict?.lead,
    zero: source ? openZero(snapshot, source) : undefined,
    saved: repeat ? undefined : of("Saved_kL"),
    water: waterOf(of),
    places: wrongPlaces(snapshot, textIn(found.Positions_Problem)),
  };
}
