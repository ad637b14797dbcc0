import { InputError } from "../errors";

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Day of the year of a date.
 *
 *     J = int(275 M / 9 - 30 + D) - 2, 2 more in January and February, 1 more from March on in a leap year
 *
 * @param month Month, a whole number from 1 to 12
 * @param date Day of the month, a whole number from 1 to its length
 * @param leap Whether the year has 366 days
 * @returns Day of the year, from 1 to 366
 * @throws InputError if there is no such date
 * @source FAO-56 (1998), annex table 2.5
 * @example dayOfYear(9, 3, false) // 246
 */
export function dayOfYear(month: number, date: number, leap: boolean): number {
  const days = DAYS[month - 1];
  if (days === undefined) throw new InputError("month", "be a whole number from 1 to 12", month);
  const last = leap && month === 2 ? 29 : days;
  if (!(Number.isInteger(date) && date >= 1 && date <= last)) {
    throw new InputError("date", `be a whole number from 1 to ${last}`, date);
  }
  const day = Math.trunc((275 * month) / 9 - 30 + date) - 2;
  if (month < 3) return day + 2;
  return leap ? day + 1 : day;
}
