/** Where the parts of the sheet Cost are, by their first row. */
export const STEPS_HEAD = 3;
export const STEPS_FLAT = STEPS_HEAD + 1;
export const STEP = STEPS_FLAT + 1;
export const BANDS_HEAD = STEP + 4;
export const BANDS_FLAT = BANDS_HEAD + 1;
export const BAND = BANDS_FLAT + 1;
export const OTHERS = BAND + 4;
export const AMOUNTS = OTHERS + 4;
export const YEAR = AMOUNTS + 11;
export const SAVED = YEAR + 13;
export const UPGRADE = SAVED + 7;
export const PAYS = UPGRADE + 7;
export const CHART = PAYS + 4;
export const CHART_LAST = CHART + 17;
export const WORKING = CHART_LAST + 2;

/** Steps of water and hours of power, from 0. */
export const FOUR = [0, 1, 2, 3] as const;

/** The kinds of cost, in the order of their rows. */
export const KINDS = ["Water", "Power", "Fertiliser", "Labour", "Losses"] as const;
export type CostKind = (typeof KINDS)[number];
export const SPANS = ["Now", "After"] as const;
export type Span = (typeof SPANS)[number];
export const LEVELS = ["Low", "Likely", "High"] as const;
export type Level = (typeof LEVELS)[number];

/** What is where a figure cannot be given; the line below says why. */
export const NONE = "–";

const rowOf = (kind: CostKind | "Total") => (kind === "Total" ? KINDS.length : KINDS.indexOf(kind));

/** The column of a price: low, likely, high. */
export const priceColumn = (level: Level): string => "EFG"[LEVELS.indexOf(level)]!;
/** The cell of a year's cost. */
export const costCell = (kind: CostKind | "Total", span: Span, level: Level): string =>
  `${"BCDEFG"[3 * SPANS.indexOf(span) + LEVELS.indexOf(level)]}${YEAR + 1 + rowOf(kind)}`;
/** The cell of what is saved of a cost. */
export const savedCell = (kind: CostKind | "Total", level: Level): string =>
  `${"BCD"[LEVELS.indexOf(level)]}${SAVED + 1 + rowOf(kind)}`;
/** The cell that says why a cost cannot be given; "" where it can. */
export const lackCell = (kind: CostKind, span: Span): string =>
  `${span === "Now" ? "F" : "H"}${WORKING + 7 + rowOf(kind)}`;

/** Columns of the working block, now and after. */
export const workingColumn = (span: Span): string => (span === "Now" ? "F" : "G");
export const SHARES = WORKING + 12;
export const BAND_MINUTES = SHARES + 4;
export const POWER_PRICES = BAND_MINUTES + 4;
export const SINGLE = POWER_PRICES + 3;
