import type { Entries } from "../../src/workbook/form/build";

/** Something typed over the example, and what the checks say to it. */
export interface Case {
  title: string;
  typed: Entries;
  said: readonly (readonly [sheet: string, label: string, text: string])[];
}

export const column = (...values: (string | number)[]) => values.map((value) => [value]);
export const grid = (rows: number, columns: number, reading: string | number) =>
  Array.from({ length: rows }, () => Array.from({ length: columns }, () => reading));
export const withReading = (reading: string | number) => {
  const readings = grid(5, 5, 20);
  readings[2]![3] = reading;
  return readings;
};

const CANS = [
  "Readings",
  "Positions",
  "Pots",
  "Walk-through",
  "Can opening",
  "Leaves over the cans",
  "Blank places",
  "Number of cans",
  "Can spacing",
  "Edge cans",
  "Mean catch",
  "Wind",
  "Rate",
  "Cans against heads",
  "Clock",
  "A very wet can",
  "A very dry can",
];
const HEADS = [
  "Places of heads",
  "Pressure",
  "Before and after",
  "Buckets",
  "Throw and spacing",
  "Flow from head to head",
  "Flow against the maker's",
  "Meter",
  "Caught / metered",
];

/** Every data check, by its sheet and label. */
export const DATA_CHECKS = [
  ...CANS.map((label) => ["Cans", label] as const),
  ...HEADS.map((label) => ["Heads", label] as const),
];
