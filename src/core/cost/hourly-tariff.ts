import { aboveZero, zeroOrMore } from "../checks";
import { InputError } from "../errors";

/** A price of power in some hours of the day. */
export interface HourlyPrice {
  /** As people call it, such as "off-peak" */
  name: string;
  /** Minutes after midnight, a whole number from 0 to 1439 */
  start: number;
  /** Minutes after midnight, a whole number from 0 to 1440; at or before the start it is on the next day */
  end: number;
  /** [currency per kWh], 0 or more */
  price: number;
}

/** Flow from a minute until the next point; the last point is 0. */
export interface FlowStep {
  minute: number;
  /** [L/h] */
  flow: number;
}

/** What one price takes of a night. */
export interface HourlyCost {
  name: string;
  /** Water pumped at this price [kL] */
  water: number;
  /** Share of the night's water, from 0 to 1 */
  share: number;
  /** [kWh] */
  energy: number;
  /** [currency] */
  cost: number;
}

const MINUTES_A_DAY = 1440;

/**
 * Cost of a night's power where its price depends on the hour.
 *
 *     V_k = sum of flow times time in the hours of price k;  C_k = V_k E p_k        E: energy of a kL; p_k: price k
 *
 * @param curve Flow of the schedule, as points in order of time
 * @param energy Energy [kWh per kL], more than 0
 * @param prices Prices whose hours together make up the whole day once; at least 1
 * @returns Water, share, energy and cost at each price, in the order of the prices
 * @throws InputError if a value is out of its range, or an hour has no price or two
 * @source arithmetic
 */
export function hourlyPowerCost(
  curve: readonly FlowStep[],
  energy: number,
  prices: readonly HourlyPrice[],
): HourlyCost[] {
  const perKilolitre = aboveZero("energy", energy, "kWh/kL");
  const priceAt = pricesByMinute(prices);
  const litres = prices.map(() => 0);
  for (const [i, { minute, flow }] of curve.entries()) {
    const end = curve[i + 1]?.minute ?? minute;
    for (let from = minute; from < end; ) {
      const to = Math.min(end, Math.floor(from) + 1);
      const price = priceAt[Math.floor(from) % MINUTES_A_DAY] as number;
      litres[price] = (litres[price] as number) + (flow * (to - from)) / 60;
      from = to;
    }
  }
  const all = litres.reduce((sum, some) => sum + some, 0);
  return prices.map(({ name, price }, k) => {
    const water = (litres[k] as number) / 1000;
    const share = all > 0 ? (litres[k] as number) / all : 0;
    return { name, water, share, energy: water * perKilolitre, cost: water * perKilolitre * price };
  });
}

/** Which price each minute of the day has. */
function pricesByMinute(prices: readonly HourlyPrice[]): number[] {
  const found = Array.from({ length: MINUTES_A_DAY }, () => -1);
  for (const [k, { name, start, end, price }] of prices.entries()) {
    const place = `price "${name}"`;
    zeroOrMore("price", price, "per kWh");
    minute("start", start, MINUTES_A_DAY - 1, place);
    minute("end", end, MINUTES_A_DAY, place);
    const length = end > start ? end - start : end + MINUTES_A_DAY - start;
    for (let i = 0; i < length; i += 1) {
      const at = (start + i) % MINUTES_A_DAY;
      if (found[at] !== -1) throw new InputError("prices", "have each hour once", clockTime(at), { place });
      found[at] = k;
    }
  }
  const without = found.indexOf(-1);
  if (without !== -1) throw new InputError("prices", "make up the whole day", `nothing at ${clockTime(without)}`);
  return found;
}

function minute(parameter: string, value: unknown, high: number, place: string): void {
  if (Number.isInteger(value) && (value as number) >= 0 && (value as number) <= high) return;
  throw new InputError(parameter, `be a whole number of minutes after midnight from 0 to ${high}`, value, { place });
}

function clockTime(at: number): string {
  return `${Math.floor(at / 60)}:${String(at % 60).padStart(2, "0")}`;
}
