import type { BedHead } from "../bed-heads";
import type { ReadBed } from "../read-bed";
import { CAUSES, type CauseName, type MapCause } from "./cause-names";
import type { Claim } from "./evidence";
import { type Falling, fallingPressure } from "./falling-pressure";
import { lowPressure } from "./low-pressure";
import { mapCause } from "./map-cause";
import type { Measured } from "./measured";
import { type Outside, outside } from "./outside";
import { plain } from "./plain";
import { secondFault } from "./second-fault";
import { type Fitted, Setting } from "./setting";
import { strongWind } from "./strong-wind";
import { weakHead } from "./weak-head";

/** Scores this much apart differ by a factor of e in weight; 2 would be twice the log likelihood, and proved overconfident. */
const SCORE_OF_E = 3;
const FEWEST_CANS = 16;
const LEAST_WEIGHT = 60;
/** Cans a head from which a single head is named. */
const CANS_A_HEAD = 1.5;
/** Rest over the cans from which a fit leaves clearly more than reading error. */
const MOST_REST = 2.4;
const MOST_REST_WIND = 6;
/** Cost of what was measured at the heads from which it contradicts a fit. */
const MOST_AGAINST = 20;

/** One cause with its weight. */
export interface WeighedCause {
  cause: CauseName;
  /** [%]; those of all nine sum to 100 */
  weight: number;
  fitted?: Fitted;
  /** Number of the weak head, from 0. */
  head?: number;
  /** Where wind carries the water, or where pressure falls: right and down are positive. */
  towards?: { x: number; y: number };
}

/** Why no cause is named although one leads. */
export type Doubt = "weight" | "cans" | "rest" | "second fault" | "measured" | "outside";

/** What a bed's cans and heads say together. */
export interface BedCauses {
  bed: ReadBed;
  /** All nine, by falling weight. */
  causes: WeighedCause[];
  doubts: Doubt[];
  measured?: Measured;
  /** Head that gives less than the leading cause explains, from 0. */
  second?: number;
  /** What explains the cans better than the leading cause and is none of the nine. */
  outside?: Outside;
}

const ARROWS = { top: { x: 0, y: -1 }, bottom: { x: 0, y: 1 }, left: { x: -1, y: 0 }, right: { x: 1, y: 0 } };

function lowest<T extends Fitted>(fits: readonly T[]): T | undefined {
  return fits.reduce<T | undefined>((best, fit) => (best && best.score <= fit.score ? best : fit), undefined);
}

/** Throw that the fits agree on, over the typed one: mean of its logarithm by likelihood. */
function throwRatio(fits: readonly Fitted[]): number {
  const best = lowest(fits)!.score;
  const weights = fits.map(({ score }) => Math.exp((best - score) / SCORE_OF_E));
  const sum = weights.reduce((all, weight) => all + weight, 0);
  return Math.exp(fits.reduce((log, { ratio }, i) => log + (weights[i]! / sum) * Math.log(ratio), 0));
}

/**
 * Causes of what the cans of a bed caught, by fits of the overlap of its heads.
 *
 *     weight = exp(-score / 3) over the sum of all
 *     score = (n + 12) ln((rest + 12) / (n + 12)) + (ln ratio / 0.15)² + penalty
 *
 * n: cans; rest: squares that a fit leaves, freed of what sound beds differ by; ratio: throw over the typed one; penalty: what
 * the search costs. The weight of the plain fit goes to the cause that the places of the heads show, if the fit shows it too.
 *
 * @param bed A bed that was read
 * @param measured What was measured at the heads besides; left out: nothing
 * @returns The nine causes by falling weight [%], and why the leading one is not named, if it is not
 * @source own method; penalties calibrated on simulated beds
 */
export function causes(bed: ReadBed, measured?: Measured): BedCauses {
  const setting = new Setting(bed, measured);
  const plainFits = plain(setting);
  const bestPlain = lowest(plainFits)!;
  const onMap = mapCause(bed, bestPlain, bed.radius * Math.sqrt(throwRatio(plainFits)));
  const weakFits = weakHead(setting, plainFits);
  const weak = lowest(weakFits)!;
  const falling = lowest<Falling>(fallingPressure(setting, plainFits));
  const wind = strongWind(setting, plainFits);
  const low = lowPressure(setting);
  const found: Omit<WeighedCause, "weight">[] = [
    { cause: onMap, fitted: bestPlain },
    { cause: "one weak head", fitted: weak, head: weakFits.indexOf(weak) },
    { cause: "wind", fitted: wind, towards: { x: wind.wind!.x, y: wind.wind!.y } },
    ...(falling
      ? [{ cause: "pressure falls along the line" as const, fitted: falling, towards: ARROWS[falling.towards] }]
      : []),
    ...(low ? [{ cause: "pressure too low" as const, fitted: low }] : []),
  ];
  const weighed = weights(found);
  const verdict = doubtsOf(setting, weighed);
  const other = outside(setting, plainFits, weakFits);
  const likelier = other.score < weighed[0]!.fitted!.score;
  if (likelier) verdict.doubts.push("outside");
  return { bed, causes: weighed, ...verdict, ...(likelier && { outside: other }), ...(measured && { measured }) };
}

function weights(found: readonly Omit<WeighedCause, "weight">[]): WeighedCause[] {
  const best = Math.min(...found.map(({ fitted }) => fitted!.score));
  const shares = found.map(({ fitted }) => Math.exp((best - fitted!.score) / SCORE_OF_E));
  const sum = shares.reduce((all, share) => all + share, 0);
  return CAUSES.map((cause) => {
    const at = found.findIndex((one) => one.cause === cause);
    return at < 0 ? { cause, weight: 0 } : { ...found[at]!, weight: (100 * shares[at]!) / sum };
  }).sort((one, other) => other.weight - one.weight);
}

function doubtsOf(setting: Setting, weighed: readonly WeighedCause[]): Pick<BedCauses, "doubts" | "second"> {
  const { cause, weight, fitted, head } = weighed[0]!;
  const { count } = setting;
  const second = secondFault(setting, fitted!, head, cause === "wind");
  const limit = cause === "wind" ? MOST_REST_WIND : MOST_REST;
  const doubts: Doubt[] = [];
  if (count < FEWEST_CANS) doubts.push("cans");
  if (weight < LEAST_WEIGHT) doubts.push("weight");
  if (fitted!.rest > limit * Math.max(1, count - 5)) doubts.push("rest");
  if (second !== undefined) doubts.push("second fault");
  const claim: Claim = { ...fitted!, low: cause === "pressure too low" };
  if (setting.evidence.cost(claim) >= MOST_AGAINST) doubts.push("measured");
  return { doubts, ...(second !== undefined && { second }) };
}

/** Whether there are enough cans to name a single head. */
export function headsInReach({ cans, heads }: { cans: readonly unknown[]; heads: readonly BedHead[] }): boolean {
  return cans.length >= CANS_A_HEAD * heads.length;
}

export type { MapCause };
