import { getFormatDateInfo } from "numfmt";

const known = new Map<string, boolean>();

/** Whether a number format shows days, months or years, and not only times. */
export function showsDays(format = ""): boolean {
  let days = known.get(format);
  if (days === undefined) {
    const { day, month, year } = getFormatDateInfo(format);
    days = day || month || year;
    known.set(format, days);
  }
  return days;
}
