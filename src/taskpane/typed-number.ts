import { InputError } from "../core/errors";

/** Reads a typed number by a rule of core; anything else is an error that names the quantity. */
export const typedNumber =
  (name: string, unit: string, check: (name: string, value: unknown, unit: string) => number) =>
  (text: string): number => {
    const value = Number(text);
    if (!Number.isFinite(value)) throw new InputError(name, "be a number", text);
    return check(name, value, unit);
  };
