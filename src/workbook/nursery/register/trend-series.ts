import { columnLetters } from "../../../cells/letters";
import { shortWithUnit } from "../../../core/figures/figure";
import { MEASURES } from "../../../core/figures/measures";
import type { CellSpec, ChartSpec } from "../../form/sheet-spec";
import { columnOf } from "./columns";
import { AFTER_WORKING } from "./places";
import { AS_LATEST, BASIS, CHART_ROWS, CHARTS_TOP, FIRST, LAST, TREND_LINES } from "./trend-places";

const column = (letters: string) => `$${letters}$${FIRST}:$${letters}$${LAST}`;

interface Trend {
  id: string;
  title: string;
  up: string;
  /** The figure in a row of the table. */
  value: (row: number) => string;
}

const lineCell = (id: string) => (row: number) => `$${columnOf(id)}${row}`;
const TRENDS: readonly Trend[] = [
  { id: "MAR", title: MEASURES.MAR.short, up: shortWithUnit(MEASURES.MAR), value: lineCell("mar") },
  { id: "CU", title: MEASURES.CU.short, up: shortWithUnit(MEASURES.CU), value: lineCell("cu") },
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

/** MAR, CU and SC over time. */
export const TREND_CHARTS: ChartSpec[] = TRENDS.map(({ title, up }, trend) => ({
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

/** The last of the columns that hold the points of the charts. */
export const LAST_SERIES = partColumn(TRENDS.length - 1, SERIES.length - 1, "y");

/** The points of the charts, in columns of working. */
export const SERIES_CELLS: readonly CellSpec[] = TRENDS.flatMap((trend, index) =>
  SERIES.flatMap((_, series) => seriesCells(trend, index, series)),
);
