import { aboveZero, within } from "../checks";
import { airPressure, psychrometricConstant } from "./air-pressure";
import { evaporation } from "./evaporation";
import { extraterrestrialRadiation } from "./extraterrestrial-radiation";
import { netRadiation } from "./net-radiation";
import { clearSkyRadiation, solarRadiation } from "./solar-radiation";
import { daylight } from "./sun";
import { actualPressure, meanSaturationPressure, saturationSlope } from "./vapour-pressure";
import { windOf } from "./weather";

/** Most heat that the soil can take up or give [MJ/m2/day]: 0.14 times a step from -60 to 60 °C, and a little more. */
const MOST_SOIL_HEAT = 20;

/** The air over the reference grass. */
export interface Air {
  /** Mean air temperature [°C], from -60 to 60 */
  temperature: number;
  /** Wind speed at 2 m [m/s], from 0 to 100 */
  wind: number;
  /** What the air could hold more than it does, es - ea [kPa], from 0 to 20 */
  deficit: number;
  /** Psychrometric constant [kPa/°C], more than 0 */
  gamma: number;
}

/** The weather of one day. */
export interface DayWeather {
  /** Least and greatest air temperature [°C], from -60 to 60 */
  tmin: number;
  tmax: number;
  /** Least and greatest relative humidity [%], from 0 to 100 */
  rhmin: number;
  rhmax: number;
  /** Wind speed at 2 m [m/s], from 0 to 100 */
  wind: number;
  /** Hours of bright sun [h], from 0 to the daylight */
  sunshine: number;
}

/**
 * Reference evapotranspiration from the energy and the air (Penman-Monteith).
 *
 *     ETo = (0.408 D (Rn - G) + g 900 / (T + 273) u2 (es - ea)) / (D + g (1 + 0.34 u2))
 *
 * D: slope of the saturation vapour pressure curve at T; g: psychrometric constant; u2: wind at 2 m
 *
 * @param energy Net radiation less the heat that the soil takes up, Rn - G [MJ/m2/day]
 * @param air Temperature, wind, deficit and psychrometric constant
 * @returns ETo in the open [mm/day]
 * @throws InputError if a value is out of its range
 * @source FAO-56 (1998), eq. 6
 * @example penmanMonteith(13.28, { temperature: 16.9, wind: 2.078, deficit: 0.589, gamma: 0.0666 }) // 3.88
 */
export function penmanMonteith(energy: number, { temperature, wind, deficit, gamma }: Air): number {
  const slope = saturationSlope(temperature);
  const u2 = windOf(wind);
  const g = aboveZero("gamma", gamma, "kPa/°C");
  const drying = ((g * 900) / (temperature + 273)) * u2 * within("deficit", deficit, 0, 20, "kPa");
  return (slope * evaporation(energy) + drying) / (slope + g * (1 + 0.34 * u2)); // eq. 6
}

/**
 * Reference evapotranspiration of a day from its full weather, or of a month from its means.
 *
 * @param weather Temperatures, humidities, wind and sun of the day
 * @param latitude Latitude [degrees], south negative, from -66.5 to 66.5
 * @param elevation Height above the sea [m], from -500 to 6000
 * @param day Day of the year, a whole number from 1 to 366; of a month, its middle
 * @param soil Heat that the soil takes up, G [MJ/m2/day], from -20 to 20; left out: 0, as over a day (eq. 42)
 * @returns ETo in the open [mm/day]; it can be a little under 0 in cold weather with hardly any sun
 * @throws InputError if a value is out of its range, tmin is above tmax, rhmin is above rhmax, or there is more sun
 * than daylight
 * @source FAO-56 (1998), eq. 6 with eq. 7 to 44; the bounds of G: own reasoning, 0.14 times the widest step of temperature
 * @example penman({ tmin: 12.3, tmax: 21.5, rhmin: 63, rhmax: 84, wind: 2.078, sunshine: 9.25 }, 50.8, 100, 187) // 3.88
 */
export function penman(weather: DayWeather, latitude: number, elevation: number, day: number, soil = 0): number {
  const { tmin, tmax, rhmin, rhmax, wind, sunshine } = weather;
  const saturation = meanSaturationPressure(tmin, tmax);
  const vapour = actualPressure(tmin, tmax, rhmin, rhmax);
  windOf(wind);
  const outside = extraterrestrialRadiation(latitude, day);
  const clear = clearSkyRadiation(elevation, outside);
  const solar = solarRadiation(sunshine, daylight(latitude, day), outside);
  const net = netRadiation(tmin, tmax, vapour, solar, clear);
  const energy = net - within("soil_heat", soil, -MOST_SOIL_HEAT, MOST_SOIL_HEAT, "MJ/m²/day");
  return penmanMonteith(energy, {
    temperature: (tmin + tmax) / 2, // eq. 9
    wind,
    deficit: saturation - vapour,
    gamma: psychrometricConstant(airPressure(elevation)),
  });
}
