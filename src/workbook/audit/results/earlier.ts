import { type Figure, typedEnds } from "../../../core/figures/figure";
import { MEASURES } from "../../../core/figures/measures";
import { WHY_NOT } from "../../../core/register/basis";
import { choice, count, date, number } from "../../form/allowed";
import type { Field } from "../../form/entry-lines";
import { nestedIfs, quoted } from "../../form/nested-ifs";

const windClass = (wind: string) => `(${wind}>2.2)+(${wind}>4)`;

const NOT_COMPARABLE = [
  ["COUNT(Earlier_Columns,Earlier_Rows,Earlier_Cans)=0", '"no earlier audit is entered on Results"'],
  ['Lack_Readings<>""', '"this audit has no results yet"'],
  [
    "OR(Earlier_Columns<>Grid_Columns,Earlier_Rows<>Grid_Rows,Earlier_Cans<>Cans_Counted)",
    quoted(`${WHY_NOT.grid} (columns, rows or cans read)`),
  ],
  ["NOT(AND(ISNUMBER(Earlier_Wind_ms),ISNUMBER(Wind_Mean_ms)))", quoted(WHY_NOT.windUnknown)],
  [
    `${windClass("Earlier_Wind_ms")}<>${windClass("Wind_Mean_ms")}`,
    quoted(`${WHY_NOT.wind} (up to 2.2, up to 4, over 4 m/s)`),
  ],
  [
    'AND(Earlier_Weighting<>"by area",Earlier_Weighting<>"equal weight")',
    '"the weighting of the earlier audit is not known"',
  ],
  [
    'AND(Earlier_Weighting="by area",NOT(By_Area))',
    '"the earlier audit is by area, and this one has no places of cans"',
  ],
  [
    'AND(Earlier_SC_Kind<>"driest can",Earlier_SC_Kind<>"low quarter")',
    quoted(`${WHY_NOT.kind}, or its kind is not known`),
  ],
] as const;

const stated = (figure: Figure, name: string, label: string): Field => ({
  label,
  unit: figure.unit,
  name,
  allowed: number(...typedEnds(figure), figure.unit),
});

/** What is typed of an earlier audit. */
export const EARLIER_LINES: readonly (string | Field)[] = [
  "An earlier audit of this bed, for before and after",
  { label: "Date of it", unit: "date", name: "Earlier_Date", format: "yyyy-mm-dd", allowed: date },
  {
    label: "Columns of cans",
    unit: "cans",
    name: "Earlier_Columns",
    note: "Across the bed, with readings.",
    allowed: count(1, 20),
  },
  {
    label: "Rows of cans",
    unit: "cans",
    name: "Earlier_Rows",
    note: "Along the bed, with readings.",
    allowed: count(1, 30),
  },
  { label: "Cans read", unit: "cans", name: "Earlier_Cans", allowed: count(1, 600) },
  { label: "Mean wind", unit: "m/s", name: "Earlier_Wind_ms", allowed: number(0, 40, "m/s") },
  {
    label: "Its figures are",
    unit: "choose",
    name: "Earlier_Weighting",
    note: "As its Results say; this audit's are then shown in the same way.",
    allowed: choice("by area", "equal weight"),
  },
  {
    label: "Kind of its SC",
    unit: "choose",
    name: "Earlier_SC_Kind",
    allowed: choice("driest can", "low quarter", "another"),
  },
  {
    label: "SC",
    unit: "ratio",
    name: "Earlier_SC",
    allowed: number(...typedEnds(MEASURES.SC_QUARTER), ""),
  },
  stated(MEASURES.MAR, "Earlier_MAR", MEASURES.MAR.short),
  stated(MEASURES.CU, "Earlier_CU", MEASURES.CU.short),
  stated(MEASURES.DU, "Earlier_DU", MEASURES.DU.name),
];
/** Whether the two may be compared: "yes", or why not. */
export const EARLIER_COMPARABLE = nestedIfs(NOT_COMPARABLE, '"yes"');
