import { caughtDepth } from "../../src/core/application/depth";
import { correctedRunTime, leachingFraction } from "../../src/core/application/leaching";
import { grossDepth, leachingMultiplier } from "../../src/core/application/leaching-depth";
import { pulses } from "../../src/core/application/pulses";
import { caughtRate, headRate } from "../../src/core/application/rate";
import { runTime } from "../../src/core/application/run-time";
import { blockTariffCost } from "../../src/core/cost/block-tariff";
import { powerCost, pumpingEnergy } from "../../src/core/cost/energy";
import { annualCost } from "../../src/core/cost/price";
import { savedShare } from "../../src/core/cost/upgrade";
import { annualWater } from "../../src/core/cost/water";
import { BUILT_IN_LIMITS } from "../../src/core/figures/limits";
import { mean } from "../../src/core/readings";
import { type Bootstrap, bcaEnds, bcaShare, bootstrap } from "../../src/core/uniformity/bootstrap";
import { christiansen } from "../../src/core/uniformity/christiansen";
import { type CountedIndex, countedMean } from "../../src/core/uniformity/counted";
import { distributionUniformity } from "../../src/core/uniformity/distribution";
import { drainedShare, drainedShareAfter } from "../../src/core/uniformity/drained-share";
import { multiplier } from "../../src/core/uniformity/multiplier";
import { normalCdf, normalQuantile } from "../../src/core/uniformity/normal";
import { patchSchedulingCoefficient } from "../../src/core/uniformity/patch";
import {
  quarterSchedulingCoefficient,
  schedulingCoefficient,
  shareSchedulingCoefficient,
} from "../../src/core/uniformity/scheduling-coefficient";

import { DEMAND } from "../core/demand/core";

/** Enough that only the run that was printed has noise. */
const MANY = 1_000_000;

const countedVariance: CountedIndex = (sorted, counts, total) => {
  const m = countedMean(sorted, counts, total);
  let squares = 0;
  for (let i = 0; i < sorted.length; i += 1) squares += counts[i]! * (sorted[i]! - m) ** 2;
  return squares / total;
};

const done = new Map<string, Bootstrap>();

function resampled(readings: number[], index: CountedIndex): Bootstrap {
  const key = `${index.name} ${readings}`;
  const known = done.get(key) ?? bootstrap(Float64Array.from(readings).sort(), index, MANY);
  done.set(key, known);
  return known;
}

function percentiles(readings: number[], index: CountedIndex, level: number): [number, number] {
  return bcaEnds({ ...resampled(readings, index), bias: 0, acceleration: 0 }, level);
}

/** What a published case can call: functions of core by their own names, and a few built from them. */
export const CALLS = {
  ...DEMAND,
  annualCost,
  annualWater,
  bcaShare,
  blockTariffCost,
  caughtDepth,
  caughtRate,
  christiansen,
  distributionUniformity,
  drainedShare,
  drainedShareAfter,
  grossDepth,
  headRate,
  leachingFraction,
  leachingMultiplier,
  mean,
  multiplier,
  normalCdf,
  normalQuantile,
  patchSchedulingCoefficient,
  powerCost,
  pumpingEnergy,
  quarterSchedulingCoefficient,
  runTime,
  savedShare,
  schedulingCoefficient,
  shareSchedulingCoefficient,
  pulseNumber: (...values: Parameters<typeof pulses>) => pulses(...values).number,
  pulseMinutes: (...values: Parameters<typeof pulses>) => pulses(...values).minutes,
  correctedMinutes: (...values: Parameters<typeof correctedRunTime>) => correctedRunTime(...values).minutes,
  builtInHigh: (measure: string) => BUILT_IN_LIMITS.find((limit) => limit.measure === measure)?.high,
  normalCatches: (cans: number, variation: number) =>
    Array.from({ length: cans }, (_, i) => 1 + variation * normalQuantile((i + 0.5) / cans)),
  varianceOf: (readings: number[]) => resampled(readings, countedVariance).value,
  varianceAcceleration: (readings: number[]) => resampled(readings, countedVariance).acceleration,
  varianceEnds: (readings: number[], level: number) => bcaEnds(resampled(readings, countedVariance), level),
  variancePercentiles: (readings: number[], level: number) => percentiles(readings, countedVariance, level),
  meanEnds: (readings: number[], level: number) => bcaEnds(resampled(readings, countedMean), level),
  meanPercentiles: (readings: number[], level: number) => percentiles(readings, countedMean, level),
};

/** A call as a case file writes it. */
export interface Call {
  function: string;
  /** Values, or calls whose results are the values. */
  arguments: unknown[];
  /** Which end, where the result is a pair. */
  end?: 0 | 1;
  /** A change of unit. */
  divideBy?: number;
  over?: Call;
  minus?: Call;
}

function isCall(value: unknown): value is Call {
  return typeof value === "object" && value !== null && "function" in value;
}

/** The value of a call. */
export function resultOf(call: Call): unknown {
  const work = (CALLS as unknown as Record<string, (...values: unknown[]) => unknown>)[call.function];
  if (!work) throw new Error(`no function "${call.function}" to call`);
  const result = work(...call.arguments.map((value) => (isCall(value) ? resultOf(value) : value)));
  if (call.end !== undefined) return (result as number[])[call.end];
  if (call.over) return Number(result) / Number(resultOf(call.over));
  if (call.minus) return Number(result) - Number(resultOf(call.minus));
  return call.divideBy ? Number(result) / call.divideBy : result;
}

/** Every function that a call names, at any depth. */
export function namesIn(call: Call): string[] {
  const inner = [...call.arguments, call.over, call.minus].filter(isCall);
  return [call.function, ...inner.flatMap(namesIn)];
}
