import { aboveZero, within } from "../checks";
import { InputError } from "../errors";
import { elevationOf, temperatures } from "./weather";

const UNIT = "MJ/m²/day";
const STEFAN_BOLTZMANN_MJ = 4.903e-9;
const GRASS_ALBEDO = 0.23;

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
  if (!(sunshine >= 0 && sunshine <= longest)) {
    const limit = Math.floor(longest * 100) / 100;
    throw new InputError("sunshine", `be from 0 to the ${limit} h of daylight of that day and place`, sunshine);
  }
  return (0.25 + 0.5 * (sunshine / longest)) * aboveZero("outside", outside, UNIT); // eq. 35
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

/**
 * Net shortwave radiation of the reference grass.
 *
 *     Rns = (1 - 0.23) Rs        Rs: solar radiation
 *
 * @param solar Solar radiation [MJ/m2/day], more than 0
 * @returns Rns [MJ/m2/day], more than 0
 * @throws InputError if the radiation is not more than 0
 * @source FAO-56 (1998), eq. 38
 * @example netShortwave(20) // 15.4
 */
export function netShortwave(solar: number): number {
  return (1 - GRASS_ALBEDO) * aboveZero("solar", solar, UNIT); // eq. 38
}

/** Black-body radiation at an air temperature [MJ/m2/day]. */
export function blackBody(temperature: number): number {
  return STEFAN_BOLTZMANN_MJ * (temperature + 273.16) ** 4; // within eq. 39
}

/**
 * Net longwave radiation that leaves the ground.
 *
 *     Rnl = (sigma Tmax^4 + sigma Tmin^4) / 2 (0.34 - 0.14 ea^0.5) (1.35 Rs / Rso - 0.35)
 *
 * sigma: 4.903e-9 MJ/K4/m2/day; T: [K]; ea: actual vapour pressure; Rs, Rso: solar radiation, and under a clear sky;
 * Rs / Rso counts as 1 where it is more
 *
 * @param tmin Least air temperature [°C], from -60 to 60
 * @param tmax Greatest air temperature [°C], from -60 to 60
 * @param vapour Actual vapour pressure [kPa], from 0 to 20
 * @param solar Solar radiation [MJ/m2/day], more than 0
 * @param clear Solar radiation under a clear sky [MJ/m2/day], more than 0
 * @returns Rnl [MJ/m2/day]
 * @throws InputError if a value is out of its range or tmin is above tmax
 * @source FAO-56 (1998), eq. 39
 * @example netLongwave(19.1, 25.1, 2.1, 14.5, 18.8) // 3.5
 */
export function netLongwave(tmin: number, tmax: number, vapour: number, solar: number, clear: number): number {
  temperatures(tmin, tmax);
  const emitted = (blackBody(tmax) + blackBody(tmin)) / 2;
  const humid = 0.34 - 0.14 * Math.sqrt(within("vapour", vapour, 0, 20, "kPa"));
  const clearness = Math.min(1, aboveZero("solar", solar, UNIT) / aboveZero("clear", clear, UNIT));
  return emitted * humid * (1.35 * clearness - 0.35); // eq. 39
}
