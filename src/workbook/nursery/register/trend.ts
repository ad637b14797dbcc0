import { columnLetters } from "../../../cells/letters";
import type { CellSpec } from "../../form/sheet-spec";
import { columnOf, FIRST_LINE, linesOf, REGISTER_COLUMNS } from "./columns";
import { AFTER_WORKING, answerColumn } from "./places";
import { REGISTER_RULES } from "./rules";
import { AS_LATEST, CHOICE, FIRST, HEADINGS, TREND_LINES, TREND_TOP } from "./trend-places";
import { LAST_SERIES, SERIES_CELLS, TREND_CHARTS } from "./trend-series";

const SHOWN = [
  "day",
  "cans",
  "grid",
  "wind",
  "pressure",
  "mar",
  "cu",
  "du",
  "scCan",
  "scQuarter",
  "kind",
  "multiplier",
  "water",
];
const LINE = columnLetters(AFTER_WORKING);
const trendLine = (row: number) => `$${LINE}${row}`;

/** Which line of the register is in a row: the latest is rank 1, and is last. */
const lineOf = (k: number) => {
  const rank = `MIN(Trend_Count,${TREND_LINES})-${k - 1}`;
  return `IF(${k}>MIN(Trend_Count,${TREND_LINES}),"",MATCH(${rank},${linesOf(answerColumn("w.order"))},0))`;
};

const shownOf = (id: string, row: number) => {
  const cell = `INDEX(${linesOf(columnOf(id))},${trendLine(row)})`;
  return `IF(${trendLine(row)}="","",IF(${cell}="","",${cell}))`;
};

function basisOf(row: number): string {
  const key = (line: string) => `INDEX(${linesOf(answerColumn("w.basisKey"))},${line})`;
  return `IF(${trendLine(row)}="","",IF(OR(${trendLine(row)}=Trend_Latest,AND(${key(trendLine(row))}<>"",${key(trendLine(row))}=${key("Trend_Latest")})),"${AS_LATEST}","other basis"))`;
}

const headings = new Map(REGISTER_COLUMNS.map(({ id, heading }) => [id, heading]));
const formats = new Map(REGISTER_COLUMNS.map(({ id, format }) => [id, format]));

const cells: CellSpec[] = [
  { at: `A${TREND_TOP}:C${TREND_TOP}`, kind: "heading", value: "One block over time" },
  { at: `D${TREND_TOP}:S${TREND_TOP}`, kind: "heading", value: "" },
  { at: `A${CHOICE}:C${CHOICE}`, kind: "label", value: "Block: choose from the list", align: "right" },
  { at: `D${CHOICE}:H${CHOICE}`, kind: "input", name: "Register_Block", value: "" },
  {
    at: `I${CHOICE}:S${CHOICE}`,
    kind: "note",
    name: "Trend_Said",
    formula: `IF(Trend_Line=0,IF(Register_Block="","needs a line of the register","no such block in the register: choose from the list"),INDEX(${linesOf(answerColumn("w.label"))},Trend_Line)&": "&Trend_Count&IF(Trend_Count=1," audit"," audits")&IF(Trend_Count>${TREND_LINES},", of which the last ${TREND_LINES} are shown",""))`,
  },
  {
    at: `D${CHOICE + 1}:S${CHOICE + 1}`,
    kind: "note",
    value:
      "Left blank, the first block of the register is shown. The line joins the audits on the basis of the latest one (grid, cans read, wind class, SC kind): do not compare marks off the line with it. SC of the driest can rises with the number of cans.",
  },
  { at: `A${HEADINGS}:B${HEADINGS}`, kind: "heading", value: "Basis" },
  ...SHOWN.map((id): CellSpec => ({ at: `${columnOf(id)}${HEADINGS}`, kind: "heading", value: headings.get(id)! })),
  ...Array.from({ length: TREND_LINES }, (_, index): CellSpec[] => {
    const row = FIRST + index;
    return [
      { at: `A${row}:B${row}`, kind: "entry", formula: basisOf(row) },
      ...SHOWN.map((id): CellSpec => {
        const format = formats.get(id);
        return { at: `${columnOf(id)}${row}`, kind: "entry", formula: shownOf(id, row), ...(format && { format }) };
      }),
      { at: `${LINE}${row}`, kind: "working", formula: lineOf(index + 1) },
    ];
  }).flat(),
  { at: `${LINE}${CHOICE}`, kind: "working", name: "Trend_Line", formula: chosenLine() },
  {
    at: `${LINE}${CHOICE + 1}`,
    kind: "working",
    name: "Trend_Key",
    formula: `IF(Trend_Line=0,"",INDEX(${linesOf(answerColumn("w.key"))},Trend_Line))`,
  },
  {
    at: `${columnLetters(AFTER_WORKING + 1)}${CHOICE}`,
    kind: "working",
    name: "Trend_Count",
    formula: `COUNTIF(${linesOf(answerColumn("w.order"))},">0")`,
  },
  {
    at: `${columnLetters(AFTER_WORKING + 1)}${CHOICE + 1}`,
    kind: "working",
    name: "Trend_Latest",
    formula: `IF(Trend_Count=0,"",MATCH(1,${linesOf(answerColumn("w.order"))},0))`,
  },
  {
    at: `${columnLetters(AFTER_WORKING + 1)}${CHOICE + 2}`,
    kind: "working",
    name: "Trend_Kind",
    formula: `IF(Trend_Count=0,"",INDEX(${linesOf(columnOf("kind"))},Trend_Latest)&"")`,
  },
  ...SERIES_CELLS,
];

function chosenLine(): string {
  const labels = linesOf(answerColumn("w.label"));
  const places = linesOf(answerColumn("w.place"));
  return `IF(Register_Block="",IF(COUNT(${places})=0,0,SMALL(${places},1)),SUMPRODUCT(MAX((${labels}=Register_Block)*(ROW(${labels})-${FIRST_LINE - 1}))))`;
}

/** A block chosen from the list, its audits in the order of their days, and what they say in charts. */
export const TREND = {
  cells: [...cells, ...REGISTER_RULES],
  charts: TREND_CHARTS,
  lastColumn: LAST_SERIES,
  top: TREND_TOP,
  choice: CHOICE,
  headings: HEADINGS,
};
