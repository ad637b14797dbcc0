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

const ISO = /^(?<year>\d{4})-(?<month>\d{1,2})-(?<day>\d{1,2})$/;
const DOTTED = /^(?<day>\d{1,2})\.(?<month>\d{1,2})\.(?<year>\d{4})$/;
const SLASHED = /^(?<one>\d{1,2})\/(?<other>\d{1,2})\/(?<year>\d{4})$/;

/**
 * The day number of a written date: 2026-11-29, 29.11.2026 or 29/11/2026. With slashes only where one of both numbers
 * can't be a month, since 3/11/2026 is a day in March or in November; null for anything else.
 */
export function writtenDay(text: string): number | null {
  const parts = (ISO.exec(text) ?? DOTTED.exec(text))?.groups;
  const slashed = SLASHED.exec(text)?.groups;
  let [year, month, day] = [Number(parts?.year), Number(parts?.month), Number(parts?.day)];
  if (slashed) {
    const [one, other] = [Number(slashed.one), Number(slashed.other)];
    if (one <= 12 && other <= 12 && one !== other) return null;
    year = Number(slashed.year);
    [day, month] = one > 12 ? [one, other] : [other, one];
  }
  const date = new Date(Date.UTC(year, month - 1, day));
  if (!(year >= 1900) || date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return null;
  return (date.getTime() - DAY_ZERO) / DAY_MS;
}
