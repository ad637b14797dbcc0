import { within } from "../../checks";
import { InputError } from "../../errors";
import { normalQuantile } from "../../uniformity/normal";
import type { ReadBed } from "../read-bed";
import { type DrawnBed, drawnBeds } from "./drawn-beds";

const DRAWS = 240;
const FEWEST_CANS = 16;
const MOST_CANS = 200;
/** What no drawn bed knows of: standard deviation over 100 - CU and 100 - DU, and over the mean. */
const UNSEEN_SHARE = [0, 0.04, 0.03];
const UNSEEN_OF_MEAN = 0.006;
/** Widest 90 % intervals that are of use: DU [points] and mean [% of it]. */
const WIDEST_DU = 14;
const WIDEST_MEAN = 18;
const STATED = 0.9;

/** The indices of the whole bed that have an interval by fit, in the order of the drawn ones. */
export const WHOLE_BED_INDICES = ["MEAN", "CU.CHRISTIANSEN", "DU.QUARTER"] as const;
export type WholeBedIndex = (typeof WHOLE_BED_INDICES)[number];

/** An index of a whole bed, by fit [unit of the index]. */
export interface WholeBedInterval {
  estimate: number;
  low: number;
  high: number;
}

/** The index that a person typed. */
export function parseWholeBedIndex(value: unknown): WholeBedIndex {
  const known = WHOLE_BED_INDICES.find((index) => index === value);
  if (known) return known;
  throw new InputError("index", 'be "MEAN", "CU.CHRISTIANSEN" or "DU.QUARTER"', value);
}

export type WholeBed = Record<WholeBedIndex, WholeBedInterval>;

/** Number at a share of a list in rising order, by straight lines. */
function atShare(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1);
  const before = Math.floor(place);
  const low = sorted[before]!;
  return low + (place - before) * ((sorted[before + 1] ?? low) - low);
}

function intervalOf(sorted: Float64Array, level: number, unseen: number): WholeBedInterval {
  const estimate = atShare(sorted, 0.5);
  const wider = normalQuantile((1 + level) / 2) * unseen;
  return {
    estimate,
    low: Math.max(0, estimate - Math.hypot(estimate - atShare(sorted, (1 - level) / 2), wider)),
    high: estimate + Math.hypot(atShare(sorted, (1 + level) / 2) - estimate, wider),
  };
}

function checkCount({ cans }: ReadBed): void {
  if (cans.length < FEWEST_CANS) {
    const rule = `have at least ${FEWEST_CANS} cans for an interval by fit`;
    throw new InputError("grid", rule, cans.length, { missing: true });
  }
  if (cans.length > MOST_CANS) {
    throw new InputError("grid", `have at most ${MOST_CANS} cans for an interval by fit`, cans.length, {
      missing: true,
    });
  }
}

function checkUse({ high, low, estimate }: WholeBedInterval, of: "DU" | "mean"): void {
  const width = of === "DU" ? high - low : (100 * (high - low)) / estimate;
  const widest = of === "DU" ? WIDEST_DU : WIDEST_MEAN;
  if (width <= widest) return;
  const allowed = of === "DU" ? `${widest} points wide` : `${widest} % of it wide`;
  const rule = `give a 90 % interval of the ${of} at most ${allowed}, or it is too wide to be of use`;
  throw new InputError("grid", rule, Number(width.toFixed(1)), { missing: true });
}

/**
 * Intervals of the mean, CU and DU of a whole bed, by fit.
 *
 *     estimate: median over 240 whole beds drawn given the readings
 *     end = estimate -+ sqrt(h^2 + (z u)^2)        h: from the estimate to the quantile of the drawn beds; z: normal quantile
 *     u = 0.04 (100 - CU), 0.03 (100 - DU) or 0.006 mean: what no model has, as measured on simulated beds
 *
 * @param bed The bed, with 16 to 200 cans
 * @param level Share of such intervals that should hold the true value, 0.5 to 0.99
 * @returns Estimate, low and high end of each [unit of the grid, or %]
 * @throws InputError if there are too few or too many cans, no head reaches one, or the 90 % interval is wider than 14 DU
 * points or 18 % of the mean
 * @source own reasoning; measured by `npm run coverage:interval`
 */
export function wholeBed(bed: ReadBed, level = STATED): WholeBed {
  return wholeBedOf(bed, bedsDrawn(bed), level);
}

/** The whole beds that an interval is taken from. */
export function bedsDrawn(bed: ReadBed): DrawnBed[] {
  checkCount(bed);
  return drawnBeds(bed, DRAWS);
}

/** The intervals of beds that were drawn; see wholeBed. */
export function wholeBedOf(bed: ReadBed, drawn: readonly DrawnBed[], level = STATED): WholeBed {
  within("level", level, 0.5, 0.99);
  const at = (index: number, asked: number): WholeBedInterval => {
    const sorted = Float64Array.from(drawn, ({ indices }) => indices[index]!).sort();
    const middle = atShare(sorted, 0.5);
    if (index === 0) return intervalOf(sorted, asked, UNSEEN_OF_MEAN * middle);
    const found = intervalOf(sorted, asked, UNSEEN_SHARE[index]! * (100 - middle));
    return { ...found, high: Math.min(100, found.high) };
  };
  checkUse(at(2, STATED), "DU");
  checkUse(at(0, STATED), "mean");
  const mean = at(0, level);
  return {
    MEAN: { estimate: mean.estimate * bed.mean, low: mean.low * bed.mean, high: mean.high * bed.mean },
    "CU.CHRISTIANSEN": at(1, level),
    "DU.QUARTER": at(2, level),
  };
}
