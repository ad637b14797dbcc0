import { WHY_NOT } from "../../core/register/basis";
import { choice, count, date, number } from "../allowed";
import { cases, quoted } from "../cases";
import { type Field, formLines } from "../form";
import type { CellSpec, SheetSpec } from "../sheet-spec";
import { twin } from "../twins";

const DRY = "a can is dry";
const QUARTER_DRY = "the low quarter is dry";
const NEEDS_FOUR = "needs 4 cans";
const FIRST_MEASURE = 6;
/** The figures by area come first where the largest area of a can is over the smallest by more than this. */
const EVEN_UP_TO = 1.05;
const READINGS = "Cans_Readings";

const unless = (lack: string, formula: string) => `IF(${lack}<>"",${lack},${formula})`;
const ofFour = (formula: string) => `IF(Cans_Counted<4,"${NEEDS_FOUR}",${formula})`;
const ofWet = (formula: string) => `IF(Cans_Dry>0,"${DRY}",${formula})`;
const whereNumber = (name: string, formula: string) => `IF(ISNUMBER(${name}),${formula},${name})`;
const inverse = (uniformity: string) =>
  whereNumber(uniformity, `IF(ROUND(${uniformity},7)>0,100/${uniformity},"${QUARTER_DRY}")`);

function verdict(value: string, low: string, high: string): string {
  const reached = (limit: string, sign: string) =>
    limit ? `IF(ISNUMBER(${limit}),ROUND(${value},9)${sign}${limit},TRUE)` : "TRUE";
  const place = `IF(AND(${reached(low, ">=")},${reached(high, "<=")}),"within","outside")`;
  const limited = [low, high].filter((limit) => limit !== "");
  const judged = `IF(Cans_Counted<16,"too few cans",${place}&IF(Cans_Counted<24," (indicative)",""))`;
  const worded = `IF(${value}="${NEEDS_FOUR}","too few cans",IF(OR(${value}="${DRY}",${value}="${QUARTER_DRY}"),"outside",""))`;
  return `IF(COUNT(${limited.join(",")})=0,"",IF(ISNUMBER(${value}),${judged},${worded}))`;
}

interface Measure {
  label: string;
  unit?: string;
  format?: string;
  name?: string;
  formula: string;
  limit?: { name: string; low?: true; high?: true; verdict: string };
  means: string;
}

const used = (weighted: string, plain: string) => `IF(Positions_Uneven,${weighted},${plain})`;

const MEASURES: Measure[] = [
  {
    label: "Cans counted",
    unit: "cans",
    format: "0",
    formula: "Cans_Counted",
    means: "Cans with a reading. A blank place or x is a can that was not read; 0 is a dry can.",
  },
  { label: "Dry cans", unit: "cans", format: "0", formula: "Cans_Dry", means: "Cans that read 0." },
  {
    label: "Mean application rate (MAR)",
    unit: "mm/h",
    format: "0.0",
    name: "Used_MAR",
    formula: used("Weighted_MAR", "Result_MAR"),
    limit: { name: "MAR", low: true, high: true, verdict: "Verdict_MAR" },
    means: "Mean depth in the cans, as millimetres in an hour.",
  },
  {
    label: "CU (Christiansen)",
    unit: "%",
    format: "0.0",
    name: "Used_CU",
    formula: used("Weighted_CU", "Result_CU"),
    limit: { name: "CU", low: true, verdict: "Verdict_CU" },
    means: "100 · (1 - mean distance of the cans from their mean / mean). Christiansen 1942.",
  },
  {
    label: "DU (low quarter)",
    unit: "%",
    format: "0.0",
    name: "Used_DU",
    formula: used("Weighted_DU_Quarter", "Result_DU_Quarter"),
    limit: { name: "DU", low: true, verdict: "Verdict_DU" },
    means: "100 · mean of the driest quarter / mean of all. Merriam and Keller 1978.",
  },
  {
    label: "SC (driest can)",
    format: "0.00",
    name: "Used_SC_Can",
    formula: used("Weighted_SC_Can", "Result_SC_Can"),
    limit: { name: "SC", high: true, verdict: "Verdict_SC" },
    means:
      "Scheduling coefficient: mean / catch of the driest single can. It rises with the number of cans, so compare it only between tests with as many cans.",
  },
  {
    label: "SC (low quarter)",
    format: "0.00",
    name: "Used_SC_Quarter",
    formula: used("Weighted_SC_Quarter", "Result_SC_Quarter"),
    limit: { name: "SCQ", high: true, verdict: "Verdict_SCQ" },
    means: "Mean / mean of the driest quarter.",
  },
  {
    label: "SC (share of pots below)",
    format: "0.00",
    name: "Used_SC_Share",
    formula: `IF(AND(Positions_Uneven,ISNUMBER(Result_SC_Share)),Result_SC_Share*Weighted_Reading/AVERAGE(${READINGS}),Result_SC_Share)`,
    means:
      "Mean / the catch that this share of the cans reach. Run so many times longer, that share of the pots gets the depth wanted.",
  },
];

function measureLines({ label, unit, format, name, formula, limit, means }: Measure, index: number): CellSpec[] {
  const row = FIRST_MEASURE + 2 * index;
  const low = limit?.low ? `Limit_${limit.name}_Low` : "";
  const high = limit?.high ? `Limit_${limit.name}_High` : "";
  return [
    { at: `A${row}`, kind: "label", value: label },
    { at: `B${row}`, kind: "answer", formula, ...(name && { name }), ...(format && { format }) },
    { at: `C${row}`, kind: "unit", value: unit ?? "" },
    ...(limit && name
      ? ([
          { at: `D${row}`, kind: "answer", formula: `Limit_${limit.name}_Text` },
          { at: `E${row}`, kind: "answer", formula: verdict(name, low, high), name: limit.verdict },
          { at: `F${row}:F${row + 1}`, kind: "note", formula: `Limit_${limit.name}_Source` },
        ] satisfies CellSpec[])
      : []),
    { at: `A${row + 1}:E${row + 1}`, kind: "note", value: means },
  ];
}

const AFTER_MEASURES = FIRST_MEASURE + 2 * MEASURES.length + 1;
const BOTH = AFTER_MEASURES + 5;

interface BothWays {
  label: string;
  unit: string;
  format: string;
  plain: string;
  plainName: string;
  weighted?: string;
  weightedName?: string;
}

const share = twin("SC.SHARE", [READINGS, "Share_Wanted"])!;
const shareReached = `LARGE(${READINGS},MAX(1,ROUNDUP(Share_Wanted*Cans_Counted-1E-9,0)))>0`;
const BOTH_WAYS: BothWays[] = [
  {
    label: "Mean application rate",
    unit: "mm/h",
    format: "0.0",
    plain: unless("Lack_Rate", `AVERAGE(${READINGS})*1000/(PI()*Can_Mouth_mm^2/4)*60/Test_Minutes`),
    plainName: "Result_MAR",
    weighted: unless("Lack_Rate", unless("Lack_Area", "Weighted_Reading*1000/(PI()*Can_Mouth_mm^2/4)*60/Test_Minutes")),
    weightedName: "Weighted_MAR",
  },
  {
    label: "CU (Christiansen)",
    unit: "%",
    format: "0.0",
    plain: unless("Lack_Readings", twin("CU.CHRISTIANSEN", [READINGS])!),
    plainName: "Result_CU",
    weighted: unless("Lack_Area", "100*(1-Weighted_Distance/Weighted_Reading)"),
    weightedName: "Weighted_CU",
  },
  {
    label: "DU (low quarter)",
    unit: "%",
    format: "0.0",
    plain: unless("Lack_Readings", ofFour(twin("DU.QUARTER", [READINGS])!)),
    plainName: "Result_DU_Quarter",
    weighted: unless("Lack_Area", ofFour("100*Weighted_Low_Quarter/Weighted_Reading")),
    weightedName: "Weighted_DU_Quarter",
  },
  {
    label: "SC (driest can)",
    unit: "",
    format: "0.00",
    plain: unless("Lack_Readings", ofWet(twin("SC.CAN", [READINGS])!)),
    plainName: "Result_SC_Can",
    weighted: unless("Lack_Area", ofWet(`Weighted_Reading/MIN(${READINGS})`)),
    weightedName: "Weighted_SC_Can",
  },
  {
    label: "SC (low quarter)",
    unit: "",
    format: "0.00",
    plain: inverse("Result_DU_Quarter"),
    plainName: "Result_SC_Quarter",
    weighted: inverse("Weighted_DU_Quarter"),
    weightedName: "Weighted_SC_Quarter",
  },
  {
    label: "SC (share of pots)",
    unit: "",
    format: "0.00",
    plain: unless(
      "Lack_Readings",
      `IF(AND(ISNUMBER(Share_Wanted),COUNTIF(Share_Wanted,">=0.5")=1,COUNTIF(Share_Wanted,"<=1")=1),IF(${shareReached},${share},"too many cans are dry"),"needs a share from 0.5 to 1")`,
    ),
    plainName: "Result_SC_Share",
  },
];

function bothLines(way: BothWays, index: number): CellSpec[] {
  const row = BOTH + 2 + index;
  const { format } = way;
  return [
    { at: `A${row}`, kind: "label", value: way.label },
    { at: `B${row}`, kind: "answer", formula: way.plain, name: way.plainName, format },
    { at: `C${row}`, kind: "unit", value: way.unit },
    ...(way.weighted && way.weightedName
      ? [{ at: `D${row}:E${row}`, kind: "answer", formula: way.weighted, name: way.weightedName, format } as const]
      : []),
  ];
}

const EVENNESS = BOTH + 2 + BOTH_WAYS.length;
const EARLIER = EVENNESS + 2;
const windClass = (wind: string) => `(${wind}>2.2)+(${wind}>4)`;

const NOT_COMPARABLE = [
  ["COUNT(Earlier_Columns,Earlier_Rows,Earlier_Cans)=0", '"no earlier audit is entered on Results"'],
  ['Lack_Readings<>""', '"this audit has no results yet"'],
  [
    "OR(Earlier_Columns<>Grid_Columns,Earlier_Rows<>Grid_Rows,Earlier_Cans<>Cans_Counted)",
    quoted(`${WHY_NOT.grid} (columns, rows or cans read)`),
  ],
  ["NOT(AND(ISNUMBER(Earlier_Wind_ms),ISNUMBER(Wind_Mean_ms)))", quoted(WHY_NOT.windUnknown)],
  [
    `${windClass("Earlier_Wind_ms")}<>${windClass("Wind_Mean_ms")}`,
    quoted(`${WHY_NOT.wind} (up to 2.2, up to 4, over 4 m/s)`),
  ],
  [
    'AND(Earlier_SC_Kind<>"driest can",Earlier_SC_Kind<>"low quarter")',
    quoted(`${WHY_NOT.kind}, or its kind is not known`),
  ],
] as const;

const EARLIER_LINES: readonly (string | Field)[] = [
  "An earlier audit of this bed, for before and after",
  { label: "Date of it", unit: "date", name: "Earlier_Date", format: "yyyy-mm-dd", allowed: date },
  {
    label: "Columns of cans",
    unit: "cans",
    name: "Earlier_Columns",
    note: "Across the bed, with readings.",
    allowed: count(1, 20),
  },
  {
    label: "Rows of cans",
    unit: "cans",
    name: "Earlier_Rows",
    note: "Along the bed, with readings.",
    allowed: count(1, 30),
  },
  { label: "Cans read", unit: "cans", name: "Earlier_Cans", allowed: count(1, 600) },
  { label: "Mean wind", unit: "m/s", name: "Earlier_Wind_ms", allowed: number(0, 40, "m/s") },
  {
    label: "Kind of its SC",
    unit: "choose",
    name: "Earlier_SC_Kind",
    allowed: choice("driest can", "low quarter", "another"),
  },
  {
    label: "SC",
    unit: "ratio",
    name: "Earlier_SC",
    note: "Each can counted alike, as the next three.",
    allowed: number(1, 1000, ""),
  },
  { label: "MAR", unit: "mm/h", name: "Earlier_MAR", allowed: number(0, 1000, "mm/h") },
  { label: "CU", unit: "%", name: "Earlier_CU", allowed: number(-1000, 100, "%") },
  { label: "DU (low quarter)", unit: "%", name: "Earlier_DU", allowed: number(0, 100, "%") },
];
const AFTER_EARLIER = EARLIER + EARLIER_LINES.length;
const FORM = { label: "A", entry: "B", unit: "C", note: "D:F", noteLine: 80 };
const SHARE_LINE: Field = {
  label: "Share of pots to water fully",
  unit: "0.5 to 1",
  name: "Share_Wanted",
  value: 0.9,
  format: "0.00",
  note: "For the SC above: which share of the pots must get the depth wanted?",
  allowed: number(0.5, 1, ""),
};
const earlier = formLines(EARLIER, FORM, EARLIER_LINES);
const shareWanted = formLines(AFTER_MEASURES, FORM, [SHARE_LINE]);

/** The figures of the test against the limits in use. */
export const RESULTS: SheetSpec = {
  name: "Results",
  widths: [27, 15, 9, 12, 24, 34],
  heights: {
    2: 30,
    ...Object.fromEntries(
      MEASURES.map(({ means }, index) => [FIRST_MEASURE + 2 * index + 1, means.length > 90 ? 28 : 22]),
    ),
    [AFTER_MEASURES + 1]: 28,
    [AFTER_MEASURES + 2]: 28,
  },
  cells: [
    { at: "A1:F1", kind: "title", value: "Results" },
    {
      at: "A2:F2",
      kind: "said",
      formula:
        'IF(Lack_Rate<>"","Not all figures can be given: "&Lack_Rate&".",IF(Positions_Uneven,"The cans stand for areas of different size, so each counts by its area; counted alike, they are further down.","Each can counts alike; counted by area, the figures are further down."))',
    },
    { at: "A3:F3", kind: "caution", formula: 'IF(Readings_Problem<>"",Readings_Problem,"")' },
    { at: "A5", kind: "heading", value: "Measure" },
    { at: "B5", kind: "heading", formula: 'IF(Positions_Uneven,"By area","Each can alike")' },
    { at: "C5", kind: "heading", value: "Unit" },
    { at: "D5", kind: "heading", value: "Limit" },
    { at: "E5", kind: "heading", value: "Verdict" },
    { at: "F5", kind: "heading", value: "Limit from" },
    ...MEASURES.flatMap(measureLines),
    ...shareWanted.cells,
    {
      at: `A${AFTER_MEASURES + 1}:F${AFTER_MEASURES + 1}`,
      kind: "note",
      value:
        "Verdicts here compare the value alone with the limit; the limit itself is within. Fewer than 16 cans get no verdict, 16 to 23 an indicative one. The add-in's pane and SUMMARY go by the 90 % interval and count each can alike, so they may say too close to call, or another verdict, where this sheet says within or outside.",
    },
    {
      at: `A${AFTER_MEASURES + 2}:F${AFTER_MEASURES + 2}`,
      kind: "note",
      value:
        "SC has several definitions, so the one used is always named. A dry can makes the SC of the driest can endless: it is outside any limit. Limits differ between sources; the sheet Limits holds the ones in use.",
    },
    { at: `A${BOTH}:F${BOTH}`, kind: "heading", value: "Both ways of counting" },
    { at: `B${BOTH + 1}`, kind: "unit", value: "each can alike" },
    { at: `D${BOTH + 1}:E${BOTH + 1}`, kind: "unit", value: "by the area it stands for" },
    ...BOTH_WAYS.flatMap(bothLines),
    { at: `A${EVENNESS}`, kind: "label", value: "Areas of cans differ" },
    {
      at: `B${EVENNESS}`,
      kind: "answer",
      name: "Positions_Uneven",
      formula: `IF(ISNUMBER(Area_Ratio),Area_Ratio>${EVEN_UP_TO},FALSE)`,
    },
    {
      at: `D${EVENNESS}:F${EVENNESS}`,
      kind: "note",
      value: "TRUE where the largest area is over the smallest by more than 5 %: by area comes first.",
    },
    ...earlier.cells,
    { at: `A${AFTER_EARLIER}`, kind: "label", value: "Can they be compared?" },
    {
      at: `B${AFTER_EARLIER}:F${AFTER_EARLIER}`,
      kind: "answer",
      name: "Earlier_Comparable",
      formula: cases(NOT_COMPARABLE, '"yes"'),
    },
  ],
  checks: [...shareWanted.checks, ...earlier.checks],
};
