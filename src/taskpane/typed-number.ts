import { InputError } from "../core/errors";

/** Three digits after a comma could be thousands, so those are asked for again. */
const DECIMAL_COMMA = /^(-?\d+),(\d{1,2})$/;

/** Reads a typed number by a rule of core; anything else is an error that names the quantity. */
export const typedNumber =
  (name: string, unit: string, check: (name: string, value: unknown, unit: string) => number) =>
  (text: string): number => {
    const value = Number(text.replace(DECIMAL_COMMA, "$1.$2"));
    if (!Number.isFinite(value)) throw new InputError(name, "be a number", text);
    return check(name, value, unit);
  };
