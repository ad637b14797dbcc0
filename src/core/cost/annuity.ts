import { positive, within, zeroOrMore } from "../checks";

/**
 * Yearly cost of what is bought once.
 *
 *     A = C i / (1 - (1 + i)^-n)        C: capital; i: discount rate; n: years of life; at i = 0: A = C / n
 *
 * @param capital Capital, C [currency], 0 or more
 * @param life Years of life, n, more than 0
 * @param discountRate Discount rate, i, a year, 0 to 1
 * @returns Equal sum at the end of each year [currency a year]
 * @throws InputError if a value is out of its range
 * @source the annuity formula of engineering economics, from memory
 * @example annuity(1000, 10, 0) // 100
 */
export function annuity(capital: number, life: number, discountRate: number): number {
  zeroOrMore("capital", capital, "");
  positive("life", life, "years");
  const rate = within("discount_rate", discountRate, 0, 1);
  return rate === 0 ? capital / life : (capital * rate) / -Math.expm1(-life * Math.log1p(rate));
}
