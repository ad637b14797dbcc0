import { temperatureOf } from "./weather";

/**
 * Heat that the soil takes up in a month, both neighbours known.
 *
 *     G = 0.07 (Tnext - Tbefore)        T: mean air temperature of a month [°C]
 *
 * @param before Mean air temperature of the month before [°C], from -60 to 60
 * @param next Mean air temperature of the month after [°C], from -60 to 60
 * @returns G [MJ/m2/day]; below 0 where the soil gives heat up
 * @throws InputError if a temperature is out of its range
 * @source FAO-56 (1998), eq. 43
 * @example soilHeat(14.1, 18.8) // 0.33
 */
export function soilHeat(before: number, next: number): number {
  return 0.07 * (temperatureOf("next", next) - temperatureOf("before", before)); // eq. 43
}

/**
 * Heat that the soil takes up in a month, the month after not known yet.
 *
 *     G = 0.14 (T - Tbefore)        T: mean air temperature of a month [°C]
 *
 * @param before Mean air temperature of the month before [°C], from -60 to 60
 * @param month Mean air temperature of the month [°C], from -60 to 60
 * @returns G [MJ/m2/day]; below 0 where the soil gives heat up
 * @throws InputError if a temperature is out of its range
 * @source FAO-56 (1998), eq. 44
 * @example soilHeatSoFar(29.2, 30.2) // 0.14
 */
export function soilHeatSoFar(before: number, month: number): number {
  return 0.14 * (temperatureOf("month", month) - temperatureOf("before", before)); // eq. 44
}

/**
 * Heat that the soil takes up in a month, as far as its neighbours are known.
 *
 *     both known: eq. 43        only the month before: eq. 44        the month before not known: 0
 *
 * @param before Mean air temperature of the month before [°C], from -60 to 60; null where not known
 * @param month Mean air temperature of the month [°C], from -60 to 60
 * @param next Mean air temperature of the month after [°C], from -60 to 60; null where not known
 * @returns G [MJ/m2/day]; below 0 where the soil gives heat up
 * @throws InputError if a temperature is out of its range
 * @source FAO-56 (1998), eq. 43 and 44; 0 where neither holds: own reasoning
 * @example monthSoilHeat(29.2, 30.2, null) // 0.14
 */
export function monthSoilHeat(before: number | null, month: number, next: number | null): number {
  if (before === null) return 0;
  return next === null ? soilHeatSoFar(before, month) : soilHeat(before, next);
}
