import { InputError } from "./errors";

/** Least and most that a typed quantity may be, so that no result can overflow. */
export const LEAST = 1e-9;
export const MOST = 1e9;

function withUnit(amount: string, unit: string): string {
  return unit === "" ? amount : `${amount} ${unit}`;
}

/** A typed quantity: more than 0, and from 1e-9 to 1e9. */
export function positive(parameter: string, value: unknown, unit: string): number {
  const number = aboveZero(parameter, value, unit);
  if (number < LEAST) throw new InputError(parameter, `be at least ${withUnit("1e-9", unit)}`, value);
  if (number > MOST) throw new InputError(parameter, `be at most ${withUnit("1e9", unit)}`, value);
  return number;
}

/** A quantity that may itself be a result: more than 0 and finite. */
export function aboveZero(parameter: string, value: unknown, unit: string): number {
  if (typeof value !== "number" || !(value > 0) || value === Infinity) {
    throw new InputError(parameter, `be more than ${withUnit("0", unit)}`, value);
  }
  return value;
}

/** A typed quantity that may be 0: 0, or from 1e-9 to 1e9. */
export function zeroOrMore(parameter: string, value: unknown, unit: string): number {
  if (value === 0) return 0;
  if (typeof value !== "number" || !(value > 0)) {
    throw new InputError(parameter, `be ${withUnit("0", unit)} or more`, value);
  }
  return positive(parameter, value, unit);
}

/** A number from `low` to `high`, both allowed. */
export function within(parameter: string, value: unknown, low: number, high: number, unit = ""): number {
  if (typeof value !== "number" || !(value >= low && value <= high)) {
    throw new InputError(parameter, `be from ${low} to ${withUnit(String(high), unit)}`, value);
  }
  return value;
}

/** A number above 0 and up to `high`; not under 1e-9. */
export function upTo(parameter: string, value: unknown, high: number, unit = ""): number {
  if (typeof value !== "number" || !(value > 0 && value <= high)) {
    throw new InputError(parameter, `be more than 0 and at most ${withUnit(String(high), unit)}`, value);
  }
  return positive(parameter, value, unit);
}
