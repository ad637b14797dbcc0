import { dayOf, latitudeOf } from "./weather";

const YEAR_TURN = (2 * Math.PI) / 365;

/** An angle in radians. */
export function radians(degrees: number): number {
  return (Math.PI / 180) * degrees; // eq. 22
}

/**
 * Inverse relative distance between earth and sun.
 *
 *     dr = 1 + 0.033 cos(2 pi J / 365)        J: day of the year
 *
 * @param day Day of the year, a whole number from 1 to 366
 * @returns dr, from 0.967 to 1.033
 * @throws InputError if the day is out of its range
 * @source FAO-56 (1998), eq. 23
 * @example inverseDistance(246) // 0.985
 */
export function inverseDistance(day: number): number {
  return 1 + 0.033 * Math.cos(YEAR_TURN * dayOf(day)); // eq. 23
}

/**
 * Declination of the sun.
 *
 *     dec = 0.409 sin(2 pi J / 365 - 1.39)        J: day of the year
 *
 * @param day Day of the year, a whole number from 1 to 366
 * @returns Declination [rad], from -0.409 to 0.409; north is positive
 * @throws InputError if the day is out of its range
 * @source FAO-56 (1998), eq. 24
 * @example declination(246) // 0.120
 */
export function declination(day: number): number {
  return 0.409 * Math.sin(YEAR_TURN * dayOf(day) - 1.39); // eq. 24
}

/**
 * Hour angle of sunset.
 *
 *     ws = arccos(-tan(lat) tan(dec))        lat: latitude; dec: declination of the sun
 *
 * @param latitude Latitude [degrees], south negative, from -66.5 to 66.5
 * @param day Day of the year, a whole number from 1 to 366
 * @returns ws [rad]; half of pi on the equator
 * @throws InputError if the latitude or the day is out of its range
 * @source FAO-56 (1998), eq. 25
 * @example sunsetAngle(-20, 246) // 1.527
 */
export function sunsetAngle(latitude: number, day: number): number {
  return Math.acos(-Math.tan(radians(latitudeOf(latitude))) * Math.tan(declination(day))); // eq. 25
}

/**
 * Hours of daylight.
 *
 *     N = 24 ws / pi        ws: hour angle of sunset [rad]
 *
 * @param latitude Latitude [degrees], south negative, from -66.5 to 66.5
 * @param day Day of the year, a whole number from 1 to 366
 * @returns N [h]; 12 on the equator
 * @throws InputError if the latitude or the day is out of its range
 * @source FAO-56 (1998), eq. 34
 * @example daylight(-20, 246) // 11.7
 */
export function daylight(latitude: number, day: number): number {
  return (24 / Math.PI) * sunsetAngle(latitude, day); // eq. 34
}
