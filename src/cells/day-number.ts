const DAY_MS = 86_400_000;
const DAY_ZERO = Date.UTC(1899, 11, 30);
/** How many days later than usual workbooks of 1904 begin to count. */
export const DAYS_TO_1904 = 1462;

/** A moment, in milliseconds since 1970, as spreadsheets count it. */
export const dayAt = (ms: number): number => (ms - DAY_ZERO) / DAY_MS;

/** When a day of a spreadsheet begins, in milliseconds since 1970. */
export const startOfDay = (day: number): number => DAY_ZERO + day * DAY_MS;

/** A day as spreadsheets count it, by the clock of the machine. */
export function dayNumber(date: Date): number {
  return Math.round(dayAt(Date.UTC(date.getFullYear(), date.getMonth(), date.getDate())));
}

/** `2026-11-25` for a day number; "" for anything else. */
export function isoDay(day: unknown): string {
  if (typeof day !== "number" || !(day >= 1 && day < 2_958_466)) return "";
  return new Date(startOfDay(Math.floor(day))).toISOString().slice(0, 10);
}

/** The day number of `2026-11-25`. */
export const dayOf = (iso: string): number => dayAt(Date.parse(`${iso}T00:00:00Z`));

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
  return dayAt(date.getTime());
}
