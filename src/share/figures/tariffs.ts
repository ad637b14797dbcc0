import type { Stated } from "../../cells/stated";
import type { PriceStep } from "../../core/cost/block-tariff";
import { hourlyPowerCost } from "../../core/cost/hourly-tariff";
import type { Range } from "../../core/cost/yearly-cost";
import { InputError } from "../../core/errors";
import { MINUTES_A_DAY } from "../../core/program/spans";
import type { AuditInputs } from "./audit-inputs";
import { eachLevel, namedPrices, priceRange, typedRows } from "./typed-prices";

const ROUNDING = 1e-6;

/** Price ranges of some rows, all of them in use; null where one is no price. */
function rangesOf(rows: number, prices: readonly Stated[][]): Range<number>[] | null {
  const ranges = Array.from({ length: rows }, (_, index) => priceRange(prices[index] ?? []));
  return ranges.every((range) => range !== null) ? ranges : null;
}

/** The prices of water by steps, low, likely and high; one step where none is filled in. */
export function waterSteps(inputs: AuditInputs): Range<PriceStep[]> | null {
  const prices = typedRows(inputs, "Step_Prices", 3);
  const ends = typedRows(inputs, "Step_Ends", 1);
  const count = Math.max(prices.length, ends.length);
  if (count === 0) {
    const flat = namedPrices(inputs, "Water_Price");
    return flat && eachLevel(flat, (price) => [{ price }]);
  }
  const ranges = rangesOf(count, prices);
  const upTo = ranges?.map((_, index) => ends[index]?.[0] ?? null);
  if (!ranges || !upTo?.every((end): end is number | null => end === null || typeof end === "number")) return null;
  const steps = (level: keyof Range<number>): PriceStep[] =>
    ranges.map((range, index) => {
      const end = upTo[index] ?? null;
      return { price: range[level], ...(end !== null && { upTo: end }) };
    });
  return { low: steps("low"), likely: steps("likely"), high: steps("high") };
}

const minuteOf = (time: Stated | undefined): number => {
  if (typeof time === "number" && time >= 0 && time <= 1) return Math.round(time * MINUTES_A_DAY) % MINUTES_A_DAY;
  throw new InputError("time", "be a time of day", time);
};

/** Shares of a run of so many minutes in the hours of each price. */
function sharesByHour(inputs: AuditInputs, hours: readonly Stated[][], minutes: number): number[] {
  const bands = hours.map(([from, to], index) => ({
    name: `hours ${index + 1}`,
    start: minuteOf(from),
    end: minuteOf(to),
    price: 0,
  }));
  if (bands.some(({ start }, index) => index > 0 && bands[index - 1]!.end !== start)) {
    throw new InputError("from", "be the time at which the line above ends", "another time");
  }
  if (!(minutes > 0 && minutes <= MINUTES_A_DAY)) throw new InputError("run_time", "be at most a day", minutes);
  const start = minuteOf(inputs.value("Run_Start"));
  const curve = [
    { minute: start, flow: 60_000 },
    { minute: start + minutes, flow: 0 },
  ];
  return hourlyPowerCost(curve, 1, bands).map(({ share }) => share);
}

function typedShares(hours: readonly Stated[][]): number[] | null {
  const shares = hours.map(([, , share]) => share);
  if (!shares.every((share): share is number => typeof share === "number" && share >= 0 && share <= 1)) return null;
  return Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1) > ROUNDING ? null : shares;
}

/**
 * The mean price of power over a run, low, likely and high; null where something is missing.
 *
 * @throws InputError if the hours, the start or the length of the run cannot be used
 */
export function powerPrices(inputs: AuditInputs, minutes: number | null): Range<number> | null {
  const prices = typedRows(inputs, "Band_Prices", 3);
  const hours = typedRows(inputs, "Band_Hours", 3);
  const count = Math.max(prices.length, hours.length);
  if (count === 0) return namedPrices(inputs, "Power_Tariff");
  const ranges = rangesOf(count, prices);
  const all = Array.from({ length: count }, (_, index) => hours[index] ?? [null, null, null]);
  const byShare = hours.some(([, , share]) => typeof share === "number");
  const shares = byShare ? typedShares(all) : minutes === null ? null : sharesByHour(inputs, all, minutes);
  if (!ranges || !shares) return null;
  const mean = (level: keyof Range<number>) =>
    ranges.reduce((sum, range, index) => sum + range[level] * shares[index]!, 0);
  return { low: mean("low"), likely: mean("likely"), high: mean("high") };
}
