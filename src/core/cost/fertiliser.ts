import { positive, within, zeroOrMore } from "../checks";

/**
 * Cost of the fertiliser that drains away.
 *
 *     C = V s c p / 1000        V: water; s: share that drains; c: concentration; p: price; 1 mg/L = 1 g per kL
 *
 * @param water Water applied [kL], 0 or more
 * @param share Share of it that drains, from 0 to 1
 * @param concentration Fertiliser in the drained water [mg/L], 0 or more
 * @param price Price of the fertiliser [currency per kg], more than 0
 * @returns Cost [currency]; 0 where nothing drains
 * @throws InputError if a value is out of its range
 * @source arithmetic: 1 mg/L is 1 g per kL
 * @example drainedFertiliserCost(1000, 0.25, 200, 3) // 150
 */
export function drainedFertiliserCost(water: number, share: number, concentration: number, price: number): number {
  const drained = zeroOrMore("water", water, "kL") * within("share", share, 0, 1);
  const kilograms = (drained * zeroOrMore("concentration", concentration, "mg/L")) / 1000;
  return kilograms * positive("price", price, "per kg");
}
