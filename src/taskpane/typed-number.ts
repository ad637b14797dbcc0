import { InputError } from "../core/errors";

/** Three digits after a comma could be thousands, so those are asked for again. */
const DECIMAL_COMMA = /^(-?\d*),(\d{1,2})$/;
const NUMBER = /^-?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i;

/** A typed number; anything else is an error that names the quantity, and its place where there are several. */
export function numberOf(name: string, text: string, place?: string): number {
  const plain = text.trim().replace(DECIMAL_COMMA, "$1.$2");
  if (NUMBER.test(plain) && Number.isFinite(Number(plain))) return Number(plain);
  throw new InputError(name, place ? "be numbers" : "be a number", text, place ? { place } : {});
}

/** Reads a typed number by a rule of core. */
export const typedNumber =
  (name: string, unit: string, check: (name: string, value: unknown, unit: string) => number) =>
  (text: string): number =>
    check(name, numberOf(name, text), unit);
