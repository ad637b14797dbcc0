import { aboveZero, zeroOrMore } from "../checks";

/** One of the seven classes of a coverage map, by rate over the mean of the grid. */
export interface RateClass {
  /** 1, driest, to 7, wettest. */
  number: number;
  /** The class without colour: minus signs for dry, plus signs for wet. */
  symbol: string;
  /** Least rate over the mean that belongs to it. */
  from: number;
  /** Rate over the mean up to which it goes. */
  to: number;
  /** Its range as words. */
  range: string;
  /** Its colour, ColorBrewer BrBG. */
  colour: string;
}

/** Dry to wet. */
export const RATE_CLASSES: readonly RateClass[] = [
  { number: 1, symbol: "− − −", from: 0, to: 0.5, range: "under 50 %", colour: "#8c510a" },
  { number: 2, symbol: "− −", from: 0.5, to: 0.75, range: "50 to 75 %", colour: "#d8b365" },
  { number: 3, symbol: "−", from: 0.75, to: 0.9, range: "75 to 90 %", colour: "#f6e8c3" },
  { number: 4, symbol: "=", from: 0.9, to: 1.1, range: "90 to 110 %", colour: "#f5f5f5" },
  { number: 5, symbol: "+", from: 1.1, to: 1.25, range: "110 to 125 %", colour: "#c7eae5" },
  { number: 6, symbol: "+ +", from: 1.25, to: 1.5, range: "125 to 150 %", colour: "#5ab4ac" },
  { number: 7, symbol: "+ + +", from: 1.5, to: Infinity, range: "150 % and over", colour: "#01665e" },
];

/**
 * Class of a rate on a coverage map.
 *
 *     the class whose range holds r / m: its lower end belongs to it, its upper end to the next
 *
 * @param rate Rate at a place, r [any one unit], 0 or more
 * @param mean Mean of the grid, m [same unit], more than 0
 * @returns Its class
 * @throws InputError if the rate is below 0 or the mean is not more than 0
 * @source own classes, round shares of the mean
 * @example rateClass(9, 10).number // 4
 */
export function rateClass(rate: number, mean: number): RateClass {
  const share = zeroOrMore("rate", rate, "mm/h") / aboveZero("mean", mean, "mm/h");
  return RATE_CLASSES.find(({ to }) => share < to)!;
}
