import { surelyRounded } from "./arguments";
import { Unsure } from "./value";

const DAY_MS = 86_400_000;
/** 1970-01-01 as a day number. */
const DAYS_TO_1970 = 25_569;
const MINUTES_A_DAY = 1440;
const NEAR = 1e-6;

/** The day so many months later, or the last one of that month where it has no such day. */
export function monthsLater(day: number, months: number): number {
  const from = new Date((Math.floor(day) - DAYS_TO_1970) * DAY_MS);
  const first = Date.UTC(from.getUTCFullYear(), from.getUTCMonth() + Math.trunc(months), 1);
  const next = Date.UTC(from.getUTCFullYear(), from.getUTCMonth() + Math.trunc(months) + 1, 1);
  return first / DAY_MS + DAYS_TO_1970 + Math.min(from.getUTCDate(), (next - first) / DAY_MS) - 1;
}

/** A number as text in one of the two formats that the workbooks use. */
export function formatted(value: number, pattern: string): string {
  if (pattern === "0.00") return surelyRounded(value, 2).toFixed(2);
  const minutes = Math.round(value * MINUTES_A_DAY);
  if (pattern !== "hh:mm" || value < 0 || Math.abs(minutes - value * MINUTES_A_DAY) > NEAR) throw new Unsure();
  const two = (part: number) => String(part).padStart(2, "0");
  return `${two(Math.floor(minutes / 60) % 24)}:${two(minutes % 60)}`;
}
