import { positive, upTo, zeroOrMore } from "../core/checks";
import { annualCost } from "../core/cost/price";
import { annualWater } from "../core/cost/water";
import { multiplier } from "../core/uniformity/multiplier";
import { answer } from "./answer";
import { basis as basisOf, inBedShare } from "./arguments";
import { areasOf } from "./by-area";
import { over, plain, readings as read } from "./cells";

/** Water a year [kL] from the arguments as Excel passes them. */
function waterOf(
  readings: unknown[][],
  area: unknown,
  depth: unknown,
  days: unknown,
  basis: unknown,
  in_bed_share: unknown,
  areas: unknown,
): number {
  const catches = read("readings", readings);
  const bed = positive("area", plain(area), "m²");
  const wanted = positive("depth", plain(depth), "mm");
  const watered = upTo("days", plain(days), 366);
  const by = basisOf(basis);
  const landing = inBedShare(in_bed_share);
  const given = areasOf(catches, areas);
  const times = over(catches, (values) => multiplier(values, by, given));
  return annualWater(bed, wanted, watered, times, landing);
}

/**
 * Water that a bed uses in a year [kL]: water falling on the bed only, unless in_bed_share says how much misses it.
 * @customfunction WATER.ANNUAL
 * @helpurl https://localhost:3000/help.html#water-annual
 * @param readings Catches of at least 2 cans [mL or mm], each 0 or more; blank or x: not read
 * @param area Area of the bed [m²], more than 0
 * @param depth Net depth wanted in each pot on a watering day [mm], more than 0
 * @param days Days watered in a year [days], more than 0 and at most 366
 * @param [basis] What must get the depth: "can" (left out), "quarter", or the share of cans or area [0 to 1], from 0.5 to 1
 * @param [in_bed_share] Share of the heads' water that lands on the bed [0 to 1], above 0; left out: 1
 * @param [areas] Area that each can is for [any one unit], more than 0, same shape as readings; left out: equal weight
 * @returns Water [kL a year]
 */
export function waterAnnual(
  readings: unknown[][],
  area: unknown,
  depth: unknown,
  days: unknown,
  basis?: unknown,
  in_bed_share?: unknown,
  areas?: unknown[][],
): number {
  return answer(() => waterOf(readings, area, depth, days, basis, in_bed_share, areas));
}

/**
 * Cost of the water that a bed uses in a year [currency]: water falling on the bed only, unless in_bed_share says how much misses it.
 * @customfunction COST.ANNUAL
 * @helpurl https://localhost:3000/help.html#cost-annual
 * @param readings Catches of at least 2 cans [mL or mm], each 0 or more; blank or x: not read
 * @param area Area of the bed [m²], more than 0
 * @param depth Net depth wanted in each pot on a watering day [mm], more than 0
 * @param days Days watered in a year [days], more than 0 and at most 366
 * @param price Price of water [currency per kL], 0 or more
 * @param [basis] What must get the depth: "can" (left out), "quarter", or the share of cans or area [0 to 1], from 0.5 to 1
 * @param [in_bed_share] Share of the heads' water that lands on the bed [0 to 1], above 0; left out: 1
 * @param [areas] Area that each can is for [any one unit], more than 0, same shape as readings; left out: equal weight
 * @returns Cost [currency a year]
 */
export function costAnnual(
  readings: unknown[][],
  area: unknown,
  depth: unknown,
  days: unknown,
  price: unknown,
  basis?: unknown,
  in_bed_share?: unknown,
  areas?: unknown[][],
): number {
  return answer(() => {
    const water = waterOf(readings, area, depth, days, basis, in_bed_share, areas);
    return annualCost(water, zeroOrMore("price", plain(price), ""));
  });
}
