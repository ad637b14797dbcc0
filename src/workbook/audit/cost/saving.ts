import { COSTS } from "../../../core/figures/costs";
import { isWarning } from "../../form/check-lines";
import type { FormPart } from "../../form/entry-lines";
import type { CellSpec } from "../../form/sheet-spec";
import { headings, MONEY } from "./lines";
import { type CostKind, costCell, KINDS, LEVELS, type Level, NONE, SAVED, savedCell } from "./places";

/** What of a kind is saved; of what hangs on the water, only where less water is used. */
const saved = (kind: CostKind, level: Level): string => {
  const both = `COUNT(${costCell(kind, "Now", level)},${costCell(kind, "After", level)})=2`;
  const counts = kind === "Labour" || kind === "Losses" ? both : `AND(${both},ISNUMBER(Saved_kL))`;
  return `IF(${counts},${costCell(kind, "Now", level)}-${costCell(kind, "After", level)},"${NONE}")`;
};

const savedTotal = (level: Level): string => {
  const both = `COUNT(${costCell("Total", "Now", level)},${costCell("Total", "After", level)})=2`;
  const apart = `${savedCell("Labour", level)},${savedCell("Losses", level)}`;
  return `IF(Waters_To_Driest="yes",IF(${both},${costCell("Total", "Now", level)}-${costCell("Total", "After", level)},"${NONE}"),IF(AND(Waters_To_Driest="no",COUNT(${apart})>0),SUM(${apart}),"${NONE}"))`;
};

const WHY = `IF(Waters_To_Driest="yes",IF(ISNUMBER(Saved_kL),IF(${isWarning("Used_Against_Needed")},"All kinds count. "&Used_Against_Needed,"All kinds count: enough for "&Basis_Words&" now and after."),"No saving yet: "&Saved_kL),IF(Waters_To_Driest="no","Water, power and fertiliser are not counted: not enough today for "&Basis_Words&", so better uniformity gives better plants, not less water.","No saving yet: Water and cost asks whether the pots that set the run time get enough now."))`;

const saving: CellSpec[] = [
  ...headings(SAVED, ["Saved a year", "low", "likely", "high"]),
  { at: `E${SAVED}:H${SAVED}`, kind: "heading", value: "" },
  ...KINDS.flatMap((kind, index): CellSpec[] => [
    { at: `A${SAVED + 1 + index}`, kind: "label", value: COSTS[kind].name },
    ...LEVELS.map(
      (level): CellSpec => ({
        at: savedCell(kind, level),
        kind: "answer",
        name: `Saved_${kind}_${level}`,
        formula: saved(kind, level),
        format: MONEY,
      }),
    ),
  ]),
  { at: `A${SAVED + 6}`, kind: "label", value: COSTS.Total.name },
  ...LEVELS.map(
    (level): CellSpec => ({
      at: savedCell("Total", level),
      kind: "answer",
      name: `Saved_${level}`,
      formula: savedTotal(level),
      format: MONEY,
    }),
  ),
  { at: `E${SAVED + 1}:H${SAVED + 3}`, kind: "note", name: "Saved_Why", formula: WHY },
  {
    at: `E${SAVED + 4}:H${SAVED + 6}`,
    kind: "note",
    value: "Needed now less after, at the low, the likely and the high prices. Under 0: it costs more after.",
  },
];

/** What is saved in a year, kind by kind. */
export const SAVING: FormPart = { cells: saving, checks: [], heights: {} };
