import { InputError } from "../../../core/errors";
import type { Arcs, Arrangement } from "../../../core/layout/heads";
import type { LayoutBasis } from "../../../core/layout/multiplier";
import { namedProfile, type ShapeName } from "../../../core/layout/profile";
import type { PricedHead, SearchInput } from "../../../core/layout/search/input";
import { numberOf } from "../../parts/fields/typed-number";
import type { LayoutEntries } from "../layout-entries";
import { optionalQuantity } from "../layout-plan";

/** A head that can be bought, as typed. */
export interface HeadEntries {
  name: string;
  /** Throw [m], flow [L/h] and price each. */
  radius: string;
  flow: string;
  price: string;
  shape: ShapeName;
}

/** A search as typed. */
export interface SearchEntries {
  heads: HeadEntries[];
  /** Spacings to try [m], with blanks or semicolons between them. */
  spacings: string;
  rowSpacings: string;
  stands: string[];
  riserPrice: string;
  pipePrice: string;
  waterPrice: string;
  life: string;
  /** Discount rate a year [%]. */
  discount: string;
  days: string;
  basis: LayoutBasis;
  /** Limits; blank where there is none. */
  highest: string;
  lowRate: string;
  highRate: string;
}

/** The layouts that may be tried, by their words. */
export const STANDS: Record<string, { arrangement: Arrangement; arcs: Arcs }> = {
  "border, full circles": { arrangement: "border", arcs: "full" },
  "border, matched arcs": { arrangement: "border", arcs: "matched" },
  inset: { arrangement: "inset", arcs: "full" },
  "centre line": { arrangement: "centre", arcs: "full" },
  "staggered, full circles": { arrangement: "staggered", arcs: "full" },
  "staggered, matched arcs": { arrangement: "staggered", arcs: "matched" },
};

/** Invented heads to start with: put your supplier's in their place. */
export const FIRST_SEARCH: SearchEntries = {
  heads: [
    { name: "small (invented)", radius: "3", flow: "120", price: "4", shape: "triangular" },
    { name: "middle (invented)", radius: "4.5", flow: "250", price: "6", shape: "triangular" },
    { name: "large (invented)", radius: "6", flow: "450", price: "9", shape: "ring" },
  ],
  spacings: "2.5 3 4 5 6",
  rowSpacings: "2.5 3 4 5 6",
  stands: Object.keys(STANDS),
  riserPrice: "8",
  pipePrice: "5",
  waterPrice: "2.60",
  life: "10",
  discount: "5",
  days: "300",
  basis: "driest",
  highest: "1.5",
  lowRate: "5",
  highRate: "15",
};

function listOf(parameter: string, text: string): number[] {
  const parts = text.split(/[\s;]+/).filter((part) => part !== "");
  return parts.map((part, index) => numberOf(parameter, part, `place ${index + 1}`));
}

function headOf({ name, radius, flow, price, shape }: HeadEntries, index: number): PricedHead {
  try {
    const profile = namedProfile(shape, numberOf("radius", radius), numberOf("flow", flow));
    return { name, profile, price: numberOf("price", price) };
  } catch (error) {
    if (error instanceof InputError) throw error.at(`head ${index + 1}`);
    throw error;
  }
}

function limitsOf({ highest, lowRate, highRate }: SearchEntries, pump: string): SearchInput["limits"] {
  const limits = {
    coefficient: highest.trim() === "" ? undefined : numberOf("sc_limit", highest),
    lowRate: optionalQuantity("lowest_rate", lowRate, "mm/h"),
    highRate: optionalQuantity("highest_rate", highRate, "mm/h"),
    flow: optionalQuantity("pump_flow", pump, "L/h"),
  };
  return Object.fromEntries(Object.entries(limits).filter(([, limit]) => limit !== undefined));
}

/** The search that was typed, over the bed, cell, depth and pump of the layout. */
export function searchOf(search: SearchEntries, layout: LayoutEntries): SearchInput {
  return {
    width: numberOf("width", layout.width),
    length: numberOf("length", layout.length),
    cell: numberOf("cell", layout.cell),
    heads: search.heads.map(headOf),
    spacings: listOf("spacings", search.spacings),
    rowSpacings: listOf("row_spacings", search.rowSpacings),
    stands: search.stands.map((name) => STANDS[name]!),
    riserPrice: numberOf("riser_price", search.riserPrice),
    pipePrice: numberOf("pipe_price", search.pipePrice),
    waterPrice: numberOf("water_price", search.waterPrice),
    life: numberOf("life", search.life),
    discountRate: numberOf("discount_rate", search.discount) / 100,
    depth: numberOf("depth", layout.depth),
    days: numberOf("days", search.days),
    basis: search.basis,
    limits: limitsOf(search, layout.pump),
  };
}
