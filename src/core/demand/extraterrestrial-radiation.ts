import { declination, inverseDistance, radians, sunsetAngle } from "./sun";

const SOLAR_CONSTANT_MJ_M2_MIN = 0.082;
const MINUTES_A_DAY = 24 * 60;

/**
 * Extraterrestrial radiation of a day.
 *
 *     Ra = 24 (60) / pi Gsc dr (ws sin(lat) sin(dec) + cos(lat) cos(dec) sin(ws))
 *
 * Gsc: 0.0820 MJ/m2/min; dr: inverse relative distance of the sun; ws: hour angle of sunset; lat: latitude;
 * dec: declination
 *
 * @param latitude Latitude [degrees], south negative, from -66.5 to 66.5
 * @param day Day of the year, a whole number from 1 to 366
 * @returns Ra [MJ/m2/day], more than 0
 * @throws InputError if the latitude or the day is out of its range
 * @source FAO-56 (1998), eq. 21
 * @example extraterrestrialRadiation(-20, 246) // 32.2
 */
export function extraterrestrialRadiation(latitude: number, day: number): number {
  const sunset = sunsetAngle(latitude, day);
  const lat = radians(latitude);
  const dec = declination(day);
  const turn = sunset * Math.sin(lat) * Math.sin(dec) + Math.cos(lat) * Math.cos(dec) * Math.sin(sunset);
  return (MINUTES_A_DAY / Math.PI) * SOLAR_CONSTANT_MJ_M2_MIN * inverseDistance(day) * turn; // eq. 21
}
