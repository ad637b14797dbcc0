import { FACES } from "../../bed/faces";
import { choice, number, timeOfDay, words } from "../../form/allowed";
import { checkLines } from "../../form/check-lines";
import { formLines, joined } from "../../form/entry-lines";
import type { CellSpec, CheckSpec, SheetSpec } from "../../form/sheet-spec";
import { HEAD_CHECKS } from "./checks";
import { HEAD_FIGURES, METER_LINES } from "./lines";

const FORM = { label: "A:B", entry: "C:D", unit: "E", note: "F:M", noteLine: 70 };
const FIRST = 4;
/** Lines of heads; each is the head that has its number on the map. */
const PLACES = 60;
const LAST = FIRST + PLACES - 1;
const column = (letter: string) => `${letter}${FIRST}:${letter}${LAST}`;

const HEADINGS = [
  "Head",
  "Place [words]",
  "Across [m]",
  "Along [m]",
  "Arc [deg]",
  "Faces [choose]",
  "Before [kPa]",
  "After [kPa]",
  "Mean [kPa]",
  "Bucket [mL]",
  "Time [s]",
  "Flow [L/h]",
  "Of the mean [%]",
];
const LETTERS = "ABCDEFGHIJKLM";
const TYPED = ["B", "C", "D", "E", "F", "G", "H", "J", "K"];

/** Figures are in the middle, so that none meets its neighbour at an edge. */
const inTheMiddle = (letter: string) => (letter === "B" ? {} : ({ align: "center" } as const));

const rows = Array.from({ length: PLACES }, (_, index) => FIRST + index);

const placeLines = rows.flatMap((row, index): CellSpec[] => [
  { at: `A${row}`, kind: "label", value: index + 1, align: "center" },
  ...TYPED.map((letter): CellSpec => ({ at: `${letter}${row}`, kind: "input", ...inTheMiddle(letter) })),
  {
    at: `I${row}`,
    kind: "working",
    align: "center",
    format: "0.0",
    formula: `IF(COUNT(G${row}:H${row})=0,"",AVERAGE(G${row}:H${row}))`,
  },
  {
    at: `L${row}`,
    kind: "working",
    align: "center",
    format: "0.0",
    formula: `IF(COUNT(J${row}:K${row})=2,IF(K${row}>0,J${row}/K${row}*3.6,""),"")`,
  },
  {
    at: `M${row}`,
    kind: "working",
    align: "center",
    format: "0",
    formula: `IF(ISNUMBER(L${row}),IF(Flow_Mean_Lh>0,100*L${row}/Flow_Mean_Lh,""),"")`,
  },
]);

const on = (range: string, allowed: ReturnType<typeof words>): CheckSpec => ({
  range,
  ...allowed(range.split(":")[0]!),
});

const FIGURES_FROM = LAST + 2;
const WIND_FROM = FIGURES_FROM + HEAD_FIGURES.length + 1;
/** Lines of the wind log. */
export const WIND_LINES = 6;
const WIND_FIRST = WIND_FROM + 1;
const WIND_LAST = WIND_FROM + WIND_LINES;
const COMPASS = ["N", "NE", "E", "SE", "S", "SW", "W", "NW", "still"];
const METER_FROM = WIND_LAST + 2;
const CHECKS_FROM = METER_FROM + METER_LINES.length + 2;

const found = checkLines(CHECKS_FROM, { label: "A:B", text: "C:M" }, HEAD_CHECKS);
const { cells, checks, heights } = joined(
  formLines(FIGURES_FROM, FORM, HEAD_FIGURES),
  formLines(METER_FROM, FORM, METER_LINES),
  found,
);

/** What was measured at the heads, the wind and the meter. */
export const HEADS: SheetSpec = {
  name: "Heads",
  roomy: true,
  frozenRows: 3,
  pages: 2,
  widths: [7, 20, 8, 8, 7, 13, 8, 8, 8, 8, 8, 8, 10],
  heights: { ...heights, 2: 42, 3: 30, [WIND_FROM]: 30 },
  cells: [
    { at: "A1:M1", kind: "title", value: "Heads" },
    {
      at: "A2:M2",
      kind: "said",
      value:
        "A line a head, numbered as on the map: row after row from the top, each from left to right. Places left blank follow the layout on Block; an arc of 0 says that there is no head. While the heads run: gauge at the first, last, highest and lowest head, before and after the test; a bucket and a watch at four to six heads.",
    },
    ...HEADINGS.map(
      (value, index): CellSpec => ({
        at: `${LETTERS[index]}3`,
        kind: "heading",
        value,
        ...inTheMiddle(LETTERS[index]!),
      }),
    ),
    ...placeLines,
    ...cells,
    { at: `A${CHECKS_FROM - 1}:M${CHECKS_FROM - 1}`, kind: "heading", value: "Data checks" },
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
    Head_Place: column("B"),
    Head_Across_m: column("C"),
    Head_Along_m: column("D"),
    Head_Arc_deg: column("E"),
    Head_Faces: column("F"),
    Pressure_Before_kPa: column("G"),
    Pressure_After_kPa: column("H"),
    Pressure_kPa: column("I"),
    Bucket_mL: column("J"),
    Bucket_s: column("K"),
    Flow_Lh: column("L"),
    Flow_Share_Percent: column("M"),
    Wind_Time: `A${WIND_FIRST}:A${WIND_LAST}`,
    Wind_ms: `B${WIND_FIRST}:B${WIND_LAST}`,
    Head_Checks: `B${CHECKS_FROM}:C${CHECKS_FROM + HEAD_CHECKS.length - 1}`,
    Wind_From: `C${WIND_FIRST}:C${WIND_LAST}`,
  },
  checks: [
    ...checks,
    on(column("B"), words(30)),
    on(`C${FIRST}:D${LAST}`, number(-100, 600, "m")),
    on(column("E"), number(0, 360, "deg")),
    on(column("F"), choice(...Object.keys(FACES))),
    on(`G${FIRST}:H${LAST}`, number(0, 2000, "kPa")),
    on(column("J"), number(0, 200000, "mL")),
    on(column("K"), number(0.1, 3600, "s")),
    on(`A${WIND_FIRST}:A${WIND_LAST}`, timeOfDay),
    on(`B${WIND_FIRST}:B${WIND_LAST}`, number(0, 60, "m/s")),
    on(`C${WIND_FIRST}:C${WIND_LAST}`, choice(...COMPASS)),
  ],
  shades: found.shades,
};
