import { InputError } from "../errors";
import { clock } from "./clock";
import type { Window } from "./program";

/** A window on the running minutes of the schedule. */
export interface Span {
  start: number;
  end: number;
}

export const MINUTES_A_DAY = 1440;

/** The windows on one line of minutes, each after the one before it, within 24 hours. */
export function spans(windows: readonly Window[]): Span[] {
  if (windows.length === 0) throw new InputError("windows", "hold at least 1 window", 0, { missing: true });
  const line: Span[] = [];
  for (const [i, window] of windows.entries()) {
    const place = `window ${i + 1}`;
    const from = minuteOfDay("start", window.start, MINUTES_A_DAY - 1, place);
    const to = minuteOfDay("end", window.end, MINUTES_A_DAY, place);
    if (from === to) throw new InputError("end", "differ from the start", clock(to), { place });
    const before = line.at(-1)?.end ?? 0;
    const start = from + MINUTES_A_DAY * Math.max(0, Math.ceil((before - from) / MINUTES_A_DAY));
    const end = start - from + to + (to < from ? MINUTES_A_DAY : 0);
    line.push({ start, end });
    if (end - (line[0] as Span).start > MINUTES_A_DAY) {
      const shown = `${clock(from)} to ${clock(to)}`;
      throw new InputError("windows", "come one after another within 24 hours", shown, { place });
    }
  }
  return line;
}

function minuteOfDay(parameter: string, value: unknown, high: number, place: string): number {
  if (!Number.isInteger(value) || !((value as number) >= 0 && (value as number) <= high)) {
    throw new InputError(parameter, `be a whole number of minutes after midnight from 0 to ${high}`, value, { place });
  }
  return value as number;
}

/** Minutes inside the windows before a minute; the last window is taken as if it had no end. */
export function openMinutes(line: readonly Span[], minute: number): number {
  return line.reduce((sum, { start, end }, i) => {
    const last = i === line.length - 1 ? minute : Math.min(minute, end);
    return sum + Math.max(0, last - start);
  }, 0);
}

/** The minute before which the windows hold so many minutes, `bonus` more in each; the last window has no end. */
export function minuteAfter(line: readonly Span[], work: number, bonus: number): number {
  let left = work;
  for (const { start, end } of line.slice(0, -1)) {
    if (left <= end - start + bonus) return start + Math.max(0, left - bonus);
    left -= end - start + bonus;
  }
  return (line.at(-1) as Span).start + Math.max(0, left - bonus);
}
