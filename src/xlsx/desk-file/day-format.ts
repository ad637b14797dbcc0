import { getFormatDateInfo } from "numfmt";

/** How many days later than in 1900, as the desk counts them, workbooks of 1904 begin to count. */
export const DAYS_TO_1904 = 1462;

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
