import { InputError } from "../errors";
import type { CanField } from "./can-field";

/** The gap of ascending places that holds a place: its first end and how far along it the place is, 0 to 1. */
function gapOf(places: readonly number[], place: number): { first: number; part: number } | null {
  const last = places.length - 1;
  if (!(place >= places[0]! && place <= places[last]!)) return null;
  if (last === 0) return { first: 0, part: 0 };
  let first = 0;
  while (first < last - 1 && place > places[first + 1]!) first += 1;
  return { first, part: (place - places[first]!) / (places[first + 1]! - places[first]!) };
}

/**
 * Rate between cans.
 *
 *     r = (1-u)(1-v) a + u (1-v) b + (1-u) v c + u v d
 *     a, b, c, d: the four cans around the place; u, v: how far it lies from a to b and from a to c, 0 to 1
 *
 * @param field Cans of a bed
 * @param x Place across the width [m]
 * @param y Place along the length [m]
 * @returns Rate [mm/h], never above the highest nor under the lowest of the four; null beyond the outer cans, and where
 * one of the four that counts was not read
 * @throws InputError if a place is not a number
 * @source bilinear interpolation, from memory
 * @example rateBetween({ across: [0, 2], along: [0, 2], rates: [[4, 8], [4, 8]] }, 1, 1) // 6
 */
export function rateBetween({ across, along, rates }: CanField, x: number, y: number): number | null {
  if (Number.isNaN(x)) throw new InputError("x", "be a number", x);
  if (Number.isNaN(y)) throw new InputError("y", "be a number", y);
  const column = gapOf(across, x);
  const row = gapOf(along, y);
  if (!column || !row) return null;
  let sum = 0;
  for (const [i, down] of [1 - row.part, row.part].entries()) {
    for (const [j, over] of [1 - column.part, column.part].entries()) {
      const weight = down * over;
      if (weight === 0) continue;
      const rate = rates[row.first + i]?.[column.first + j] ?? null;
      if (rate === null) return null;
      sum += weight * rate;
    }
  }
  return sum;
}
