import { mean, numbers } from "../readings";

/**
 * Christiansen's coefficient of uniformity.
 *
 *     CU = 100 (1 - sum(|x - m|) / (n m))        m: mean of the n catches x
 *
 * @param readings Depth or volume in each can, any one unit, each 0 or more; at least 2, not all 0
 * @param m Their mean, where the caller has it already
 * @returns CU [%], at most 100; 100 when all catches are equal; below 0 when a few cans hold nearly everything
 * @throws InputError if a reading is below 0, fewer than 2 are given, or all are 0
 * @source Christiansen (1942)
 * @example christiansen([8, 10, 12, 10]) // 90
 */
export function christiansen(readings: ArrayLike<number>, m = mean(readings, 2)): number {
  const catches = numbers(readings);
  let deviations = 0;
  for (let i = 0; i < catches.length; i += 1) deviations += Math.abs((catches[i] as number) - m);
  return 100 * (1 - deviations / (catches.length * m));
}
