import { choice, number, timeOfDay, words } from "../../form/allowed";
import { checkLines } from "../../form/check-lines";
import { formLines, joined } from "../../form/entry-lines";
import type { CellSpec, CheckSpec, SheetSpec } from "../../form/sheet-spec";
import { HEAD_CHECKS } from "./checks";
import { HEAD_FIGURES, METER_LINES } from "./lines";

const FORM = { label: "A:B", entry: "C:D", unit: "E", note: "F:H", noteLine: 44 };
const FIRST = 4;
const PLACES = 12;
const LAST = FIRST + PLACES - 1;
const column = (letter: string) => `${letter}${FIRST}:${letter}${LAST}`;

const HEADINGS = [
  "Place [words]",
  "Before [kPa]",
  "After [kPa]",
  "Mean [kPa]",
  "Bucket [mL]",
  "Time [s]",
  "Flow [L/h]",
  "Of the mean [%]",
];

const rows = Array.from({ length: PLACES }, (_, index) => FIRST + index);

const placeLines = rows.flatMap((row): CellSpec[] => [
  { at: `A${row}`, kind: "input" },
  ...["B", "C", "E", "F"].map((letter): CellSpec => ({ at: `${letter}${row}`, kind: "input" })),
  {
    at: `D${row}`,
    kind: "working",
    format: "0.0",
    formula: `IF(COUNT(B${row}:C${row})=0,"",AVERAGE(B${row}:C${row}))`,
  },
  {
    at: `G${row}`,
    kind: "working",
    format: "0.0",
    formula: `IF(COUNT(E${row}:F${row})=2,IF(F${row}>0,E${row}/F${row}*3.6,""),"")`,
  },
  {
    at: `H${row}`,
    kind: "working",
    format: "0",
    formula: `IF(ISNUMBER(G${row}),IF(Flow_Mean_Lh>0,100*G${row}/Flow_Mean_Lh,""),"")`,
  },
]);

const on = (range: string, allowed: ReturnType<typeof words>): CheckSpec => ({
  range,
  ...allowed(range.split(":")[0]!),
});

const FIGURES_FROM = LAST + 2;
const WIND_FROM = FIGURES_FROM + HEAD_FIGURES.length + 1;
const WIND_LINES = 6;
const WIND_FIRST = WIND_FROM + 1;
const WIND_LAST = WIND_FROM + WIND_LINES;
const COMPASS = ["N", "NE", "E", "SE", "S", "SW", "W", "NW", "still"];
const METER_FROM = WIND_LAST + 2;
const CHECKS_FROM = METER_FROM + METER_LINES.length + 2;

const found = checkLines(CHECKS_FROM, { label: "A", text: "B:H" }, HEAD_CHECKS);
const { cells, checks, heights } = joined(
  formLines(FIGURES_FROM, FORM, HEAD_FIGURES),
  formLines(METER_FROM, FORM, METER_LINES),
  found,
);

/** What was measured at the heads, the wind and the meter. */
export const HEADS: SheetSpec = {
  name: "Heads",
  roomy: true,
  widths: [24, 10, 10, 10, 10, 10, 10, 16],
  heights: { ...heights, 2: 28, 3: 30, [WIND_FROM]: 30 },
  cells: [
    { at: "A1:H1", kind: "title", value: "Heads" },
    {
      at: "A2:H2",
      kind: "said",
      value:
        "While the heads run: gauge at the first, last, highest and lowest head, before and after the test; a bucket and a watch at four to six heads.",
    },
    ...HEADINGS.map((value, index): CellSpec => ({ at: `${"ABCDEFGH"[index]}3`, kind: "heading", value })),
    ...placeLines,
    ...cells,
    { at: `A${CHECKS_FROM - 1}:H${CHECKS_FROM - 1}`, kind: "heading", value: "Data checks" },
    { at: `A${WIND_FROM}`, kind: "heading", value: "Wind: time [h:mm]" },
    { at: `B${WIND_FROM}`, kind: "heading", value: "Speed [m/s]" },
    { at: `C${WIND_FROM}`, kind: "heading", value: "From [choose]" },
    ...Array.from({ length: WIND_LINES }, (_, index) => WIND_FIRST + index).flatMap((row): CellSpec[] => [
      { at: `A${row}`, kind: "input", format: "h:mm" },
      { at: `B${row}`, kind: "input" },
      { at: `C${row}`, kind: "input" },
    ]),
    { at: `E${WIND_FIRST}:G${WIND_FIRST}`, kind: "label", value: "Mean wind [m/s]" },
    {
      at: `H${WIND_FIRST}`,
      kind: "answer",
      name: "Wind_Mean_ms",
      format: "0.0",
      formula: 'IF(COUNT(Wind_ms)=0,"needs a log",AVERAGE(Wind_ms))',
    },
    { at: `E${WIND_FIRST + 1}:G${WIND_FIRST + 1}`, kind: "label", value: "Strongest [m/s]" },
    {
      at: `H${WIND_FIRST + 1}`,
      kind: "answer",
      name: "Wind_Max_ms",
      format: "0.0",
      formula: 'IF(COUNT(Wind_ms)=0,"needs a log",MAX(Wind_ms))',
    },
  ],
  areas: {
    Head_Place: column("A"),
    Pressure_Before_kPa: column("B"),
    Pressure_After_kPa: column("C"),
    Pressure_kPa: column("D"),
    Bucket_mL: column("E"),
    Bucket_s: column("F"),
    Flow_Lh: column("G"),
    Flow_Share_Percent: column("H"),
    Wind_Time: `A${WIND_FIRST}:A${WIND_LAST}`,
    Wind_ms: `B${WIND_FIRST}:B${WIND_LAST}`,
    Head_Checks: `A${CHECKS_FROM}:H${CHECKS_FROM + HEAD_CHECKS.length - 1}`,
    Wind_From: `C${WIND_FIRST}:C${WIND_LAST}`,
  },
  checks: [
    ...checks,
    on(column("A"), words(30)),
    on(`B${FIRST}:C${LAST}`, number(0, 2000, "kPa")),
    on(column("E"), number(0, 200000, "mL")),
    on(column("F"), number(0.1, 3600, "s")),
    on(`A${WIND_FIRST}:A${WIND_LAST}`, timeOfDay),
    on(`B${WIND_FIRST}:B${WIND_LAST}`, number(0, 60, "m/s")),
    on(`C${WIND_FIRST}:C${WIND_LAST}`, choice(...COMPASS)),
  ],
  shades: found.shades,
};
