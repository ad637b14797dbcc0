import { aboveZero, within } from "../checks";
import { temperatureOf, temperatures } from "./weather";

const UNIT = "MJ/m²/day";
const STEFAN_BOLTZMANN_MJ = 4.903e-9;
const GRASS_ALBEDO = 0.23;

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

/**
 * Radiation of a black body at an air temperature.
 *
 *     R = sigma (T + 273.16)^4        sigma: 4.903e-9 MJ/K4/m2/day; T: air temperature [°C]
 *
 * @param temperature Air temperature [°C], from -60 to 60
 * @returns R [MJ/m2/day], more than 0
 * @throws InputError if the temperature is out of its range
 * @source FAO-56 (1998), annex table 2.8, within eq. 39
 * @example blackBody(25) // 38.75
 */
export function blackBody(temperature: number): number {
  return STEFAN_BOLTZMANN_MJ * (temperatureOf("temperature", temperature) + 273.16) ** 4;
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

/**
 * Net radiation at the reference grass.
 *
 *     Rn = Rns - Rnl        Rns: net shortwave radiation; Rnl: net longwave radiation
 *
 * @param tmin Least air temperature [°C], from -60 to 60
 * @param tmax Greatest air temperature [°C], from -60 to 60
 * @param vapour Actual vapour pressure [kPa], from 0 to 20
 * @param solar Solar radiation [MJ/m2/day], more than 0
 * @param clear Solar radiation under a clear sky [MJ/m2/day], more than 0
 * @returns Rn [MJ/m2/day]; under 0 where more is lost than comes in
 * @throws InputError if a value is out of its range or tmin is above tmax
 * @source FAO-56 (1998), eq. 40
 * @example netRadiation(19.1, 25.1, 2.1, 14.45, 18.8) // 7.6
 */
export function netRadiation(tmin: number, tmax: number, vapour: number, solar: number, clear: number): number {
  return netShortwave(solar) - netLongwave(tmin, tmax, vapour, solar, clear); // eq. 40
}
