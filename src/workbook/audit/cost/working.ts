import { COSTS } from "../../../core/figures/costs";
import { WATER } from "../../../core/figures/water";
import type { FormPart } from "../../form/entry-lines";
import { nestedIfs } from "../../form/nested-ifs";
import type { CellSpec } from "../../form/sheet-spec";
import { RUN, RUN_START } from "./amounts";
import { lackOf } from "./missing";
import {
  BAND,
  BAND_MINUTES,
  BANDS_FLAT,
  CHART,
  costCell,
  KINDS,
  LEVELS,
  type Level,
  lackCell,
  POWER_PRICES,
  priceColumn,
  SHARES,
  SINGLE,
  SPANS,
  type Span,
  WORKING,
  workingColumn,
} from "./places";
import { BANDS_IN_USE, bandLength, bandStart, bandsProblem, STEPS_IN_USE, STEPS_PROBLEM } from "./price-problems";
import { WORTH_TODAY } from "./upgrade";

const FOUR = [0, 1, 2, 3] as const;
const label = (row: number, value: string): CellSpec => ({ at: `D${row}:E${row}`, kind: "note", value });
const working = (at: string, formula: string, format = ""): CellSpec => ({
  at,
  kind: "working",
  formula,
  ...(format && { format }),
});

/** Share of the run that lies in the hours of a price. */
function shareOf(index: number, span: Span): string {
  const [start, length] = [`F${BAND_MINUTES + index}`, `G${BAND_MINUTES + index}`];
  const run = RUN(span);
  const from = `MOD(ROUND(${RUN_START}*1440,0),1440)`;
  const overlap = ["-1440", "", "+1440"].map(
    (day) => `MAX(0,MIN(${from}+${run},${start}+${length}${day})-MAX(${from},${start}${day}))`,
  );
  const byHour = `IF(ISNUMBER(${run}),IF(AND(${run}>0,${run}<=1440),(${overlap.join("+")})/${run},""),"")`;
  return `IF(OR(Bands_In_Use=0,Bands_Problem<>""),"",IF(Bands_In_Use>${index},IF(COUNT(D${BAND}:D${BAND + 3})>0,D${BAND + index},${byHour}),0))`;
}

function powerPrice(span: Span, level: Level): string {
  const priced = (row: number) => {
    const cell = `${priceColumn(level)}${row}`;
    return level === "Likely" ? cell : `IF(ISNUMBER(${cell}),${cell},F${row})`;
  };
  const low = `${priceColumn(level)}${BANDS_FLAT}`;
  const flat =
    level === "Likely" ? low : `IF(ISNUMBER(${low}),IF(${low}<0,"needs a price of 0 or more",${low}),F${BANDS_FLAT})`;
  const column = workingColumn(span);
  const shares = `${column}${SHARES}:${column}${SHARES + 3}`;
  const mean = FOUR.map((index) => `${column}${SHARES + index}*${priced(BAND + index)}`).join("+");
  return nestedIfs(
    [
      ["Bands_In_Use=0", flat],
      ['Bands_Problem<>""', "Bands_Problem"],
      [`COUNT(${shares})<4`, `IF(ISNUMBER(${RUN(span)}),"needs a run of a day at most",${RUN(span)})`],
    ],
    mean,
  );
}

const block: CellSpec[] = [
  { at: `A${CHART}:H${CHART}`, kind: "heading", value: `${WATER.NOW.name} and after, at the likely prices` },
  { at: `A${WORKING}:E${WORKING}`, kind: "heading", value: "Intermediate results; not printed" },
  { at: `F${WORKING}`, kind: "heading", value: "Now" },
  { at: `G${WORKING}`, kind: "heading", value: "After" },
  { at: `H${WORKING}`, kind: "heading", value: "" },
  ...KINDS.flatMap((kind, index): CellSpec[] => {
    const row = WORKING + 1 + index;
    return [
      label(row, kind === "Losses" ? COSTS.Losses.name : COSTS[kind].short),
      ...SPANS.map((span) => working(`${workingColumn(span)}${row}`, `N(${costCell(kind, span, "Likely")})`, "#,##0")),
      { at: `H${row}`, kind: "note", value: index === 0 ? "For the chart; 0 where it cannot be given." : "" },
    ];
  }),
  { at: `A${WORKING + 6}:E${WORKING + 6}`, kind: "heading", value: "What each kind lacks" },
  { at: `F${WORKING + 6}:G${WORKING + 6}`, kind: "heading", value: "Now" },
  { at: `H${WORKING + 6}`, kind: "heading", value: "After" },
  ...KINDS.flatMap((kind): CellSpec[] => {
    const now = lackCell(kind, "Now");
    const row = Number(now.slice(1));
    return [
      label(row, kind === "Losses" ? COSTS.Losses.name : COSTS[kind].short),
      { at: `${now}:G${row}`, kind: "note", formula: lackOf(kind, "Now"), name: `Lack_${kind}_Now` },
      { at: lackCell(kind, "After"), kind: "note", formula: lackOf(kind, "After"), name: `Lack_${kind}_After` },
    ];
  }),
  ...FOUR.flatMap((index): CellSpec[] => [
    label(SHARES + index, `Share of the run in hours ${index + 1}`),
    ...SPANS.map((span) => working(`${workingColumn(span)}${SHARES + index}`, shareOf(index, span), "0.000")),
    label(BAND_MINUTES + index, `Hours ${index + 1}: begin, long [min]`),
    working(`F${BAND_MINUTES + index}`, bandStart(index)),
    working(`G${BAND_MINUTES + index}`, bandLength(index, `F${BAND_MINUTES + index}`)),
  ]),
  ...LEVELS.flatMap((level, index): CellSpec[] => [
    label(POWER_PRICES + index, `${COSTS.Power.short}, mean over the run, ${level.toLowerCase()}`),
    ...SPANS.map((span) => ({
      ...working(`${workingColumn(span)}${POWER_PRICES + index}`, powerPrice(span, level), "0.0000"),
      name: `Power_Price_${span}_${level}`,
    })),
  ]),
  label(SINGLE, "Steps filled in; what is wrong"),
  { ...working(`F${SINGLE}`, STEPS_IN_USE), name: "Steps_In_Use" },
  { at: `G${SINGLE}:H${SINGLE}`, kind: "note", formula: STEPS_PROBLEM, name: "Steps_Problem" },
  label(SINGLE + 1, "Hours filled in; what is wrong"),
  { ...working(`F${SINGLE + 1}`, BANDS_IN_USE), name: "Bands_In_Use" },
  {
    at: `G${SINGLE + 1}:H${SINGLE + 1}`,
    kind: "note",
    formula: bandsProblem(`G${BAND_MINUTES}:G${BAND_MINUTES + 3}`, RUN_START),
    name: "Bands_Problem",
  },
  label(SINGLE + 2, "Worth today of 1 a year"),
  { ...working(`F${SINGLE + 2}:G${SINGLE + 2}`, WORTH_TODAY, "0.000"), name: "Upgrade_Worth" },
];

/** What is calculated on the way, below the chart. */
export const WORKING_LINES: Partial<FormPart> = { cells: block };
