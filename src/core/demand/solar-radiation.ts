import { aboveZero, within } from "../checks";
import { InputError } from "../errors";
import { elevationOf, temperatures } from "./weather";

const UNIT = "MJ/m²/day";

/**
 * Solar radiation from hours of bright sun.
 *
 *     Rs = (0.25 + 0.50 n / N) Ra        n: hours of bright sun; N: hours of daylight; Ra: extraterrestrial radiation
 *
 * @param sunshine Hours of bright sun [h], from 0 to the daylight
 * @param daylight Hours of daylight [h], more than 0
 * @param outside Extraterrestrial radiation [MJ/m2/day], more than 0
 * @returns Rs [MJ/m2/day]; a quarter of Ra under a full cloud, three quarters in full sun
 * @throws InputError if there is more sun than daylight, or a value is out of its range
 * @source FAO-56 (1998), eq. 35
 * @example solarRadiation(6, 12, 40) // 20
 */
export function solarRadiation(sunshine: number, daylight: number, outside: number): number {
  const longest = aboveZero("daylight", daylight, "h");
  if (typeof sunshine !== "number" || !(sunshine >= 0 && sunshine <= longest)) {
    const limit = Math.floor(longest * 100) / 100;
    throw new InputError("sunshine", `be from 0 to the ${limit} h of daylight of that day and place`, sunshine);
  }
  return (0.25 + 0.5 * (sunshine / longest)) * aboveZero("outside", outside, UNIT); // eq. 35
}

/**
 * Solar radiation from the range of temperature, where no sunshine was recorded.
 *
 *     Rs = k (Tmax - Tmin)^0.5 Ra        k: 0.16 inland, 0.19 at the coast; Ra: extraterrestrial radiation
 *
 * @param tmin Least air temperature [°C], from -60 to 60
 * @param tmax Greatest air temperature [°C], from -60 to 60
 * @param k Adjustment coefficient, from 0.16 to 0.19
 * @param outside Extraterrestrial radiation [MJ/m2/day], more than 0
 * @returns Rs [MJ/m2/day]; 0 when both temperatures are the same
 * @throws InputError if a value is out of its range or tmin is above tmax
 * @source FAO-56 (1998), eq. 50
 * @example temperatureRadiation(14.8, 26.6, 0.16, 40.6) // 22.3
 */
export function temperatureRadiation(tmin: number, tmax: number, k: number, outside: number): number {
  temperatures(tmin, tmax);
  return within("k", k, 0.16, 0.19) * Math.sqrt(tmax - tmin) * aboveZero("outside", outside, UNIT); // eq. 50
}

/**
 * Solar radiation under a clear sky.
 *
 *     Rso = (0.75 + 0.00002 z) Ra        z: height above the sea [m]; Ra: extraterrestrial radiation
 *
 * @param elevation Height above the sea [m], from -500 to 6000
 * @param outside Extraterrestrial radiation [MJ/m2/day], more than 0
 * @returns Rso [MJ/m2/day], more than 0
 * @throws InputError if a value is out of its range
 * @source FAO-56 (1998), eq. 37
 * @example clearSkyRadiation(1000, 40) // 30.8
 */
export function clearSkyRadiation(elevation: number, outside: number): number {
  return (0.75 + 2e-5 * elevationOf(elevation)) * aboveZero("outside", outside, UNIT); // eq. 37
}
