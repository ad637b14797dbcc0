import { aboveZero, zeroOrMore } from "../checks";

/**
 * Cost of water in a year.
 *
 *     C = V p        V: water [kL a year]; p: price [currency per kL]
 *
 * @param water Water [kL a year], more than 0
 * @param price Price [currency per kL], 0 or more
 * @returns Cost [currency a year]; 0 where water is free
 * @throws InputError if the water is not more than 0 or the price is below 0
 * @source arithmetic
 * @example annualCost(600, 2.5) // 1500
 */
export function annualCost(water: number, price: number): number {
  return aboveZero("water", water, "kL") * zeroOrMore("price", price, "per kL");
}
