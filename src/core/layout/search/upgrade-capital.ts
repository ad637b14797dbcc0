import { zeroOrMore } from "../../checks";
import { headCounts, headTotal, type Stand } from "../heads";

/** Prices of what a layout is built from [currency]. */
export interface LayoutPrices {
  /** One head. */
  head: number;
  /** The riser of one head. */
  riser: number;
  /** A metre of pipe. */
  pipe: number;
}

/** What a layout is built from, and its price. */
export interface Capital {
  heads: number;
  /** Pipe [m]. */
  pipe: number;
  /** Price of all [currency]. */
  capital: number;
}

/**
 * Capital of a layout.
 *
 *     C = n (h + r) + P p        P = k L + W; staggered: P = j W + L
 *     n: heads; h, r, p: price of a head, a riser, a metre of pipe; k: lines of heads along the length; j: rows across the
 *     width; L, W: bed
 *
 * The pipe is one lateral of the bed's length for each line of heads, and one main across its width. Staggered heads have
 * one lateral of the bed's width for each row, and one main along its length, since no line along it meets every row.
 *
 * @param stand Bed [m], spacings [m], arrangement and arcs
 * @param prices Prices of a head, a riser and a metre of pipe [currency], each 0 or more
 * @returns Heads, pipe [m] and capital [currency], 0 or more
 * @throws InputError if a price is below 0, or a size is not more than 0
 * @source own reasoning
 * @example upgradeCapital({ width: 4, length: 8, spacing: 4, rowSpacing: 4, arrangement: "border", arcs: "full" },
 *   { head: 5, riser: 3, pipe: 2 }) // { heads: 6, pipe: 20, capital: 88 }
 */
export function upgradeCapital(stand: Stand, prices: LayoutPrices): Capital {
  const [across, along] = headCounts(stand);
  const heads = headTotal(stand);
  const byRow = stand.arrangement === "staggered";
  const pipe = byRow ? along * stand.width + stand.length : across * stand.length + stand.width;
  const each = zeroOrMore("price", prices.head, "") + zeroOrMore("riser_price", prices.riser, "");
  return { heads, pipe, capital: heads * each + pipe * zeroOrMore("pipe_price", prices.pipe, "per m") };
}
