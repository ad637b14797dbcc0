import { choiceFrom, count, number } from "../../form/allowed";
import type { CellSpec, CheckSpec, SheetSpec } from "../../form/sheet-spec";
import { MONTHS } from "../months";
import {
  COUNT_FROM,
  ERROR_FROM,
  FIRST_LINE,
  groupName,
  LAST_LINE,
  MEAN_FROM,
  MONTH_COLUMN,
  TABLE_COLUMNS,
  tableFormulas,
  weighingLine,
} from "./lines";

const HEADINGS = [
  "Pot group",
  "Month [1 to 12]",
  "Mass before [g]",
  "Mass after [g]",
  "Hours between",
  "Use [mL a day]",
  "To put right, or missing",
  "100 · group + month",
  "Use, 0 where none",
];

const TABLES = [
  { from: MEAN_FROM, title: "Mean use of a pot [mL a day]", what: "mean", format: "0", kind: "answer" },
  { from: ERROR_FROM, title: "Standard error of that mean [mL a day]", what: "error", format: "0.0", kind: "working" },
  {
    from: COUNT_FROM,
    title: "Pots weighed: shaded where under five, too few to represent their group",
    what: "count",
    format: "0;-0;",
    kind: "working",
  },
] as const;

const table = ({ from, title, what, format, kind }: (typeof TABLES)[number]): CellSpec[] => [
  { at: `${MONTH_COLUMN}${from - 2}:${TABLE_COLUMNS[5]}${from - 2}`, kind: "heading", value: title },
  { at: `${MONTH_COLUMN}${from - 1}`, kind: "label", value: "Month" },
  ...TABLE_COLUMNS.map(
    (column, group): CellSpec => ({
      at: `${column}${from - 1}`,
      kind: "label",
      formula: `IF(${groupName(group)}="","",${groupName(group)})`,
      align: "center",
    }),
  ),
  ...MONTHS.flatMap((month, index): CellSpec[] => [
    { at: `${MONTH_COLUMN}${from + index}`, kind: "label", value: month },
    ...TABLE_COLUMNS.map(
      (column, group): CellSpec => ({
        at: `${column}${from + index}`,
        kind,
        format,
        formula: tableFormulas(group, index)[what],
      }),
    ),
  ]),
];

const area = (from: number) => `${TABLE_COLUMNS[0]}${from}:${TABLE_COLUMNS[5]}${from + 11}`;
const column = (letter: string) => `${letter}${FIRST_LINE}:${letter}${LAST_LINE}`;
const on = (range: string, allowed: ReturnType<typeof number>): CheckSpec => ({ range, ...allowed("") });

/** What pots lost between two weighings, and the mean of each group and month. */
export const WEIGHINGS: SheetSpec = {
  name: "Weighings",
  widths: [20, 9, 10, 10, 9, 10, 40, 12, 11, 3, 12, 12, 12, 12, 12, 12, 12],
  heights: { 2: 32, 4: 62 },
  landscape: true,
  pageEnds: [COUNT_FROM - 3],
  frozenRows: 4,
  cells: [
    { at: "A1:Q1", kind: "title", value: "Weighings" },
    {
      at: "A2:Q2",
      kind: "said",
      value:
        "Water the pots of a group, let them drain, weigh five to ten of them, leave them without water for about a day, weigh again: a gram lost is a millilitre used. Use = 24 · (before - after) / hours. A group that was weighed in a month uses its pots, not by the weather.",
    },
    ...HEADINGS.map(
      (value, index): CellSpec => ({ at: `${"ABCDEFGHI"[index]}${FIRST_LINE - 1}`, kind: "heading", value }),
    ),
    ...Array.from({ length: LAST_LINE - FIRST_LINE + 1 }, (_, index) => weighingLine(FIRST_LINE + index)).flat(),
    ...TABLES.flatMap(table),
  ],
  areas: {
    Weighings_Typed: `A${FIRST_LINE}:E${LAST_LINE}`,
    Weighings_Use: column("F"),
    Weighings_To_Mend: column("G"),
    Weighed_Mean_mL: area(MEAN_FROM),
    Weighed_Error_mL: area(ERROR_FROM),
    Weighed_Pots: area(COUNT_FROM),
  },
  checks: [
    on(column("A"), choiceFrom("Demand_Groups")),
    on(column("B"), count(1, 12)),
    on(`C${FIRST_LINE}:D${LAST_LINE}`, number(1, 1e6, "g")),
    on(column("E"), number(0.5, 240, "hours")),
  ],
  shades: [
    {
      range: area(COUNT_FROM),
      formula: `AND(${TABLE_COLUMNS[0]}${COUNT_FROM}>0,${TABLE_COLUMNS[0]}${COUNT_FROM}<5)`,
      fill: "#f6e8c3",
      bold: true,
    },
  ],
};
