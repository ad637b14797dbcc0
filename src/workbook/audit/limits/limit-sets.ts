import { BUILT_IN_LIMITS } from "../../../core/figures/limits";
import { MEASURES } from "../../../core/figures/measures";

/** A measure that can have a limit, and the part of its names. */
export interface LimitedMeasure {
  measure: string;
  short: string;
  /** Whether it may have a least and a most value. */
  low?: true;
  high?: true;
  /** How its limit is written. */
  like: string;
}

export const LIMITED_MEASURES: readonly LimitedMeasure[] = [
  { measure: MEASURES.MAR.name, short: "MAR", low: true, high: true, like: "5 to 12" },
  { measure: MEASURES.CU.name, short: "CU", low: true, like: ">= 85" },
  { measure: MEASURES.DU.name, short: "DU", low: true, like: ">= 80" },
  { measure: MEASURES.SC_CAN.name, short: "SC", high: true, like: "<= 1.5" },
  { measure: MEASURES.SC_QUARTER.name, short: "SCQ", high: true, like: "<= 1.3" },
];

/** What can be chosen, and what it is. */
export const LIMIT_SETS = [
  ["General", "One limit a measure from different sources; what CANFALL.SUMMARY uses when no limits are given."],
  ["Queensland industry", "Pages of the Queensland nursery industry on growing media and irrigation."],
  [
    "Queensland notes",
    "Nursery notes of April/May 2007: an acceptable SC of about 1.2, a rate of about 15 mm/h at most.",
  ],
  ["Florida nurseries", "University extension: DU under 60 % is low, 80 % and over is high."],
  ["Rule of thumb", "An Australian consultant's rule for CU."],
  ["Common practice", "What auditors call efficient; no printed source."],
  ["None", "No limits but those that are typed below."],
] as const;

/** A limit of a set. */
export interface SetLine {
  set: (typeof LIMIT_SETS)[number][0];
  measure: string;
  text: string;
  source: string;
  year: string;
  note: string;
}

const general = BUILT_IN_LIMITS.map(
  ({ measure, text, source, year }): SetLine => ({ set: "General", measure, text, source, year, note: "" }),
);
const of = (measure: string) => {
  const { text, source, year } = BUILT_IN_LIMITS.find((limit) => limit.measure === measure)!;
  return { measure, text, source, year };
};
const NOTES_2007 = { source: "Nursery notes, April/May 2007, Queensland", year: "2007" };

export const SET_LINES: readonly SetLine[] = [
  ...general,
  {
    set: "Queensland industry",
    ...of(MEASURES.MAR.name),
    note: "a survey of 200 nurseries found 20.2 on average",
  },
  {
    set: "Queensland notes",
    measure: MEASURES.MAR.name,
    text: "<= 15",
    ...NOTES_2007,
    note: "never above what the mix takes up",
  },
  {
    set: "Queensland notes",
    measure: MEASURES.SC_CAN.name,
    text: "<= 1.2",
    ...NOTES_2007,
    note: "about 1.2 is acceptable",
  },
  { set: "Florida nurseries", ...of(MEASURES.DU.name), note: "under 60 is low" },
  { set: "Rule of thumb", ...of(MEASURES.CU.name), note: "" },
  { set: "Common practice", ...of(MEASURES.SC_CAN.name), note: "poor layouts reach 4 and more" },
];
