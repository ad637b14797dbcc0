import { dayAt, startOfDay } from "../../cells/day-number";
import { surelyRounded } from "./arguments";
import { Unsure } from "./value";

const MINUTES_A_DAY = 1440;
const NEAR = 1e-6;

/** The day so many months later, or the last one of that month where it has no such day. */
export function monthsLater(day: number, months: number): number {
  const from = new Date(startOfDay(Math.floor(day)));
  const firstOf = (later: number) => dayAt(Date.UTC(from.getUTCFullYear(), from.getUTCMonth() + later, 1));
  const [first, next] = [firstOf(Math.trunc(months)), firstOf(Math.trunc(months) + 1)];
  return first + Math.min(from.getUTCDate(), next - first) - 1;
}

/** A number as text in one of the two formats that the workbooks use. */
export function formatted(value: number, pattern: string): string {
  if (pattern === "0.00") return surelyRounded(value, 2).toFixed(2);
  const minutes = Math.round(value * MINUTES_A_DAY);
  if (pattern !== "hh:mm" || value < 0 || Math.abs(minutes - value * MINUTES_A_DAY) > NEAR) throw new Unsure();
  const two = (part: number) => String(part).padStart(2, "0");
  return `${two(Math.floor(minutes / 60) % 24)}:${two(minutes % 60)}`;
}
