import { format, formatColor } from "numfmt";
import { isoDay } from "../../../cells/day-number";
import type { Stated } from "../../../cells/stated";
import { shortened } from "../../shortened";

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

/** What a number format shows of a text without a letter. */
export const wordsOf = (pattern: string): string => format(pattern, "", OPTIONS).trim();

/** Whether a number format colours what it shows. */
export const coloured = (value: Stated, pattern: string): boolean =>
  (typeof value === "number" || typeof value === "string") && formatColor(pattern, value, OPTIONS) !== null;

const DIGITS = 6;

/** A number with its thousands apart, of so many digits but for those before its point. */
export function plainNumber(value: number, digits = DIGITS): string {
  const before = value === 0 ? 1 : Math.max(1, Math.floor(Math.log10(Math.abs(value))) + 1);
  const rounded = Number(value.toPrecision(Math.max(digits, before)));
  return rounded.toLocaleString("en-US", { maximumFractionDigits: 15 });
}

/** The number format that shows a number like that. */
export function plainFormat(value: number): string {
  const decimals = plainNumber(value).split(".")[1]?.length ?? 0;
  return decimals === 0 ? "#,##0" : `#,##0.${"0".repeat(decimals)}`;
}

/** A value in a number format of the workbook, a number without one as `plainNumber`. */
export const figureText = (value: Stated, format: string): string =>
  typeof value === "number" && format === "General" ? plainNumber(value) : shownText(value, format);

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
  return typeof value === "boolean" ? String(value).toUpperCase() : shortened(value, 90);
}
