import { InputError } from "../../../core/errors";

/** Three digits after a comma could be thousands, so those are asked for again. */
const DECIMAL_COMMA = /^(-?\d*),(\d{1,2})$/;
const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i;

/** What to type in place of a percentage; "" for any other text. */
export const insteadOfPercent = (text: string): string =>
  text.trim().endsWith("%") ? " without %, such as 0.9 for 90 %" : "";

/** What was typed as a number, with a decimal comma too; null for anything else. */
export function plainNumber(text: string): number | null {
  const plain = text.trim().replace(DECIMAL_COMMA, "$1.$2");
  return NUMBER.test(plain) && Number.isFinite(Number(plain)) ? Number(plain) : null;
}

/** A typed number; anything else is an error that names the quantity, and its place where there are several. */
export function numberOf(name: string, text: string, place?: string): number {
  const number = plainNumber(text);
  if (number !== null) return number;
  const rule = `${place ? "be numbers" : "be a number"}${insteadOfPercent(text)}`;
  throw new InputError(name, rule, text, place ? { place } : {});
}

/** Reads a typed number by a rule of core. */
export const typedNumber =
  (name: string, unit: string, check: (name: string, value: unknown, unit: string) => number) =>
  (text: string): number =>
    check(name, numberOf(name, text), unit);
