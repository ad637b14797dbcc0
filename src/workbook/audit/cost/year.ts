import { COSTS } from "../../../core/figures/costs";
import type { FormPart } from "../../form/entry-lines";
import type { CellSpec } from "../../form/sheet-spec";
import { BETWEEN, DRAINED, ENERGY, FERTILISER, HOURS, PLANTS, WATER } from "./amounts";
import { headings, MONEY } from "./lines";
import {
  type CostKind,
  costCell,
  FOUR,
  KINDS,
  LEVELS,
  type Level,
  lackCell,
  NONE,
  OTHERS,
  POWER_PRICES,
  priceColumn,
  SPANS,
  type Span,
  STEP,
  STEPS_FLAT,
  workingColumn,
  YEAR,
} from "./places";

const MEANS: Readonly<Record<CostKind, string>> = {
  Water: "Each kL at the price of its step, or at the one price.",
  Power: "kL · kWh per kL · mean price over the run.",
  Fertiliser:
    "Bed's kL · (share that drains · mg/L in it + share between pots · mg/L in the water) / 1000 · price; 0 where run-off is returned.",
  Labour: "Hours · price of an hour.",
  Losses: "Plants · what one is worth.",
};

/** A price at this level, or the likely one where it is blank. */
const priced = (row: number, level: Level) => {
  const cell = `${priceColumn(level)}${row}`;
  return level === "Likely" ? cell : `IF(ISNUMBER(${cell}),${cell},F${row})`;
};

const BED_WATER = { Now: "Needed_Now_Bed_kL", After: "Needed_After_Bed_kL" } as const;
/** Grams of fertiliser in what drains, for each kL on the bed. */
const drainedGrams = (span: Span) => `${DRAINED(span)}*${FERTILISER(span)}`;

function cost(kind: CostKind, span: Span, level: Level): string {
  switch (kind) {
    case "Water": {
      const kL = span === "Now" ? "C" : "D";
      const steps = FOUR.map((index) => `N(${kL}${STEP + index})*${priced(STEP + index, level)}`);
      return `IF(Steps_In_Use=0,${WATER(span)}*${priceColumn(level)}${STEPS_FLAT},${steps.join("+")})`;
    }
    case "Power":
      return `${WATER(span)}*${ENERGY(span)}*${workingColumn(span)}${POWER_PRICES + LEVELS.indexOf(level)}`;
    case "Fertiliser": {
      const lost = `(${drainedGrams(span)}+N(Fertiliser_Water_mgL)*N(${BETWEEN(span)}))`;
      return `${BED_WATER[span]}*${lost}/1000*${priced(OTHERS + 1, level)}*IF(Runoff_Returned="yes",0,1)`;
    }
    case "Labour":
      return `${HOURS(span)}*${priced(OTHERS + 2, level)}`;
    case "Losses":
      return `${PLANTS(span)}*${priced(OTHERS + 3, level)}`;
  }
}

const total = (span: Span, level: Level): string => {
  const now = KINDS.map((kind) => costCell(kind, "Now", level));
  if (span === "Now") return `IF(COUNT(${now.join(",")})=0,"${NONE}",SUM(${now.join(",")}))`;
  const lacking = KINDS.map((kind, index) => `AND(ISNUMBER(${now[index]}),${lackCell(kind, "After")}<>"")`);
  const counted = KINDS.map((kind, index) => `IF(ISNUMBER(${now[index]}),N(${costCell(kind, "After", level)}),0)`);
  return `IF(OR(COUNT(${now.join(",")})=0,${lacking.join(",")}),"${NONE}",${counted.join("+")})`;
};

const missing = KINDS.map((kind) => {
  const [now, after] = [lackCell(kind, "Now"), lackCell(kind, "After")];
  const words = COSTS[kind].name.toLowerCase();
  return `IF(${now}<>"","${words}: "&${now}&"; ",IF(${after}<>"","${words} after: "&${after}&"; ",""))`;
});
const NOT_COUNTED = `IF(${KINDS.map((kind) => `${lackCell(kind, "Now")}&${lackCell(kind, "After")}`).join("&")}="","Nothing.",${missing.join("&")}&"what lacks a figure is not counted.")`;
/** Of the water bill, that part which does no pot any good. */
const lost = (
  row: number,
  label: string,
  share: (span: Span) => string,
  note: string,
  kind: CostKind = "Water",
): CellSpec[] => [
  { at: `A${row}`, kind: "label", value: label },
  ...SPANS.map((span): CellSpec => {
    const cell = costCell(kind, span, "Likely");
    const part = share(span);
    return {
      at: `${cell[0]}${row}`,
      kind: "answer",
      formula: `IF(COUNT(${cell},${part})=2,${cell}*(${part}),"${NONE}")`,
      format: MONEY,
    };
  }),
  { at: `H${row}`, kind: "note", value: note },
];
const besides = (share: string) => `IF(ISNUMBER(${share}),1-${share},"")`;

const year: CellSpec[] = [
  ...headings(YEAR, ["Costs of a year", "needed now: low", "likely", "high", "after: low", "likely", "high", ""]),
  ...KINDS.flatMap((kind, index): CellSpec[] => [
    { at: `A${YEAR + 1 + index}`, kind: "label", value: COSTS[kind].name },
    ...SPANS.flatMap((span) =>
      LEVELS.map(
        (level): CellSpec => ({
          at: costCell(kind, span, level),
          kind: "answer",
          name: `Cost_${kind}_${span}_${level}`,
          formula: `IF(${lackCell(kind, span)}="",${cost(kind, span, level)},"${NONE}")`,
          format: MONEY,
        }),
      ),
    ),
    { at: `H${YEAR + 1 + index}`, kind: "note", value: MEANS[kind] },
  ]),
  { at: `A${YEAR + 6}`, kind: "label", value: COSTS.Total.name },
  ...SPANS.flatMap((span) =>
    LEVELS.map(
      (level): CellSpec => ({
        at: costCell("Total", span, level),
        kind: "answer",
        name: `Cost_Total_${span}_${level}`,
        formula: total(span, level),
        format: MONEY,
      }),
    ),
  ),
  {
    at: `H${YEAR + 6}`,
    kind: "note",
    value: "Sum of the cost types that have a figure now; the 'after' sum uses the same types.",
  },
  { at: `A${YEAR + 7}`, kind: "label", value: "What is missing" },
  { at: `B${YEAR + 7}:H${YEAR + 7}`, kind: "note", name: "Cost_Missing", formula: NOT_COUNTED },
  ...lost(
    YEAR + 8,
    "In the water: beside the bed",
    (span) => besides(span === "Now" ? "In_Bed_Share" : "After_Share_Used"),
    "Water · (1 - share in the bed). Already in the sum.",
  ),
  ...lost(
    YEAR + 9,
    "In the water: between the pots",
    (span) => `IF(ISNUMBER(${BETWEEN(span)}),${BETWEEN(span)}*${share(span)},"")`,
    "Water · share in the bed · share between pots. Already in the sum.",
  ),
  ...lost(
    YEAR + 10,
    "In the water: drains from the pots",
    (span) => `IF(ISNUMBER(${DRAINED(span)}),${DRAINED(span)}*${share(span)},"")`,
    "Water · share in the bed · share that drains. Already in the sum.",
  ),
  ...lost(
    YEAR + 11,
    "In the fertiliser: between the pots",
    (span) => fertiliserPart(span, `N(Fertiliser_Water_mgL)*N(${BETWEEN(span)})`),
    "Bed's kL · share between pots · mg/L in the water / 1000 · price. Already in the sum.",
    "Fertiliser",
  ),
  ...lost(
    YEAR + 12,
    "In the fertiliser: drains from the pots",
    (span) => fertiliserPart(span, drainedGrams(span)),
    "Bed's kL · share that drains · mg/L in it / 1000 · price. Already in the sum.",
    "Fertiliser",
  ),
];

/** Its part of the fertiliser lost, by the grams in each kL on the bed. */
function fertiliserPart(span: Span, grams: string): string {
  const all = `(${drainedGrams(span)}+N(Fertiliser_Water_mgL)*N(${BETWEEN(span)}))`;
  return `IF(ISNUMBER(${costCell("Fertiliser", span, "Likely")}),IF(${all}>0,${grams}/${all},0),"")`;
}

function share(span: Span): string {
  const name = span === "Now" ? "In_Bed_Share" : "After_Share_Used";
  return `IF(ISNUMBER(${name}),${name},1)`;
}

/** What a year costs now and after, kind by kind. */
export const COSTS_OF_YEAR: FormPart = { cells: year, checks: [], heights: { [YEAR + 7]: 28 } };
