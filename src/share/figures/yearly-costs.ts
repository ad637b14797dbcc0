import { blockTariffCost } from "../../core/cost/block-tariff";
import { powerCost, pumpingEnergy } from "../../core/cost/energy";
import { drainedFertiliserCost } from "../../core/cost/fertiliser";
import type { Range } from "../../core/cost/yearly-cost";
import { InputError } from "../../core/errors";
import { drainedShareAfter } from "../../core/uniformity/drained-share";
import type { CostKind, Span } from "../../workbook/audit/cost/places";
import { type AuditInputs, ifAll } from "./audit-inputs";
import type { BedCans } from "./bed-cans";
import { groupsDrainedAfter, reachedIn } from "./pot-figures";
import { areasIn, type RunTimeFigures } from "./run-time-figures";
import { powerPrices, waterSteps } from "./tariffs";
import { eachLevel, namedPrices } from "./typed-prices";
import type { WaterFigures } from "./water-figures";

/** Costs of a year at each level of prices; null where something is missing. */
export type Cost = Range<number> | null;
export type YearCosts = Record<CostKind, Cost>;

/** What a year takes, before the prices. */
interface Takes {
  water: number | null;
  onBed: number | null;
  minutes: number | null;
  energy: number | null;
  /** Of the water on the bed. */
  drained: number | null;
  between: number | null;
  fertiliser: number | null;
  hours: number | null;
  plants: number | null;
}

const orMore = (value: number | null) => (value !== null && value >= 0 ? value : null);

function energyNow(inputs: AuditInputs): number | null {
  const [pressure, pump, motor] = ["Pump_kPa", "Pump_Efficiency", "Motor_Efficiency"].map((name) =>
    inputs.number(name),
  ) as [number | null, number | null, number | null];
  return ifAll([pressure, pump, motor], (kPa, one, other) =>
    kPa === 0 ? 0 * pumpingEnergy(1, one, other) : pumpingEnergy(kPa, one, other),
  );
}

/** What drains after the change; where the cans or their multiplier are not known, as to the driest can. */
function drainedAfter(inputs: AuditInputs, run: RunTimeFigures, water: WaterFigures, cans: BedCans): number | null {
  const { multiplier, groups } = run;
  const drainedAt = (gross: number): number => {
    if (multiplier === null || cans.catches.length === 0) return Math.max(0, 1 - 1 / gross);
    const after = inputs.number("After_SC")!;
    return drainedShareAfter(cans.catches, { now: multiplier, after, gross }, areasIn(cans));
  };
  return ifAll([water.multiplierAfter], (gross) =>
    groups.length > 0 ? groupsDrainedAfter(groups, gross, drainedAt) : drainedAt(gross),
  );
}

function takes(inputs: AuditInputs, run: RunTimeFigures, water: WaterFigures, cans: BedCans, span: Span): Takes {
  const reached = reachedIn(inputs, run.groups);
  const ofBed = (share: number | null) => ifAll([share], (one) => one * (reached ?? 1));
  const now = {
    between: ifAll([reached], (share) => 1 - share),
    energy: energyNow(inputs),
    fertiliser: orMore(inputs.number("Fertiliser_mgL")),
    hours: orMore(inputs.number("Labour_Hours")),
    plants: orMore(inputs.number("Plants_Lost")),
  };
  if (span === "Now") {
    return {
      ...now,
      water: water.water,
      onBed: water.onBed.Now,
      minutes: run.valveMinutes,
      drained: ofBed(run.drained),
    };
  }
  const after = (name: string, asNow: number | null) =>
    inputs.cells(name).length === 0 ? asNow : orMore(inputs.number(name));
  return {
    between: now.between,
    water: water.neededAfter,
    onBed: water.onBed.After,
    minutes: water.minutesAfter,
    energy: after("After_Energy_kWh_kL", now.energy),
    drained: ofBed(drainedAfter(inputs, run, water, cans)),
    fertiliser: after("After_Fertiliser_mgL", now.fertiliser),
    hours: after("After_Labour_Hours", now.hours),
    plants: after("After_Plants_Lost", now.plants),
  };
}

/** A cost at each level of prices, or null where it cannot be given. */
function cost<Price>(find: () => Range<Price> | null, work: (price: Price) => number | null): Cost {
  try {
    const prices = find();
    const all = prices && eachLevel(prices, work);
    return all && all.low !== null && all.likely !== null && all.high !== null ? (all as Range<number>) : null;
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

/** Each cost of a year by core, from what was typed. */
export function yearCosts(
  inputs: AuditInputs,
  run: RunTimeFigures,
  water: WaterFigures,
  cans: BedCans,
  span: Span,
): YearCosts {
  const year = takes(inputs, run, water, cans, span);
  const times = (amount: number | null) => (price: number) => (amount === null ? null : amount * price);
  return {
    Water: cost(
      () => waterSteps(inputs),
      (steps) => (year.water === null ? null : blockTariffCost(year.water, steps)),
    ),
    Power: cost(
      () => powerPrices(inputs, year.minutes),
      (price) => {
        if (year.water === null || year.energy === null) return null;
        return year.energy === 0 ? 0 : powerCost(year.water, year.energy, price);
      },
    ),
    Fertiliser: cost(
      () => namedPrices(inputs, "Fertiliser_Price"),
      (price) =>
        ifAll([year.onBed, year.drained, year.fertiliser], (kL, share, content) => {
          const lost = inputs.text("Runoff_Returned") === "yes" ? 0 : 1;
          const drained = drainedFertiliserCost(kL, share, content, price);
          const injected = inputs.number("Fertiliser_Water_mgL") ?? 0;
          if (injected === 0) return lost * drained;
          if (year.between === null) return null;
          return lost * (drained + drainedFertiliserCost(kL, year.between, injected, price));
        }),
    ),
    Labour: cost(() => namedPrices(inputs, "Wage"), times(year.hours)),
    Losses: cost(() => namedPrices(inputs, "Plant_Worth"), times(year.plants)),
  };
}
