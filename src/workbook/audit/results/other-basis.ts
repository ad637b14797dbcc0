import { type Figure, numberFormat } from "../../../core/figures/figure";
import { MEASURES } from "../../../core/figures/measures";
import type { CellSpec } from "../../form/sheet-spec";

/** Relative difference from the figure in use above which the other basis is shown. */
export const SHOWN_ABOVE = 0.02;

const LINES: readonly [figure: Figure, used: string, equal: string][] = [
  [MEASURES.MAR, "Used_MAR", "Result_MAR"],
  [MEASURES.CU, "Used_CU", "Result_CU"],
  [MEASURES.DU, "Used_DU", "Result_DU_Quarter"],
  [MEASURES.SC_CAN, "Used_SC_Can", "Result_SC_Can"],
  [MEASURES.SC_QUARTER, "Used_SC_Quarter", "Result_SC_Quarter"],
  [MEASURES.SC_SHARE, "Used_SC_Share", "Result_SC_Share"],
];

/** Whether a figure with equal weight differs from the one in use by more than is passed over. */
const differs = (used: string, equal: string) =>
  `IF(AND(By_Area,COUNT(${used},${equal})=2),ABS(${equal}-${used})>${SHOWN_ABOVE}*ABS(${used}),FALSE)`;

const ANY = `OR(${LINES.map(([, used, equal]) => differs(used, equal)).join(",")})`;

/** How many rows they take, with their heading. */
export const OTHER_ROWS = LINES.length + 1;

/** Figures with equal weight where they differ from those by area; blank where there is nothing to say. */
export const otherBasis = (top: number): CellSpec[] => [
  {
    at: `A${top}:F${top}`,
    kind: "note",
    formula: `IF(By_Area,IF(${ANY},"With equal weight for each can these would differ by more than 2 %:","With equal weight for each can no figure would differ by more than 2 %."),"")`,
  },
  ...LINES.flatMap(([figure, used, equal], index): CellSpec[] => {
    const row = top + 1 + index;
    const where = (shown: string) => `IF(${differs(used, equal)},${shown},"")`;
    return [
      { at: `A${row}`, kind: "note", formula: where(`"${figure.name}"`) },
      { at: `B${row}`, kind: "note", align: "right", formula: where(equal), format: numberFormat(figure) },
      { at: `C${row}`, kind: "note", formula: where(`"${figure.unit}"`) },
    ];
  }),
];
