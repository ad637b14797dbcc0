import { choice, number, timeOfDay, words } from "../allowed";
import { cases } from "../cases";
import { checkLines, type DataCheck } from "../check-lines";
import { type Field, formLines, joined } from "../form";
import type { CellSpec, CheckSpec, SheetSpec } from "../sheet-spec";

const FORM = { label: "A:B", entry: "C:D", unit: "E", note: "F:H", noteLine: 40 };
const FIRST = 4;
const PLACES = 12;
const LAST = FIRST + PLACES - 1;
const column = (letter: string) => `${letter}${FIRST}:${letter}${LAST}`;
const NEEDS_PRESSURES = '"needs pressures"';
const NEEDS_FLOWS = '"needs bucket flows"';

const HEADINGS = [
  "Place [words]",
  "Before [kPa]",
  "After [kPa]",
  "Mean [kPa]",
  "Bucket [mL]",
  "Time [s]",
  "Flow [L/h]",
  "Share of mean [%]",
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
    formula: `IF(COUNT(E${row}:F${row})=2,E${row}/F${row}*3.6,"")`,
  },
  { at: `H${row}`, kind: "working", format: "0", formula: `IF(ISNUMBER(G${row}),100*G${row}/Flow_Mean_Lh,"")` },
]);

const on = (range: string, allowed: ReturnType<typeof words>): CheckSpec => ({
  range,
  ...allowed(range.split(":")[0]!),
});

const range = (area: string) => `100*(MAX(${area})-MIN(${area}))/AVERAGE(${area})`;
const spread = (area: string) => `100*STDEV(${area})/AVERAGE(${area})`;
const ifTwo = (area: string, formula: string, otherwise: string) => `IF(COUNT(${area})>1,${formula},${otherwise})`;

const FIGURES: readonly (string | Field)[] = [
  "Pressure and flow in the block",
  {
    label: "Mean pressure",
    unit: "kPa",
    name: "Pressure_Mean_kPa",
    format: "0.0",
    formula: `IF(COUNT(Pressure_kPa)=0,${NEEDS_PRESSURES},AVERAGE(Pressure_kPa))`,
  },
  {
    label: "Range of pressure",
    unit: "%",
    name: "Pressure_Range_Percent",
    format: "0.0",
    formula: ifTwo("Pressure_kPa", range("Pressure_kPa"), NEEDS_PRESSURES),
    note: "(highest − lowest) / mean, over the places.",
  },
  {
    label: "Spread of pressure",
    unit: "%",
    format: "0.0",
    formula: ifTwo("Pressure_kPa", spread("Pressure_kPa"), NEEDS_PRESSURES),
    note: "Standard deviation / mean.",
  },
  {
    label: "Mean flow of a head",
    unit: "L/h",
    name: "Flow_Mean_Lh",
    format: "0.0",
    formula: `IF(COUNT(Flow_Lh)=0,${NEEDS_FLOWS},AVERAGE(Flow_Lh))`,
  },
  {
    label: "Range of flow",
    unit: "%",
    name: "Flow_Range_Percent",
    format: "0.0",
    formula: ifTwo("Flow_Lh", range("Flow_Lh"), NEEDS_FLOWS),
    note: "(highest − lowest) / mean, over the places.",
  },
  {
    label: "Spread of flow",
    unit: "%",
    format: "0.0",
    formula: ifTwo("Flow_Lh", spread("Flow_Lh"), NEEDS_FLOWS),
    note: "Standard deviation / mean.",
  },
  {
    label: "Maker's flow",
    unit: "L/h",
    name: "Maker_Flow_Lh",
    allowed: number(0.1, 20000, "L/h"),
    note: "Of this head and nozzle, from the maker's sheet,",
  },
  {
    label: "at the pressure",
    unit: "kPa",
    name: "Maker_Pressure_kPa",
    allowed: number(1, 2000, "kPa"),
    note: "at this pressure.",
  },
  {
    label: "Flow to expect",
    unit: "L/h",
    name: "Flow_Expected_Lh",
    format: "0.0",
    formula:
      'IF(COUNT(Maker_Flow_Lh,Maker_Pressure_kPa,Pressure_Mean_kPa)=3,Maker_Flow_Lh*SQRT(Pressure_Mean_kPa/Maker_Pressure_kPa),"needs the maker\'s figures")',
    note: "At the pressure measured: the flow of a plain nozzle goes with the square root of pressure.",
  },
  {
    label: "Flow of the bed",
    unit: "L/h",
    name: "Bed_Flow_Lh",
    format: "#,##0",
    formula: 'IF(COUNT(Flow_Mean_Lh,Head_Count)=2,Flow_Mean_Lh*Head_Count,"")',
    note: "Mean flow × heads of this bed (Block).",
  },
];
const FIGURES_FROM = LAST + 2;

const WIND_FROM = FIGURES_FROM + FIGURES.length + 1;
const WIND_LINES = 6;
const WIND_FIRST = WIND_FROM + 1;
const WIND_LAST = WIND_FROM + WIND_LINES;
const COMPASS = ["N", "NE", "E", "SE", "S", "SW", "W", "NW", "still"];

const METER: readonly (string | Field)[] = [
  "Meter and balance of volumes",
  { label: "Meter at the start", unit: "kL", name: "Meter_Start_kL", format: "0.000", allowed: number(0, 1e9, "kL") },
  { label: "Meter at the stop", unit: "kL", name: "Meter_Stop_kL", format: "0.000", allowed: number(0, 1e9, "kL") },
  {
    label: "Metered for this bed",
    unit: "L",
    name: "Metered_Test_L",
    format: "#,##0",
    formula:
      'IF(COUNT(Meter_Start_kL,Meter_Stop_kL)=2,1000*(Meter_Stop_kL-Meter_Start_kL)/IF(ISNUMBER(Beds_On_Valve),Beds_On_Valve,1),"")',
    note: "Between the two, over the beds on the valve, all taken as alike.",
  },
  {
    label: "Caught on the bed",
    unit: "L",
    name: "Caught_Test_L",
    format: "#,##0",
    formula: 'IF(COUNT(Mean_Depth_mm,Block_Area_m2)=2,Mean_Depth_mm*Block_Area_m2,"")',
    note: "Mean depth × area: 1 mm on 1 m² is 1 L.",
  },
  {
    label: "Caught / metered",
    unit: "share",
    name: "Caught_Metered_Share",
    format: "0.00",
    formula: 'IF(COUNT(Metered_Test_L,Caught_Test_L)=2,IF(Metered_Test_L>0,Caught_Test_L/Metered_Test_L,""),"")',
    note: "The rest fell beside the bed, drifted or leaked.",
  },
];
const METER_FROM = WIND_LAST + 2;
const CHECKS_FROM = METER_FROM + METER.length + 1;

const CHECKS: readonly DataCheck[] = [
  {
    label: "Pressure",
    formula: cases(
      [
        ["NOT(ISNUMBER(Pressure_Range_Percent))", '""'],
        [
          "Pressure_Range_Percent>20",
          '"Pressure differs by "&ROUND(Pressure_Range_Percent,0)&" % between places, over 20: a larger pipe, a loop, or fewer heads on the valve."',
        ],
      ],
      '"ok"',
    ),
  },
];

const { cells, checks, heights } = joined(
  formLines(FIGURES_FROM, FORM, FIGURES),
  formLines(METER_FROM, FORM, METER),
  checkLines(CHECKS_FROM, { label: "A", text: "B:H" }, CHECKS),
);

/** What was measured at the heads, the wind and the meter. */
export const HEADS: SheetSpec = {
  name: "Heads",
  widths: [24, 10, 10, 10, 10, 10, 10, 16],
  heights: { ...heights, 2: 28, 3: 30 },
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
    { at: `A${WIND_FROM}`, kind: "heading", value: "Wind: time [h:mm]" },
    { at: `B${WIND_FROM}:C${WIND_FROM}`, kind: "heading", value: "Speed [m/s]" },
    { at: `D${WIND_FROM}:E${WIND_FROM}`, kind: "heading", value: "From [choose]" },
    ...Array.from({ length: WIND_LINES }, (_, index) => WIND_FIRST + index).flatMap((row): CellSpec[] => [
      { at: `A${row}`, kind: "input", format: "h:mm" },
      { at: `B${row}:C${row}`, kind: "input" },
      { at: `D${row}:E${row}`, kind: "input" },
    ]),
    { at: `F${WIND_FIRST}:G${WIND_FIRST}`, kind: "label", value: "Mean wind [m/s]" },
    {
      at: `H${WIND_FIRST}`,
      kind: "answer",
      name: "Wind_Mean_ms",
      format: "0.0",
      formula: 'IF(COUNT(Wind_ms)=0,"needs a log",AVERAGE(Wind_ms))',
    },
    { at: `F${WIND_FIRST + 1}:G${WIND_FIRST + 1}`, kind: "label", value: "Strongest [m/s]" },
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
    Wind_Time: `A${WIND_FIRST}:A${WIND_LAST}`,
    Wind_ms: `B${WIND_FIRST}:B${WIND_LAST}`,
    Wind_From: `D${WIND_FIRST}:D${WIND_LAST}`,
  },
  checks: [
    ...checks,
    on(column("A"), words(30)),
    on(`B${FIRST}:C${LAST}`, number(0, 2000, "kPa")),
    on(column("E"), number(0, 200000, "mL")),
    on(column("F"), number(0.1, 3600, "s")),
    on(`A${WIND_FIRST}:A${WIND_LAST}`, timeOfDay),
    on(`B${WIND_FIRST}:B${WIND_LAST}`, number(0, 60, "m/s")),
    on(`D${WIND_FIRST}:D${WIND_LAST}`, choice(...COMPASS)),
  ],
  shades: [],
};
