import { humidities, temperatureOf, temperatures } from "./weather";

/**
 * Saturation vapour pressure of the air.
 *
 *     e(T) = 0.6108 exp(17.27 T / (T + 237.3))        T: air temperature [°C]
 *
 * @param temperature Air temperature [°C], from -60 to 60
 * @returns e(T) [kPa], more than 0
 * @throws InputError if the temperature is out of its range
 * @source FAO-56 (1998), eq. 11
 * @example saturationPressure(20) // 2.338
 */
export function saturationPressure(temperature: number): number {
  const t = temperatureOf("temperature", temperature);
  return 0.6108 * Math.exp((17.27 * t) / (t + 237.3)); // eq. 11
}

/**
 * Mean saturation vapour pressure of a day.
 *
 *     es = (e(Tmax) + e(Tmin)) / 2        e(T): saturation vapour pressure
 *
 * @param tmin Least air temperature [°C], from -60 to 60
 * @param tmax Greatest air temperature [°C], from -60 to 60
 * @returns es [kPa], more than 0
 * @throws InputError if a temperature is out of its range or tmin is above tmax
 * @source FAO-56 (1998), eq. 12
 * @example meanSaturationPressure(12.3, 21.5) // 1.997
 */
export function meanSaturationPressure(tmin: number, tmax: number): number {
  temperatures(tmin, tmax);
  return (saturationPressure(tmax) + saturationPressure(tmin)) / 2; // eq. 12
}

/**
 * Actual vapour pressure of a day.
 *
 *     ea = (e(Tmin) RHmax + e(Tmax) RHmin) / 200        e(T): saturation vapour pressure; RH: relative humidity [%]
 *
 * @param tmin Least air temperature [°C], from -60 to 60
 * @param tmax Greatest air temperature [°C], from -60 to 60
 * @param rhmin Least relative humidity [%], from 0 to 100
 * @param rhmax Greatest relative humidity [%], from 0 to 100
 * @returns ea [kPa]; the mean saturation vapour pressure in air at 100 %
 * @throws InputError if a value is out of its range, tmin is above tmax or rhmin is above rhmax
 * @source FAO-56 (1998), eq. 17
 * @example actualPressure(12.3, 21.5, 63, 84) // 1.409
 */
export function actualPressure(tmin: number, tmax: number, rhmin: number, rhmax: number): number {
  temperatures(tmin, tmax);
  humidities(rhmin, rhmax);
  return (saturationPressure(tmin) * (rhmax / 100) + saturationPressure(tmax) * (rhmin / 100)) / 2; // eq. 17
}

/**
 * Slope of the saturation vapour pressure curve.
 *
 *     slope = 4098 e(T) / (T + 237.3)^2        T: air temperature [°C]; e(T): saturation vapour pressure [kPa]
 *
 * @param temperature Air temperature [°C], from -60 to 60
 * @returns Slope [kPa/°C], more than 0
 * @throws InputError if the temperature is out of its range
 * @source FAO-56 (1998), eq. 13
 * @example saturationSlope(20) // 0.145
 */
export function saturationSlope(temperature: number): number {
  return (4098 * saturationPressure(temperature)) / (temperature + 237.3) ** 2; // eq. 13
}
