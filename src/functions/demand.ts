import { hargreaves } from "../core/demand/hargreaves";
import { penman } from "../core/demand/penman-monteith";
import { potDepth as depthOf } from "../core/demand/pot-depth";
import { answer } from "./answer";
import { optional } from "./arguments";
import { plain } from "./cells";

/** A cell's value for core, which refuses what is no number in its range. */
const given = (value: unknown) => plain(value) as number;

/**
 * Net depth that replaces what a pot drinks [mm a day].
 * @customfunction POT.DEPTH
 * @helpurl https://localhost:3000/help.html#pot-depth
 * @param volume Water that one pot uses [mL a day], 0 or more
 * @param top Inside diameter of the pot's top [mm], more than 0
 * @param [capture] Capture factor [ratio]: water that reaches the mix with the plant over that without it, above 0; left out: 1
 * @returns Depth [mm a day]
 */
export function potDepth(volume: unknown, top: unknown, capture?: unknown): number {
  return answer(() => depthOf(given(volume), given(top), plain(capture) === null ? 1 : given(capture)));
}

/**
 * Reference evapotranspiration in the open from temperatures alone (FAO-56, Hargreaves) [mm/day]; it does not hold under cover.
 * @customfunction ETO.HARGREAVES
 * @helpurl https://localhost:3000/help.html#eto-hargreaves
 * @param tmin Least air temperature of the day [°C], -60 to 60
 * @param tmax Greatest air temperature of the day [°C], -60 to 60
 * @param latitude Latitude [degrees], south negative, -66.5 to 66.5
 * @param day Day of the year [day], a whole number from 1 to 366
 * @returns ETo [mm/day]
 */
export function etoHargreaves(tmin: unknown, tmax: unknown, latitude: unknown, day: unknown): number {
  return answer(() => hargreaves(given(tmin), given(tmax), given(latitude), given(day)));
}

/**
 * Reference evapotranspiration in the open from full weather (FAO-56, Penman-Monteith) [mm/day]; it does not hold under cover.
 * @customfunction ETO.PENMAN
 * @helpurl https://localhost:3000/help.html#eto-penman
 * @param tmin Least air temperature of the day [°C], -60 to 60
 * @param tmax Greatest air temperature of the day [°C], -60 to 60
 * @param rhmin Least relative humidity of the day [%], 0 to 100
 * @param rhmax Greatest relative humidity of the day [%], 0 to 100
 * @param wind Mean wind speed at 2 m above the ground [m/s], 0 to 100
 * @param sunshine Hours of bright sun [h], 0 to the daylight of that day and place
 * @param latitude Latitude [degrees], south negative, -66.5 to 66.5
 * @param elevation Height above the sea [m], -500 to 6000
 * @param day Day of the year [day], a whole number from 1 to 366; of a month, its middle
 * @param [soil_heat] Heat that the soil takes up [MJ/m²/day], -20 to 20: of a month by FAO-56 eq. 43 or 44; left out: 0, as over a day
 * @returns ETo [mm/day]
 */
export function etoPenman(
  tmin: unknown,
  tmax: unknown,
  rhmin: unknown,
  rhmax: unknown,
  wind: unknown,
  sunshine: unknown,
  latitude: unknown,
  elevation: unknown,
  day: unknown,
  soil_heat?: unknown,
): number {
  return answer(() => {
    const weather = {
      tmin: given(tmin),
      tmax: given(tmax),
      rhmin: given(rhmin),
      rhmax: given(rhmax),
      wind: given(wind),
      sunshine: given(sunshine),
    };
    const soil = optional(soil_heat, 0, (value) => value as number);
    return penman(weather, given(latitude), given(elevation), given(day), soil);
  });
}
