import { InputError } from "../errors";
import { evaporation } from "./evaporation";
import { extraterrestrialRadiation } from "./extraterrestrial-radiation";
import { temperatures } from "./weather";

const COLDEST_MEAN_C = -17.8;

/**
 * Reference evapotranspiration from temperatures alone (Hargreaves).
 *
 *     ETo = 0.0023 (Tmean + 17.8) (Tmax - Tmin)^0.5 Ra        Tmean = (Tmax + Tmin) / 2; Ra: [mm/day]
 *
 * @param tmin Least air temperature [°C], from -60 to 60
 * @param tmax Greatest air temperature [°C], from -60 to 60
 * @param latitude Latitude [degrees], south negative, from -66.5 to 66.5
 * @param day Day of the year, a whole number from 1 to 366
 * @returns ETo in the open [mm/day], 0 or more; 0 when both temperatures are the same
 * @throws InputError if a value is out of its range, tmin is above tmax, or their mean is under -17.8 °C
 * @source FAO-56 (1998), eq. 52
 * @example hargreaves(14.8, 26.6, 45.72, 196) // 5.0
 */
export function hargreaves(tmin: number, tmax: number, latitude: number, day: number): number {
  temperatures(tmin, tmax);
  const mean = (tmax + tmin) / 2; // eq. 9
  if (!(mean >= COLDEST_MEAN_C)) {
    throw new InputError("tmin", `have a mean with tmax of ${COLDEST_MEAN_C} °C or more`, tmin, { missing: true });
  }
  const radiation = evaporation(extraterrestrialRadiation(latitude, day));
  return 0.0023 * (mean - COLDEST_MEAN_C) * Math.sqrt(tmax - tmin) * radiation; // eq. 52
}
