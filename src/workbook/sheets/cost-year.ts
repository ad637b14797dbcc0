import type { FormPart } from "../form";
import type { CellSpec } from "../sheet-spec";
import { DRAINED, ENERGY, FERTILISER, HOURS, PLANTS, WATER } from "./cost-amounts";
import {
  type CostKind,
  costCell,
  KINDS,
  LEVELS,
  type Level,
  lackCell,
  NONE,
  OTHERS,
  POWER_PRICES,
  priceColumn,
  SAVED,
  SPANS,
  type Span,
  STEP,
  STEPS_FLAT,
  savedCell,
  workingColumn,
  YEAR,
} from "./cost-places";

const MONEY = "#,##0.00";
const LABELS: Readonly<Record<CostKind, string>> = {
  Water: "Water",
  Power: "Power",
  Fertiliser: "Fertiliser that drains",
  Labour: "Labour",
  Losses: "Plants lost",
};
const MEANS: Readonly<Record<CostKind, string>> = {
  Water: "Each kL at the price of its step, or at the one price.",
  Power: "kL · kWh per kL · mean price over the run.",
  Fertiliser: "Bed's kL · share that drains · mg/L / 1000 · price.",
  Labour: "Hours · price of an hour.",
  Losses: "Plants · what one is worth.",
};

/** A price at this level, or the likely one where it is blank. */
const priced = (row: number, level: Level) => {
  const cell = `${priceColumn(level)}${row}`;
  return level === "Likely" ? cell : `IF(ISNUMBER(${cell}),${cell},F${row})`;
};

function cost(kind: CostKind, span: Span, level: Level): string {
  switch (kind) {
    case "Water": {
      const kL = span === "Now" ? "C" : "D";
      const steps = [0, 1, 2, 3].map((index) => `N(${kL}${STEP + index})*${priced(STEP + index, level)}`);
      return `IF(Steps_In_Use=0,${WATER(span)}*${priceColumn(level)}${STEPS_FLAT},${steps.join("+")})`;
    }
    case "Power":
      return `${WATER(span)}*${ENERGY(span)}*${workingColumn(span)}${POWER_PRICES + LEVELS.indexOf(level)}`;
    case "Fertiliser": {
      const bed = span === "Now" ? "Needed_Now_Bed_kL" : "Needed_After_Bed_kL";
      return `${bed}*${DRAINED(span)}*${FERTILISER(span)}/1000*${priced(OTHERS + 1, level)}`;
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

/** What of a kind is saved; of what hangs on the water, only where less water is used. */
const saved = (kind: CostKind, level: Level): string => {
  const both = `COUNT(${costCell(kind, "Now", level)},${costCell(kind, "After", level)})=2`;
  const counts = kind === "Labour" || kind === "Losses" ? both : `AND(${both},ISNUMBER(Saved_kL))`;
  return `IF(${counts},${costCell(kind, "Now", level)}-${costCell(kind, "After", level)},"${NONE}")`;
};

const savedTotal = (level: Level): string => {
  const both = `COUNT(${costCell("Total", "Now", level)},${costCell("Total", "After", level)})=2`;
  const apart = `${savedCell("Labour", level)},${savedCell("Losses", level)}`;
  return `IF(Waters_To_Driest="yes",IF(${both},${costCell("Total", "Now", level)}-${costCell("Total", "After", level)},"${NONE}"),IF(AND(Waters_To_Driest="no",COUNT(${apart})>0),SUM(${apart}),"${NONE}"))`;
};

const missing = KINDS.map((kind) => {
  const [now, after] = [lackCell(kind, "Now"), lackCell(kind, "After")];
  const words = LABELS[kind].toLowerCase();
  return `IF(${now}<>"","${words}: "&${now}&"; ",IF(${after}<>"","${words} after: "&${after}&"; ",""))`;
});
const NOT_COUNTED = `IF(${KINDS.map((kind) => `${lackCell(kind, "Now")}&${lackCell(kind, "After")}`).join("&")}="","Nothing: every kind is counted.",${missing.join("&")}&"what lacks a figure is not counted.")`;
const WHY = `IF(Waters_To_Driest="yes",IF(ISNUMBER(Saved_kL),"All kinds count: the bed is watered to its driest pot now and after.","No saving yet: "&Saved_kL),IF(Waters_To_Driest="no","Water, power and fertiliser are not counted: the bed is not watered to its driest pot, so the gain of an evener one is better plants, not less water.","No saving yet: Water and cost asks whether the bed is watered to its driest pot."))`;

const heading = (row: number, words: readonly string[], rest: string): CellSpec[] => [
  ...words.map((value, index): CellSpec => ({ at: `${"ABCDEFGH"[index]}${row}`, kind: "heading", value })),
  { at: rest, kind: "heading", value: "" },
];

/** Of the water bill, that part which does no pot any good. */
const lost = (row: number, label: string, share: (span: Span) => string, note: string): CellSpec[] => [
  { at: `A${row}`, kind: "label", value: label },
  ...SPANS.map((span): CellSpec => {
    const cell = costCell("Water", span, "Likely");
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
  ...heading(YEAR, ["Costs of a year", "now: low", "likely", "high", "after: low", "likely", "high"], `H${YEAR}`),
  ...KINDS.flatMap((kind, index): CellSpec[] => [
    { at: `A${YEAR + 1 + index}`, kind: "label", value: LABELS[kind] },
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
  { at: `A${YEAR + 6}`, kind: "label", value: "Together" },
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
  { at: `H${YEAR + 6}`, kind: "note", value: "Of the kinds with a figure now; after, of the same ones." },
  { at: `A${YEAR + 7}`, kind: "label", value: "What is missing" },
  { at: `B${YEAR + 7}:H${YEAR + 7}`, kind: "note", name: "Cost_Missing", formula: NOT_COUNTED },
  ...lost(
    YEAR + 8,
    "In the water: beside the bed",
    (span) => besides(span === "Now" ? "In_Bed_Share" : "After_Share_Used"),
    "Water · (1 - share in the bed). Not added again.",
  ),
  ...lost(
    YEAR + 9,
    "In the water: drains from the pots",
    (span) => `IF(ISNUMBER(${DRAINED(span)}),${DRAINED(span)}*${share(span)},"")`,
    "Water · share in the bed · share that drains. Not added again.",
  ),
];

function share(span: Span): string {
  const name = span === "Now" ? "In_Bed_Share" : "After_Share_Used";
  return `IF(ISNUMBER(${name}),${name},1)`;
}

const saving: CellSpec[] = [
  ...heading(SAVED, ["Saved a year", "low", "likely", "high"], `E${SAVED}:H${SAVED}`),
  ...KINDS.flatMap((kind, index): CellSpec[] => [
    { at: `A${SAVED + 1 + index}`, kind: "label", value: LABELS[kind] },
    ...LEVELS.map(
      (level): CellSpec => ({
        at: savedCell(kind, level),
        kind: "answer",
        name: `Saved_${kind}_${level}`,
        formula: saved(kind, level),
        format: MONEY,
      }),
    ),
  ]),
  { at: `A${SAVED + 6}`, kind: "label", value: "Together" },
  ...LEVELS.map(
    (level): CellSpec => ({
      at: savedCell("Total", level),
      kind: "answer",
      name: `Saved_${level}`,
      formula: savedTotal(level),
      format: MONEY,
    }),
  ),
  { at: `E${SAVED + 1}:H${SAVED + 3}`, kind: "note", name: "Saved_Why", formula: WHY },
  {
    at: `E${SAVED + 4}:H${SAVED + 6}`,
    kind: "note",
    value: "Now less after, at the low, the likely and the high prices. Under 0: it costs more after.",
  },
];

/** What a year costs now and after, kind by kind, and what is saved. */
export const YEAR_AND_SAVING: FormPart = { cells: [...year, ...saving], checks: [], heights: { [YEAR + 7]: 28 } };
