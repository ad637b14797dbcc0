import { positive, zeroOrMore } from "../checks";
import { InputError } from "../errors";

/** A step of a price that changes with the water taken in a year. */
export interface PriceStep {
  /** Up to so much water a year [kL]; left out: all the rest, the last step only */
  upTo?: number;
  /** [currency per kL], 0 or more */
  price: number;
}

/**
 * Cost of water in a year by price steps.
 *
 *     C = sum(p_k (min(V, u_k) - u_(k-1)))        V: water; p_k: price of step k, which ends at u_k; steps begun only
 *
 * @param water Water [kL a year], 0 or more
 * @param steps Steps in rising order, the last without an end; at least 1
 * @returns Cost [currency a year]; 0 without water
 * @throws InputError if a value is out of its range, a step does not end above the one before it, or the last one ends
 * @source arithmetic: each step at its price
 * @example blockTariffCost(500, [{ upTo: 200, price: 2 }, { price: 3 }]) // 1300
 */
export function blockTariffCost(water: number, steps: readonly PriceStep[]): number {
  const all = zeroOrMore("water", water, "kL");
  if (steps.length === 0) throw new InputError("steps", "hold at least 1 price", 0, { missing: true });
  let cost = 0;
  let from = 0;
  for (const [i, step] of steps.entries()) {
    const place = `step ${i + 1}`;
    const to = endOf(step, from, i === steps.length - 1, place);
    cost += zeroOrMore("price", step.price, "per kL") * Math.max(0, Math.min(all, to) - from);
    from = to;
  }
  return cost;
}

function endOf({ upTo }: PriceStep, from: number, last: boolean, place: string): number {
  if (last && upTo === undefined) return Infinity;
  if (last) throw new InputError("up_to", "be left out in the last step", upTo, { place });
  if (!(typeof upTo === "number" && upTo > from)) {
    throw new InputError("up_to", `be more than ${from} kL`, upTo, { place });
  }
  return positive("up_to", upTo, "kL");
}
