import { numberFormat } from "../../../core/figures/figure";
import { MEASURES } from "../../../core/figures/measures";
import { WITH_ENDS } from "../../answer/test-summary";
import type { CellSpec } from "../../form/sheet-spec";
import { ANSWER_INPUTS, INPUTS_STAMP, whileFresh } from "./stamp";

/** What the pane keeps on the sheet Working, by name, with what each is. */
export const KEPT: readonly (readonly [name: string, label: string, format?: string])[] = [
  ["Cause_Text", "Cause read from cans and heads"],
  ["Cause_Next", "Next check"],
  ["Cause_Measured", "What was measured at the heads"],
  ["Cause_Head", "Number of the head in question"],
  ["Cause_Stamp", "Stamp of the inputs that the cause was read from"],
  ...WITH_ENDS.flatMap(([short, id]) =>
    (["Low", "High"] as const).map(
      (end) =>
        [
          `Ends_${short}_${end}`,
          `90 % interval of ${MEASURES[id].short}, ${end.toLowerCase()} end`,
          numberFormat(MEASURES[id]),
        ] as const,
    ),
  ),
  ["Ends_Stamp", "Stamp of the inputs that the intervals are of"],
  ["Answer_Text", "Answer of the audit"],
  ["Answer_Stamp", "Stamp of all that the answer was made from"],
];

/** What a sheet says of the pane where nothing is kept, or what is kept is out of date. */
export const speaksOfPane = (text: string): boolean => /\b[Tt]he step Answer of Canfall's pane\b/.test(text);

const CAUSE = whileFresh(
  ["Cause_Stamp", "Inputs_Stamp"],
  '"What may be wrong: "&Cause_Text&" Next: "&Cause_Next&"."&IF(Cause_Measured&""="",""," Used beside the cans: "&Cause_Measured&".")',
  {
    none: '"What may be wrong is not known yet: the step Answer of Canfall\'s pane finds it from cans and heads."',
    stale:
      '"What may be wrong is out of date: readings, places or heads were changed since it was read. The step Answer of Canfall\'s pane reads it again."',
  },
);

const ANSWER = whileFresh(["Answer_Stamp", "Answer_Inputs"], "Answer_Text", {
  none: '"No answer is kept here yet: the step Answer of Canfall\'s pane gives how long to run, why it is uneven and what to do first."',
  stale:
    '"The answer is out of date: something that it says was changed since. The step Answer of Canfall\'s pane gives it again."',
});

/** What follows from the inputs and from what is kept, by name. */
const FOLLOWING: readonly (readonly [name: string, label: string, formula: string])[] = [
  ["Inputs_Stamp", "Stamp of the inputs as they are", INPUTS_STAMP],
  ["Answer_Inputs", "Stamp of all that the answer is made from", ANSWER_INPUTS],
  ["Cause_Sentence", "What may be wrong, as the sheets show it", CAUSE],
  ["Answer_Sentence", "The answer, as the sheets show it", ANSWER],
];

const line = (row: number, label: string, cell: Partial<CellSpec>): CellSpec[] => [
  { at: `N${row}:Q${row}`, kind: "label", value: label },
  { at: `R${row}:V${row}`, kind: "working", shrink: true, ...cell },
];

/** What is kept by the pane as values, from a row on, with the stamp of the inputs that it is true of. */
export const keptCells = (top: number): CellSpec[] => [
  {
    at: `N${top}:V${top}`,
    kind: "heading",
    value: "Kept by the pane, with the stamp of the inputs that it is true of",
  },
  ...FOLLOWING.flatMap(([name, label, formula], index) => line(top + 1 + index, label, { name, formula })),
  ...KEPT.flatMap(([name, label, format], index) =>
    line(top + 1 + FOLLOWING.length + index, label, { name, kept: true, ...(format && { format }) }),
  ),
];
