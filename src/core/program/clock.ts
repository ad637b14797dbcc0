const MINUTES_A_DAY = 1440;

/**
 * Time of day of a minute of the schedule.
 *
 * @param minute Minutes after midnight, 0 or more; from 1440 on it is the next day
 * @returns Hours and minutes, from 00:00 to 23:59
 * @source arithmetic
 * @example clock(1505) // "01:05"
 */
export function clock(minute: number): string {
  const ofDay = Math.floor(minute) % MINUTES_A_DAY;
  const two = (number: number) => String(number).padStart(2, "0");
  return `${two(Math.floor(ofDay / 60))}:${two(ofDay % 60)}`;
}
