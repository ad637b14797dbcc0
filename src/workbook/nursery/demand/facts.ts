import { GROUP_ENTRIES } from "../../../core/figures/entries";
import { entryLabel } from "../../../core/figures/entry";
import { choice, words } from "../../form/allowed";
import { allowedOf } from "../../form/entry-field";
import type { CellSpec } from "../../form/sheet-spec";
import {
  AREA_ROW,
  CAPTURE_ROW,
  COEFFICIENT_ROW,
  NOTE_ROW,
  RAINED_ROW,
  SHAPE_ROW,
  TAKE_UP_ROW,
  TOP_ROW,
} from "./formulas";
import { GROUP_COLUMNS, NAME_ROW } from "./places";

/** Row, label, name, note and what may be typed, of each fact of a group. */
export const FACTS = [
  [
    NAME_ROW,
    "Name of the group",
    "Demand_Groups",
    "Pots of one size and kind. Program and Weighings choose from these.",
    words(30),
  ],
  [
    TOP_ROW,
    entryLabel(GROUP_ENTRIES.Demand_Tops_mm),
    "Demand_Tops_mm",
    "Diameter of a round pot, side of a square one.",
    allowedOf(GROUP_ENTRIES.Demand_Tops_mm),
  ],
  [SHAPE_ROW, "Shape", "Demand_Shapes", "Blank: round.", choice("round", "square")],
  [
    CAPTURE_ROW,
    entryLabel(GROUP_ENTRIES.Demand_Captures),
    "Demand_Captures",
    "Water that reaches the mix with the plant / without. Blank: 1.",
    allowedOf(GROUP_ENTRIES.Demand_Captures),
  ],
  [
    COEFFICIENT_ROW,
    entryLabel(GROUP_ENTRIES.Demand_Coefficients),
    "Demand_Coefficients",
    "Use of a pot / (ET0 · the area in the next line).",
    allowedOf(GROUP_ENTRIES.Demand_Coefficients),
  ],
  [
    AREA_ROW,
    entryLabel(GROUP_ENTRIES.Demand_Areas_m2),
    "Demand_Areas_m2",
    "Pot's top, canopy or ground: the one that the coefficient was found for.",
    allowedOf(GROUP_ENTRIES.Demand_Areas_m2),
  ],
  [
    RAINED_ROW,
    "Exposed to rain",
    "Demand_Rained",
    "yes or no; no under a roof or film. Blank: yes.",
    choice("yes", "no"),
  ],
  [
    TAKE_UP_ROW,
    entryLabel(GROUP_ENTRIES.Demand_Take_Up_mm),
    "Demand_Take_Up_mm",
    "Before water runs out below: sets the pulses on Program.",
    allowedOf(GROUP_ENTRIES.Demand_Take_Up_mm),
  ],
  [NOTE_ROW, "Note", "Demand_Notes", "Where the figures come from.", words(60)],
] as const;

/** The lines of the facts. */
export const FACT_LINES: readonly CellSpec[] = FACTS.flatMap(([row, label, , note]): CellSpec[] => [
  { at: `A${row}`, kind: "label", value: label },
  ...GROUP_COLUMNS.map((column): CellSpec => ({ at: `${column}${row}`, kind: "input" })),
  { at: `H${row}:I${row}`, kind: "note", value: note },
]);
