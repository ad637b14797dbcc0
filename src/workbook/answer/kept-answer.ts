import type { FittedBed } from "../../core/summary/by-fit";
import type { BedVerdict } from "../bed/bed-verdict";
import { type CellsOf, textOf } from "../bed/cells-of";
import { answerFacts, type CanCell, FACT_NAMES } from "./answer-facts";
import { answerSentence } from "./answer-sentence";
import { LIMIT_NAMES } from "./limits-in";
import { byFit, endsOf, testSummary } from "./test-summary";

/** The stamps of what is in the workbook now: readings and heads, and these with all else that the answer is made of. */
export const STAMPS = ["Inputs_Stamp", "Answer_Inputs"] as const;

/** What must be read to keep an answer. */
export const KEEP_NAMES: readonly string[] = [
  ...FACT_NAMES,
  ...LIMIT_NAMES,
  ...STAMPS,
  ...["Test_Minutes", "Can_Mouth_mm", "Bed_Width_m", "Bed_Length_m", "By_Area"],
];

/** What the sheets show of a cause. */
const causeKept = ({ sentence, next, measured, head }: BedVerdict, stamp: string) => ({
  Cause_Text: sentence,
  Cause_Next: next,
  Cause_Measured: measured,
  Cause_Head: head?.number ?? "",
  Cause_Stamp: stamp,
});

/** What was read from a bed: its cause, and its figures by fit. */
export interface ReadOfBed {
  verdict?: BedVerdict | undefined;
  whole?: FittedBed | undefined;
}

/** What an audit keeps for its sheets, each with the stamp of what it is true of; without a cause the kept one stays. */
export function keptAnswer(
  cells: CellsOf,
  { verdict, whole }: ReadOfBed,
  canCell: CanCell,
): Record<string, string | number> {
  const stamp = textOf(cells, "Inputs_Stamp");
  const rows = byFit(cells, testSummary(cells), whole);
  return {
    ...(verdict && causeKept(verdict, stamp)),
    ...endsOf(rows),
    Ends_Stamp: stamp,
    Answer_Text: answerSentence(answerFacts(cells, rows, verdict, canCell)),
    Answer_Stamp: textOf(cells, "Answer_Inputs"),
  };
}
