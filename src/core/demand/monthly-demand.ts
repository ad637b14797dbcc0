import { zeroOrMore } from "../checks";
import { InputError } from "../errors";
import { potDepth } from "./pot-depth";
import { lessRain, weatherUse } from "./weather-use";
import { potUse } from "./weighings";

/** What is known of a month: the pots weighed, or else the weather. */
export interface MonthGiven {
  /** Use of each pot weighed [mL a day]; goes before the weather */
  volumes?: readonly number[];
  /** Reference evapotranspiration [mm/day] */
  et0?: number;
  /** Crop coefficient, and the area of one pot that it refers to [m2] */
  coefficient?: number;
  area?: number;
  /** Useful rain of the whole month [mm], 0 or more; left out: 0 */
  rain?: number;
}

/** What a month asks for. */
export interface MonthDemand {
  /** From 1 to 12 */
  month: number;
  /** Net depth to water [mm a day]; left out where something is missing or wrong */
  depth?: number;
  /** Use of a pot [mL a day], and its standard error where pots were weighed */
  volume?: number;
  error?: number;
  /** What is missing or wrong, in words */
  problem?: string;
}

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Net depth of each month.
 *
 *     d = v / (A_top c) - P / days        v: use of a pot; A_top: area of its top; c: capture factor; P: useful rain
 *
 * @param months What is known of each month, January first; undefined where nothing is
 * @param top Inside diameter of the pot's top [mm], more than 0
 * @param capture Capture factor, more than 0
 * @returns Twelve months, each with its depth [mm a day] or with what is missing or wrong
 * @throws InputError if there are not twelve months, or the top or the capture factor is not more than 0
 * @source own reasoning: what the pot uses less the useful rain
 */
export function monthlyDemand(
  months: readonly (MonthGiven | undefined)[],
  top: number,
  capture: number,
): MonthDemand[] {
  if (months.length !== DAYS.length) throw new InputError("months", "be 12", months.length, { missing: true });
  potDepth(0, top, capture);
  return Array.from(months, (given, i) => {
    const month = i + 1;
    if (!given) return { month, problem: `month ${month} is missing` };
    try {
      return { month, ...demandOf(given, DAYS[i] as number, top, capture) };
    } catch (error) {
      if (error instanceof InputError) return { month, problem: error.at(`month ${month}`).message };
      throw error;
    }
  });
}

function demandOf(given: MonthGiven, days: number, top: number, capture: number): Omit<MonthDemand, "month"> {
  const use = given.volumes ? weighed(given.volumes) : { volume: fromWeather(given) };
  const rain = zeroOrMore("rain", given.rain ?? 0, "mm");
  return { ...use, depth: lessRain(potDepth(use.volume, top, capture), rain / days) };
}

function weighed(volumes: readonly number[]): { volume: number; error: number } {
  const { volume, error } = potUse(volumes);
  return { volume, error };
}

function fromWeather({ et0, coefficient, area }: MonthGiven): number {
  return weatherUse(et0 as number, coefficient as number, area as number);
}
