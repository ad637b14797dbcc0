import { columnLetters } from "../../hosts/address";
import type { CellSpec, ChartSpec } from "../sheet-spec";
import { AFTER_WORKING, answerColumn } from "./register-answers";
import { columnOf, FIRST_LINE, LAST_LINE, linesOf, REGISTER_COLUMNS } from "./register-columns";

/** The last so many audits of the chosen block. */
export const TREND_LINES = 12;
const TREND_TOP = LAST_LINE + 2;
const CHOICE = TREND_TOP + 1;
const HEADINGS = TREND_TOP + 3;
const FIRST = HEADINGS + 1;
const LAST = FIRST + TREND_LINES - 1;
const CHARTS_TOP = LAST + 2;
const CHART_ROWS = 18;
export const TREND_BOTTOM = CHARTS_TOP + CHART_ROWS;

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
const BASIS = "A";
const AS_LATEST = "as the latest";
const trendLine = (row: number) => `$${LINE}${row}`;
const column = (letters: string) => `$${letters}$${FIRST}:$${letters}$${LAST}`;

/** Which line of the register stands in a row: the latest is rank 1, and stands last. */
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

interface Trend {
  id: string;
  title: string;
  up: string;
  /** The figure in a row of the table. */
  value: (row: number) => string;
}

const shown = (id: string) => (row: number) => `$${columnOf(id)}${row}`;
const TRENDS: readonly Trend[] = [
  { id: "MAR", title: "MAR", up: "MAR [mm/h]", value: shown("mar") },
  { id: "CU", title: "CU", up: "CU [%]", value: shown("cu") },
  {
    id: "SC",
    title: "SC that sets the run time",
    up: "SC",
    value: (row) => `IF(Trend_Kind="low quarter",$${columnOf("scQuarter")}${row},$${columnOf("scCan")}${row})`,
  },
];
const SERIES = [
  { name: "each audit", fill: "#bf812d", belongs: (basis: string) => `${basis}<>""` },
  { name: "on the basis of the latest", fill: "#01665e", belongs: (basis: string) => `${basis}="${AS_LATEST}"` },
] as const;
const PARTS = ["row", "pick", "x", "y"] as const;
const partColumn = (trend: number, series: number, part: (typeof PARTS)[number]) =>
  columnLetters(AFTER_WORKING + 2 + (trend * SERIES.length + series) * PARTS.length + PARTS.indexOf(part));

/** Points of one series: rows that belong to it, packed to the front; the rest repeats a point, so no cell is blank. */
function seriesCells({ value }: Trend, trend: number, series: number): CellSpec[] {
  const own = column(partColumn(trend, series, "row"));
  const every = column(partColumn(trend, 0, "row"));
  return Array.from({ length: TREND_LINES }, (_, index): CellSpec[] => {
    const row = FIRST + index;
    const at = (part: (typeof PARTS)[number]) => `${partColumn(trend, series, part)}${row}`;
    const picked = (from: string) => `SMALL(${from},MIN(${index + 1},COUNT(${from})))`;
    const inTable = (letters: string) => `IF(${at("pick")}="","",INDEX(${column(letters)},${at("pick")}))`;
    const figure = value(row);
    return [
      {
        at: at("row"),
        kind: "working",
        formula: `IF(${SERIES[series]!.belongs(`$${BASIS}${row}`)},IF(ISNUMBER(${figure}),${index + 1},""),"")`,
      },
      {
        at: at("pick"),
        kind: "working",
        formula: `IF(COUNT(${own})>0,${picked(own)},IF(COUNT(${every})>0,MAX(${every}),""))`,
      },
      { at: at("x"), kind: "working", format: "yyyy-mm-dd", formula: inTable(columnOf("day")) },
      {
        at: at("y"),
        kind: "working",
        formula:
          trend === 2
            ? `IF(Trend_Kind="low quarter",${inTable(columnOf("scQuarter"))},${inTable(columnOf("scCan"))})`
            : inTable(columnOf(trend === 0 ? "mar" : "cu")),
      },
    ];
  }).flat();
}

const CHART_COLUMNS = [
  ["D", "H"],
  ["I", "N"],
  ["O", "S"],
] as const;

const charts: ChartSpec[] = TRENDS.map(({ title, up }, trend) => ({
  over: `${CHART_COLUMNS[trend]![0]}${CHARTS_TOP}:${CHART_COLUMNS[trend]![1]}${CHARTS_TOP + CHART_ROWS - 1}`,
  type: "scatter",
  title,
  axes: ["Date of the audit", up],
  days: true,
  series: SERIES.map(({ name, fill }, series) => ({
    name,
    across: `${partColumn(trend, series, "x")}${FIRST}:${partColumn(trend, series, "x")}${LAST}`,
    values: `${partColumn(trend, series, "y")}${FIRST}:${partColumn(trend, series, "y")}${LAST}`,
    colour: fill,
    ...(series === 0 && { apart: true as const }),
  })),
}));

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
  ...TRENDS.flatMap((trend, index) => SERIES.flatMap((_, series) => seriesCells(trend, index, series))),
];

function chosenLine(): string {
  const labels = linesOf(answerColumn("w.label"));
  const places = linesOf(answerColumn("w.place"));
  return `IF(Register_Block="",IF(COUNT(${places})=0,0,SMALL(${places},1)),SUMPRODUCT(MAX((${labels}=Register_Block)*(ROW(${labels})-${FIRST_LINE - 1}))))`;
}

const RULES = [
  "Compared only on the same basis: the grid of cans, the cans read, the class of the mean wind (up to 2.2, up to 4, over 4 m/s) and the kind of SC are known and the same. Changes are this audit less the earlier one.",
  "Water is compared only where both audits stand for the same area.",
  "A re-test is due the stated months after the last audit of a block, or at once where its last two mean pressures differ by more than the stated share of the one before.",
  "A line that is not ok takes no part. Names of site and block count as the same whatever their capitals.",
  "Each figure as its audit puts it first; where each can counts by its area, the grid says so. Area, water and flow are of all beds on the valve.",
] as const;
const rules: CellSpec[] = [
  { at: `T${TREND_TOP}:AD${TREND_TOP}`, kind: "heading", value: "How it is judged (common practice, no source)" },
  ...RULES.map(
    (value, index): CellSpec => ({
      at: `T${TREND_TOP + 1 + 2 * index}:AD${TREND_TOP + 2 + 2 * index}`,
      kind: "note",
      value,
    }),
  ),
];

/** A block chosen from the list, its audits in the order of their days, and what they say in charts. */
export const TREND = { cells: [...cells, ...rules], charts, top: TREND_TOP, choice: CHOICE, headings: HEADINGS };
