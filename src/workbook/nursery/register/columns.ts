import { columnLetters } from "../../../cells/letters";
import { asHeading, type Figure, numberFormat, typedEnds } from "../../../core/figures/figure";
import { MEASURES } from "../../../core/figures/measures";
import { RUN_TIME } from "../../../core/figures/run-time";
import { WATER } from "../../../core/figures/water";
import { COMPARED_KINDS, SHARE_KIND, WIND_CLASSES } from "../../../core/register/basis";
import { type Allowed, choice, date, number, words } from "../../form/allowed";

/** What is known of one audit, a column each. */
export interface RegisterColumn {
  id: string;
  heading: string;
  width: number;
  format?: string;
  align?: "left";
  allowed: Allowed;
  /** A condition that is true where what was typed cannot be used, and what is said then; `#` is for the cell. */
  wrong?: readonly [condition: string, words: string];
}

export const REGISTER_LINES = 60;
export const FIRST_LINE = 7;
export const LAST_LINE = FIRST_LINE + REGISTER_LINES - 1;
/** The last day that spreadsheet checks take: 2099-12-31. */
export const LAST_DAY = 73050;
export const CHECKED_WORDS = ["agrees", "does not agree", "typed"] as const;

/** A column of numbers from `least` to `most`. */
const quantity = (
  id: string,
  [name, unit]: readonly [string, string],
  [least, most]: readonly [number, number],
  width: number,
  format: string,
): RegisterColumn => ({
  id,
  heading: unit === "" ? name : `${name} [${unit}]`,
  width,
  format,
  allowed: number(least, most, unit),
  wrong: [
    `AND(#<>"",OR(NOT(ISNUMBER(#)),#<${least},#>${most}))`,
    `${name} must be from ${least} to ${most} ${unit}`.trim(),
  ],
});

/** A column of a figure that audits state. */
const stated = (id: string, figure: Figure, heading: string, width: number): RegisterColumn =>
  quantity(id, [heading, figure.unit], typedEnds(figure), width, numberFormat(figure));

const oneOf = (id: string, name: string, of: readonly string[], width: number): RegisterColumn => ({
  id,
  heading: name,
  width,
  align: "left",
  allowed: choice(...of),
  wrong: [`AND(#<>"",${of.map((word) => `#<>"${word}"`).join(",")})`, `${name} must be ${of.join(", ")}`],
});

export const GRID_FORM = 'ISNUMBER(SEARCH("x",SUBSTITUTE(#,"×","x")))';

/** The columns of Register_Rows, in their order. */
export const REGISTER_COLUMNS: readonly RegisterColumn[] = [
  { id: "site", heading: "Site", width: 28, align: "left", allowed: words() },
  { id: "block", heading: "Block", width: 12, align: "left", allowed: words() },
  { id: "day", heading: "Date", width: 13, format: "yyyy-mm-dd", allowed: date },
  quantity("cans", [MEASURES.CANS.name, ""], [1, 600], 10, numberFormat(MEASURES.CANS)),
  {
    id: "grid",
    heading: "Grid [columns × rows]",
    width: 15,
    allowed: (cell) => ({
      rule: { kind: "formula", formula: `AND(${GRID_FORM.replaceAll("#", cell)},LEN(${cell})<=20)` },
      message: 'Columns and rows of cans, such as 5 × 5; where each can counts by its area: "5 × 5, by area".',
    }),
    wrong: [`AND(#<>"",NOT(${GRID_FORM}))`, "the grid must be such as 5 × 5"],
  },
  oneOf("wind", "Wind class", WIND_CLASSES, 18),
  quantity("pressure", ["Mean pressure", "kPa"], [1, 2000], 10.5, "0"),
  stated("mar", MEASURES.MAR, MEASURES.MAR.short, 9),
  stated("cu", MEASURES.CU, MEASURES.CU.short, 7),
  stated("du", MEASURES.DU, asHeading(MEASURES.DU), 10),
  stated("scCan", MEASURES.SC_CAN, asHeading(MEASURES.SC_CAN), 9),
  stated("scQuarter", MEASURES.SC_QUARTER, asHeading(MEASURES.SC_QUARTER), 10),
  oneOf("kind", `${RUN_TIME.TIME.name} by`, [...COMPARED_KINDS, SHARE_KIND], 16),
  quantity("multiplier", [`${RUN_TIME.MULTIPLIER.short} used`, ""], [1, 1000], 12.5, numberFormat(RUN_TIME.MULTIPLIER)),
  quantity("water", [WATER.NOW.short, WATER.NOW.unit], [0, 1e7], 9, "#,##0"),
  quantity("area", ["Area of its beds", "m²"], [0.1, 1e7], 8.5, "#,##0"),
  quantity("flow", ["Flow", "L/min"], [0.1, 1e6], 8, "#,##0"),
  oneOf("checked", "Checked", CHECKED_WORDS, 18),
  { id: "file", heading: "File", width: 24, align: "left", allowed: words(200) },
];

/** The letters of a column by its id. */
export const columnOf = (id: string): string =>
  columnLetters(REGISTER_COLUMNS.findIndex((column) => column.id === id) + 1);

/** All lines of a column, fixed: `$C$7:$C$66`. */
export const linesOf = (letters: string): string => `$${letters}$${FIRST_LINE}:$${letters}$${LAST_LINE}`;
