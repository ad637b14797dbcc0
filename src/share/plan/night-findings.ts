import type { Stated } from "../../cells/stated";
import type { Program, Run } from "../../core/program/program";
import { MINUTES_A_DAY } from "../../core/program/spans";
import { verifyNight } from "../../core/program/verify-night";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { type Finding, saying } from "../finding";
import { gridOf } from "./plan-cells";

const SHEET = "Start times";
const OK = "ok";

/** The pulses that the lines of a file's Start times give, and how many lines are not whole. */
function nightOf(lines: readonly Stated[][], first: number): { runs: Run[]; broken: number } {
  const filled = lines.filter((line) => line.some((value) => value !== null));
  const runs = filled.flatMap(([block, pulse, start, minutes]) => {
    if (block === null || typeof pulse !== "number" || typeof start !== "number" || typeof minutes !== "number") {
      return [];
    }
    const ofDay = Math.round(start * MINUTES_A_DAY) % MINUTES_A_DAY;
    const name = String(block).trim().replace(/ +/g, " ");
    return [{ block: name, pulse, start: ofDay < first ? ofDay + MINUTES_A_DAY : ofDay, minutes }];
  });
  return { runs, broken: filled.length - runs.length };
}

/** Whether the sheet itself says that its start times need a look. */
function saysSo(book: FileBook): boolean {
  const checks = gridOf(book, "Start_Times_Checks").flat();
  const status = String(gridOf(book, "Start_Times_Status")[0]?.[0] ?? "");
  return checks.some((said) => said !== null && said !== OK) || !status.startsWith("These start times belong");
}

/**
 * The start times of a file, checked by the code that shares nothing with the search for them. Rules that they break
 * and of which the sheet itself tells accuse nobody.
 */
export function nightFindings(book: FileBook, program: Program | null): Finding[] {
  const lines = gridOf(book, "Start_Times");
  if (lines.every((line) => line.every((value) => value === null))) return [];
  const told = saysSo(book);
  if (!program) {
    return told
      ? []
      : [saying("changed", SHEET, `${SHEET}: the sheet says that they fit, and the Program gives no night.`)];
  }
  const { runs, broken } = nightOf(lines, program.windows[0]!.start);
  const rules = [...(broken > 0 ? [`${broken} of its lines are not whole`] : []), ...verifyNight(program, runs)];
  return rules.map((rule) =>
    told
      ? saying("added", SHEET, `${SHEET}: ${rule}, as the sheet says itself.`)
      : saying("changed", SHEET, `${SHEET}: ${rule}, and the sheet says that all rules are kept.`),
  );
}
