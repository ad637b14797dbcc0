const DAY_MS = 86_400_000;
const DAY_ZERO = Date.UTC(1899, 11, 30);

/** A day as spreadsheets count it, by the clock of the machine. */
export function dayNumber(date: Date): number {
  return Math.round((Date.UTC(date.getFullYear(), date.getMonth(), date.getDate()) - DAY_ZERO) / DAY_MS);
}

/** `2026-11-25` for a day number; "" for anything else. */
export function isoDay(day: unknown): string {
  if (typeof day !== "number" || !(day >= 1 && day < 2_958_466)) return "";
  return new Date(DAY_ZERO + Math.floor(day) * DAY_MS).toISOString().slice(0, 10);
}

/** The day number of `2026-11-25`. */
export const dayOf = (iso: string): number => (Date.parse(`${iso}T00:00:00Z`) - DAY_ZERO) / DAY_MS;
