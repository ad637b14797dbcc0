import { zeroOrMore } from "../checks";
import { blockTariffCost, type PriceStep } from "./block-tariff";
import { powerCost } from "./energy";
import { drainedFertiliserCost } from "./fertiliser";

/** What a year takes, before and after a change each once. */
export interface Year {
  /** [kL a year], 0 or more */
  water: number;
  /** Pumping [kWh per kL], more than 0 */
  energy: number;
  /** Share of the water that drains, from 0 to 1 */
  drained: number;
  /** Fertiliser in the drained water [mg/L], 0 or more */
  concentration: number;
  /** Work on this watering [h a year], 0 or more */
  hours: number;
  /** Plants lost or marked down because of uneven watering [plants a year], 0 or more */
  plantsLost: number;
}

/** The prices of a year. */
export interface Prices {
  /** Of water, by steps */
  water: readonly PriceStep[];
  /** Of power, the mean over the hours in which it runs [currency per kWh], 0 or more */
  power: number;
  /** Of fertiliser [currency per kg], more than 0 */
  fertiliser: number;
  /** Of an hour of work [currency per h], 0 or more */
  wage: number;
  /** What a lost plant is worth [currency each], 0 or more */
  plant: number;
}

/** Costs of a year, each apart [currency a year]. */
export interface YearlyCost {
  water: number;
  power: number;
  fertiliser: number;
  labour: number;
  losses: number;
  total: number;
}

/**
 * Costs of watering in a year, each apart.
 *
 *     water by price steps;  power V E p;  fertiliser V s c p / 1000;  labour hours times wage;
 *     losses plants times their worth;  total their sum
 *
 * @param year Water, energy, drained share, fertiliser in it, hours of work and plants lost
 * @param prices Prices of water, power, fertiliser and work, and what a plant is worth
 * @returns Costs [currency a year], each 0 or more, and their total
 * @throws InputError if a value is out of its range
 * @source arithmetic: a sum
 */
export function yearlyCost(year: Year, prices: Prices): YearlyCost {
  const water = blockTariffCost(year.water, prices.water);
  const power = powerCost(year.water, year.energy, prices.power);
  const fertiliser = drainedFertiliserCost(year.water, year.drained, year.concentration, prices.fertiliser);
  const labour = zeroOrMore("hours", year.hours, "h") * zeroOrMore("wage", prices.wage, "per h");
  const losses = zeroOrMore("plants_lost", year.plantsLost, "plants") * zeroOrMore("plant", prices.plant, "each");
  return { water, power, fertiliser, labour, losses, total: water + power + fertiliser + labour + losses };
}

/** Something at a low, a likely and a high price. */
export interface Range<Value> {
  low: Value;
  likely: Value;
  high: Value;
}
