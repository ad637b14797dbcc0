import { shortWithUnit } from "../../../core/figures/figure";
import { RUN_TIME } from "../../../core/figures/run-time";
import { areaCell } from "../../form/area-cell";
import type { CellSpec, ChartSpec, CheckSpec, SheetSpec } from "../../form/sheet-spec";
import { MONTHS } from "../months";
import { WEATHER } from "../weather/weather";
import { FACT_LINES, FACTS } from "./facts";
import {
  AREA_ROW,
  CAPTURE_ROW,
  CHART_FROM,
  COEFFICIENT_ROW,
  DEPTH_FROM,
  depthFormula,
  HOW_FROM,
  howFormula,
  inDoubt,
  LITRE_ROW,
  litreFormula,
  MILLIMETRE_ROW,
  millimetreFormula,
  NOTE_ROW,
  RAINED_ROW,
  TAKE_UP_ROW,
  TOP_ROW,
  USE_FROM,
  useFormula,
} from "./formulas";
import { GROUP_COLUMNS, NAME_ROW } from "./places";

const FIRST = GROUP_COLUMNS[0];
const LAST = GROUP_COLUMNS[5];
const COLOURS = ["#003c30", "#dfc27d", "#35978f", "#c7eae5", "#8c510a", "#5ab4ac"] as const;

const derived = (row: number, label: string, note: string, formula: (group: number) => string): CellSpec[] => [
  { at: `A${row}`, kind: "label", value: label },
  ...GROUP_COLUMNS.map(
    (column, group): CellSpec => ({ at: `${column}${row}`, kind: "answer", formula: formula(group), format: "0.0" }),
  ),
  { at: `H${row}:I${row}`, kind: "note", value: note },
];

const nameCells = (row: number, first: string): CellSpec[] => [
  { at: `A${row}`, kind: "heading", value: first },
  ...GROUP_COLUMNS.map(
    (column): CellSpec => ({
      at: `${column}${row}`,
      kind: "heading",
      formula: `IF(${column}$${NAME_ROW}="","-",${column}$${NAME_ROW})`,
    }),
  ),
];

const table = (
  from: number,
  title: string,
  look: Pick<CellSpec, "kind" | "format" | "shrink">,
  formula: (group: number, month: number) => string,
): CellSpec[] => [
  { at: `A${from - 2}:I${from - 2}`, kind: "heading", value: title },
  ...nameCells(from - 1, "Month"),
  ...MONTHS.flatMap((month, index): CellSpec[] => [
    { at: `A${from + index}`, kind: "label", value: month },
    ...GROUP_COLUMNS.map(
      (column, group): CellSpec => ({ at: `${column}${from + index}`, ...look, formula: formula(group, index) }),
    ),
  ]),
];

const weatherBeside: CellSpec[] = [
  { at: `H${DEPTH_FROM - 1}`, kind: "heading", value: "ET0 [mm a day]" },
  { at: `I${DEPTH_FROM - 1}`, kind: "heading", value: "Useful rain [mm a day]" },
  ...MONTHS.flatMap((_, index): CellSpec[] => [
    {
      at: `H${DEPTH_FROM + index}`,
      kind: "working",
      format: "0.00",
      formula: areaCell(WEATHER, "Weather_ET0", index + 1, 1),
    },
    {
      at: `I${DEPTH_FROM + index}`,
      kind: "working",
      format: "0.00",
      formula: areaCell(WEATHER, "Weather_Rain", index + 1, 1),
    },
  ]),
];

const CHART: ChartSpec = {
  over: `A${CHART_FROM}:I${CHART_FROM + 26}`,
  type: "bar",
  title: `${RUN_TIME.NET_DEPTH.short} by month`,
  axes: ["Month", shortWithUnit(RUN_TIME.NET_DEPTH)],
  series: GROUP_COLUMNS.map((column, index) => ({
    name: `=$${column}$${DEPTH_FROM - 1}`,
    across: `A${DEPTH_FROM}:A${DEPTH_FROM + 11}`,
    values: `${column}${DEPTH_FROM}:${column}${DEPTH_FROM + 11}`,
    colour: COLOURS[index]!,
  })),
};

const area = (from: number) => `${FIRST}${from}:${LAST}${from + 11}`;
const row = (at: number) => `${FIRST}${at}:${LAST}${at}`;
const tall = (from: number, height: number) =>
  Object.fromEntries(MONTHS.map((_, index) => [from + index, height] as const));

/** What the pots of each group need, month by month. */
export const DEMAND: SheetSpec = {
  name: "Demand",
  widths: [27, 17, 17, 17, 17, 17, 17, 14, 22],
  heights: {
    2: 32,
    [NAME_ROW]: 30,
    ...Object.fromEntries(
      [TOP_ROW, CAPTURE_ROW, COEFFICIENT_ROW, AREA_ROW, RAINED_ROW, TAKE_UP_ROW].map((line) => [line, 28]),
    ),
    [NOTE_ROW]: 44,
    [LITRE_ROW]: 57,
    [MILLIMETRE_ROW]: 71,
    [DEPTH_FROM - 1]: 30,
    [USE_FROM - 1]: 30,
    [HOW_FROM - 1]: 30,
    ...tall(DEPTH_FROM, 17),
    ...tall(HOW_FROM, 40),
  },
  landscape: true,
  pageEnds: [DEPTH_FROM - 3, CHART_FROM - 2, HOW_FROM - 3],
  cells: [
    { at: "A1:I1", kind: "title", value: "Demand: what the pots need" },
    {
      at: "A2:I2",
      kind: "said",
      value:
        "Net depth = use of a pot · depth that a litre makes in it - useful rain, and 0 where the rain is enough. Use: mean of the pots weighed that month (sheet Weighings); where none were, ET0 (sheet Weather) · coefficient · its area. ET0 from weather does not hold under cover: weigh pots there.",
    },
    { at: `A${NAME_ROW - 1}:I${NAME_ROW - 1}`, kind: "heading", value: "Pot groups" },
    ...FACT_LINES,
    ...derived(
      LITRE_ROW,
      "A litre in a pot makes [mm]",
      "1,000,000 / area of the top [mm²] / capture factor.",
      litreFormula,
    ),
    ...derived(
      MILLIMETRE_ROW,
      "A mm of ET0 takes [mL a pot]",
      "1000 · coefficient · its area; 1 mm on 1 m² is 1 L.",
      millimetreFormula,
    ),
    ...table(
      DEPTH_FROM,
      `${RUN_TIME.NET_DEPTH.short} to water [${RUN_TIME.NET_DEPTH.unit}]`,
      { kind: "answer", format: "0.0", shrink: true },
      depthFormula,
    ),
    ...weatherBeside,
    ...table(USE_FROM, "Water that a pot uses [mL a day]", { kind: "answer", format: "0", shrink: true }, useFormula),
    ...table(HOW_FROM, "How it came about, or what is missing", { kind: "note" }, howFormula),
  ],
  areas: {
    ...Object.fromEntries(FACTS.map(([at, , name]) => [name, row(at)])),
    Demand_Litre_mm: row(LITRE_ROW),
    Demand_Millimetre_mL: row(MILLIMETRE_ROW),
    Demand_Depths: area(DEPTH_FROM),
    Demand_Use_mL: area(USE_FROM),
    Demand_How: area(HOW_FROM),
  },
  checks: FACTS.map(([at, , , , allowed]): CheckSpec => ({ range: row(at), ...allowed(`${FIRST}${at}`) })),
  shades: [
    {
      range: area(DEPTH_FROM),
      formula: inDoubt(`${FIRST}${HOW_FROM}`),
      fill: "#f6e8c3",
      colour: "#543005",
      bold: true,
    },
  ],
  charts: [CHART],
};
