import { format, formatColor } from "numfmt";
import { isoDay } from "../../cells/day-number";
import type { Stated } from "../../cells/stated";

const OPTIONS = { nbsp: false, throws: false } as const;
export const IN_QUOTES = /"[^"]*"/g;
const DAY_FORMAT = /[yd]/i;

/** What a cell with a number format shows a reader; the format of a date is that of its own. */
export function shownText(value: Stated | undefined, pattern: string): string {
  if (value === null || value === undefined || value === "") return "";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return format(pattern, value, OPTIONS).trim();
}

/** How many signs a value takes with its format, blanks among them, before its text begins or after it ends. */
export function shownWidth(value: Stated, pattern: string): number {
  if (typeof value !== "number" && typeof value !== "string") return 0;
  const whole = format(pattern, value, OPTIONS);
  return whole.length - whole.trim().length;
}

/** Whether a number format colours what it shows. */
export const coloured = (value: Stated, pattern: string): boolean =>
  (typeof value === "number" || typeof value === "string") && formatColor(pattern, value, OPTIONS) !== null;

/** Whether a shown number is its value, rounded to the digits that are shown. */
export function isRounding(shown: string, value: number): boolean {
  const text = shown.replaceAll(",", "");
  const decimals = text.split(".")[1]?.length ?? 0;
  return text !== "" && Math.abs(Number(text) - value) <= 0.5000001 * 10 ** -decimals;
}

export const isDay = (pattern: string): boolean =>
  DAY_FORMAT.test(pattern.replace(IN_QUOTES, "").replace(/\[[^\]]*\]/g, ""));

/** A value as an officer reads it: a day as 2026-11-10, a number as its cell shows it. */
export function readable(value: Stated | undefined, pattern = "General"): string {
  if (value === null || value === undefined || value === "") return "blank";
  if (typeof value === "number") {
    if (isDay(pattern)) return isoDay(value) || String(value);
    const shown = shownText(value, pattern);
    return Number(shown.replace(/[, %]/g, "")) === value && pattern !== "General"
      ? shown
      : String(Number(value.toPrecision(12)));
  }
  return typeof value === "boolean" ? String(value).toUpperCase() : value.slice(0, 90);
}
