import { positive, upTo, within, zeroOrMore } from "../../checks";
import { InputError } from "../../errors";
import { type Arcs, type Arrangement, checkArcs } from "../heads";
import { type LayoutBasis, parseLayoutBasis } from "../multiplier";
import type { Profile } from "../profile";

/** A head that can be bought. */
export interface PricedHead {
  name: string;
  /** Its throw and flow at its pressure. */
  profile: Profile;
  /** Price of one [currency]. */
  price: number;
}

/** What a layout may not exceed or fall short of; what is left out is free. */
export interface SearchLimits {
  /** Highest SC, of the driest cell or the low quarter as the basis says. */
  coefficient?: number;
  /** Lowest mean rate in the bed [mm/h]. */
  lowRate?: number;
  /** Highest mean rate in the bed [mm/h]. */
  highRate?: number;
  /** Highest flow of all heads together [L/h]. */
  flow?: number;
}

/** What is searched. */
export interface SearchInput {
  /** Width and length of the bed [m]. */
  width: number;
  length: number;
  /** Side of a cell that is asked for [m]. */
  cell: number;
  heads: PricedHead[];
  /** Spacings to try across the width [m]. */
  spacings: number[];
  /** Spacings to try along the length [m]. */
  rowSpacings: number[];
  stands: { arrangement: Arrangement; arcs: Arcs }[];
  /** Price of the riser of one head [currency]. */
  riserPrice: number;
  /** Price of pipe [currency per m]. */
  pipePrice: number;
  /** Price of water [currency per kL]. */
  waterPrice: number;
  /** Years that heads and pipes last. */
  life: number;
  /** Discount rate a year, 0 to 1. */
  discountRate: number;
  /** Net depth a watering day [mm]. */
  depth: number;
  /** Days watered a year. */
  days: number;
  basis: LayoutBasis;
  limits: SearchLimits;
}

/** Refuses what cannot be searched. */
export function checkSearch(input: SearchInput): void {
  for (const list of ["heads", "spacings", "rowSpacings", "stands"] as const) {
    if (input[list].length === 0) throw new InputError(NAMES[list], "hold at least one to try", 0);
  }
  positive("width", input.width, "m");
  positive("length", input.length, "m");
  input.heads.forEach(({ price }, i) => void placed(i, () => zeroOrMore("price", price, "")));
  input.spacings.forEach((spacing, i) => void placed(i, () => positive("spacings", spacing, "m")));
  input.rowSpacings.forEach((spacing, i) => void placed(i, () => positive("row_spacings", spacing, "m")));
  for (const stand of input.stands) checkArcs(stand);
  zeroOrMore("riser_price", input.riserPrice, "");
  zeroOrMore("pipe_price", input.pipePrice, "per m");
  zeroOrMore("water_price", input.waterPrice, "per kL");
  positive("life", input.life, "years");
  within("discount_rate", input.discountRate, 0, 1);
  positive("depth", input.depth, "mm");
  upTo("days", input.days, 366);
  parseLayoutBasis(input.basis);
  checkLimits(input.limits);
}

const NAMES = { heads: "heads", spacings: "spacings", rowSpacings: "row_spacings", stands: "layouts" };

function placed(i: number, check: () => unknown): void {
  try {
    check();
  } catch (error) {
    throw error instanceof InputError ? error.at(`row ${i + 1}`) : error;
  }
}

function checkLimits({ coefficient, lowRate, highRate, flow }: SearchLimits): void {
  if (coefficient !== undefined && !(coefficient >= 1)) throw new InputError("sc_limit", "be at least 1", coefficient);
  if (lowRate !== undefined) positive("lowest_rate", lowRate, "mm/h");
  if (highRate !== undefined) positive("highest_rate", highRate, "mm/h");
  if (lowRate !== undefined && highRate !== undefined && !(lowRate <= highRate)) {
    throw new InputError("lowest_rate", `be at most the highest, ${highRate} mm/h`, lowRate);
  }
  if (flow !== undefined) positive("pump_flow", flow, "L/h");
}
