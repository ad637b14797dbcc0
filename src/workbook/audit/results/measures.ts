import type { Figure } from "../../../core/figures/figure";
import { MEASURES } from "../../../core/figures/measures";
import { figureField } from "../../form/entry-field";
import type { CellSpec } from "../../form/sheet-spec";
import { whileFresh } from "../working/stamp";
import { DRY, NEEDS_FOUR, OUT_OF_DATE, QUARTER_DRY } from "./words";

const FIRST_MEASURE = 6;

const limited = (limit: string, formula: string, otherwise: "TRUE" | "FALSE") =>
  limit ? `IF(ISNUMBER(${limit}),${formula},${otherwise})` : otherwise;

/** Where a value, or an interval, is against its limit; the limit itself is within. */
function place([least, most]: readonly [string, string], low: string, high: string): string {
  const [first, last] = [`ROUND(${least},9)`, `ROUND(${most},9)`];
  const inside = `AND(${limited(low, `${first}>=${low}`, "TRUE")},${limited(high, `${last}<=${high}`, "TRUE")})`;
  if (least === most) return `IF(${inside},"within","outside")`;
  const beyond = `OR(${limited(low, `${last}<${low}`, "FALSE")},${limited(high, `${first}>${high}`, "FALSE")})`;
  return `IF(${inside},"within",IF(${beyond},"outside","too close to call"))`;
}

/** The verdict of a measure: by the interval that the pane keeps, where it has one, else by the value alone. */
function verdict(value: string, low: string, high: string, ends: string | undefined): string {
  const indicative = 'IF(Cans_Counted<24," (indicative)","")';
  const alone = `${place([value, value], low, high)}&${indicative}`;
  const [least, most] = [`Ends_${ends}_Low`, `Ends_${ends}_High`];
  const whole = `IF(COUNT(${least},${most})=2,${place([least, most], low, high)}&${indicative},${alone})`;
  const read = ends
    ? whileFresh(["Ends_Stamp", "Inputs_Stamp"], whole, { none: alone, stale: `"${OUT_OF_DATE}"` })
    : alone;
  const judged = `IF(Cans_Counted<16,"too few cans",${read})`;
  const limits = [low, high].filter((limit) => limit !== "");
  const worded = `IF(${value}="${NEEDS_FOUR}","too few cans",IF(OR(${value}="${DRY}",${value}="${QUARTER_DRY}"),"outside",""))`;
  return `IF(COUNT(${limits.join(",")})=0,"",IF(ISNUMBER(${value}),${judged},${worded}))`;
}

interface Measure {
  figure: Figure & { readonly note: string };
  /** Where the sheet has room for more than its name, or for less. */
  label?: string;
  name?: string;
  formula: string;
  limit?: { name: string; low?: true; high?: true; verdict: string; ends?: true };
}

const used = (name: string) => `IF(By_Area,Weighted_${name},Result_${name})`;

const LINES: readonly Measure[] = [
  {
    figure: MEASURES.CANS,
    formula: "Cans_Counted",
  },
  { figure: MEASURES.DRY, formula: "Cans_Dry" },
  {
    figure: MEASURES.MAR,
    label: `${MEASURES.MAR.name} (${MEASURES.MAR.short})`,
    name: "Used_MAR",
    formula: used("MAR"),
    limit: { name: "MAR", low: true, high: true, verdict: "Verdict_MAR", ends: true },
  },
  {
    figure: MEASURES.CU,
    name: "Used_CU",
    formula: used("CU"),
    limit: { name: "CU", low: true, verdict: "Verdict_CU", ends: true },
  },
  {
    figure: MEASURES.DU,
    name: "Used_DU",
    formula: used("DU_Quarter"),
    limit: { name: "DU", low: true, verdict: "Verdict_DU", ends: true },
  },
  {
    figure: MEASURES.SC_CAN,
    name: "Used_SC_Can",
    formula: used("SC_Can"),
    limit: { name: "SC", high: true, verdict: "Verdict_SC" },
  },
  {
    figure: MEASURES.SC_QUARTER,
    name: "Used_SC_Quarter",
    formula: used("SC_Quarter"),
    limit: { name: "SCQ", high: true, verdict: "Verdict_SCQ", ends: true },
  },
  {
    figure: MEASURES.SC_SHARE,
    label: "SC (share of pots below)",
    name: "Used_SC_Share",
    formula: used("SC_Share"),
  },
];

function measureLines({ figure, label, name, formula, limit }: Measure, index: number): CellSpec[] {
  const { unit, format } = figureField(figure);
  const row = FIRST_MEASURE + 2 * index;
  const low = limit?.low ? `Limit_${limit.name}_Low` : "";
  const high = limit?.high ? `Limit_${limit.name}_High` : "";
  return [
    { at: `A${row}`, kind: "label", value: label ?? figure.name },
    { at: `B${row}`, kind: "answer", formula, ...(name && { name }), format },
    { at: `C${row}`, kind: "unit", value: unit },
    ...(limit && name
      ? ([
          { at: `D${row}`, kind: "answer", formula: `Limit_${limit.name}_Text` },
          {
            at: `E${row}`,
            kind: "answer",
            formula: verdict(name, low, high, limit.ends && limit.name),
            name: limit.verdict,
          },
          { at: `F${row}:F${row + 1}`, kind: "note", formula: `Limit_${limit.name}_Source` },
        ] satisfies CellSpec[])
      : []),
    { at: `A${row + 1}:E${row + 1}`, kind: "note", value: figure.note },
  ];
}

/** Each measure with its limit and verdict, and below it what it means. */
export const MEASURE_CELLS: readonly CellSpec[] = LINES.flatMap(measureLines);

export const MEASURE_HEIGHTS: Readonly<Record<number, number>> = Object.fromEntries(
  LINES.map(({ figure }, index) => [FIRST_MEASURE + 2 * index + 1, figure.note.length > 90 ? 28 : 22]),
);

/** The first row that is free below them. */
export const AFTER_MEASURES = FIRST_MEASURE + 2 * LINES.length + 1;
