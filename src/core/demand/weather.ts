import { within } from "../checks";
import { InputError } from "../errors";

/** Latitude [degrees], south negative: within the polar circles, where the sun sets every day. */
export function latitudeOf(value: unknown): number {
  return within("latitude", value, -66.5, 66.5, "°");
}

/** Day of the year: 1 is 1 January, 366 is 31 December of a leap year. */
export function dayOf(value: unknown): number {
  if (!Number.isInteger(value) || !((value as number) >= 1 && (value as number) <= 366)) {
    throw new InputError("day", "be a whole number from 1 to 366", value);
  }
  return value as number;
}

/** Height above the sea [m]. */
export function elevationOf(value: unknown): number {
  return within("elevation", value, -500, 6000, "m");
}

/** An air temperature [°C]. */
export function temperatureOf(parameter: string, value: unknown): number {
  return within(parameter, value, -60, 60, "°C");
}

/** Refuses a day whose least temperature is above its greatest. */
export function temperatures(tmin: unknown, tmax: unknown): { tmin: number; tmax: number } {
  const least = temperatureOf("tmin", tmin);
  const most = temperatureOf("tmax", tmax);
  if (!(least <= most)) throw new InputError("tmin", `be at most tmax, ${most} °C`, tmin);
  return { tmin: least, tmax: most };
}

/** Refuses a day whose least relative humidity is above its greatest. */
export function humidities(rhmin: unknown, rhmax: unknown): { rhmin: number; rhmax: number } {
  const least = within("rhmin", rhmin, 0, 100, "%");
  const most = within("rhmax", rhmax, 0, 100, "%");
  if (!(least <= most)) throw new InputError("rhmin", `be at most rhmax, ${most} %`, rhmin);
  return { rhmin: least, rhmax: most };
}

/** Wind speed [m/s]. */
export function windOf(value: unknown): number {
  return within("wind", value, 0, 100, "m/s");
}
