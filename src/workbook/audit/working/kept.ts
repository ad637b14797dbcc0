import type { CellSpec } from "../../form/sheet-spec";
import { STAMP, whileFresh } from "./stamp";

/** What the pane keeps on the sheet Working, by name, with what each is. */
export const KEPT: readonly (readonly [name: string, label: string])[] = [
  ["Cause_Text", "Cause read from cans and heads"],
  ["Cause_Next", "Next check"],
  ["Cause_Measured", "What was measured at the heads"],
  ["Cause_Head", "Number of the head in question"],
  ["Cause_Stamp", "Stamp of the inputs that the cause was read from"],
];

const CAUSE = whileFresh(
  "Cause_Stamp",
  '"What may be wrong: "&Cause_Text&" Next: "&Cause_Next&"."&IF(Cause_Measured&""="",""," Used beside the cans: "&Cause_Measured&".")',
  {
    none: '"What may be wrong is not read yet: the step Answer of Canfall\'s pane reads it from cans and heads."',
    stale:
      '"What may be wrong is out of date: readings, places or heads were changed since it was read. The step Answer of Canfall\'s pane reads it again."',
  },
);

/** What is kept by the pane as values, from a row on, with the stamp of the inputs that it is true of. */
export const keptCells = (top: number): CellSpec[] => [
  {
    at: `N${top}:V${top}`,
    kind: "heading",
    value: "Kept by the pane, with the stamp of the inputs that it is true of",
  },
  { at: `N${top + 1}:Q${top + 1}`, kind: "label", value: "Stamp of the inputs as they are" },
  { at: `R${top + 1}:V${top + 1}`, kind: "working", name: "Inputs_Stamp", formula: STAMP, shrink: true },
  { at: `N${top + 2}:Q${top + 2}`, kind: "label", value: "What may be wrong, as the sheets show it" },
  { at: `R${top + 2}:V${top + 2}`, kind: "working", name: "Cause_Sentence", formula: CAUSE, shrink: true },
  ...KEPT.flatMap(([name, value], index): CellSpec[] => [
    { at: `N${top + 3 + index}:Q${top + 3 + index}`, kind: "label", value },
    { at: `R${top + 3 + index}:V${top + 3 + index}`, kind: "working", name, shrink: true, kept: true },
  ]),
];
