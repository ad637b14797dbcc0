import type { Area } from "../../cells/area";
import type { Cell } from "../../cells/cell";
import { caughtRate } from "../../core/application/rate";
import { runTime } from "../../core/application/run-time";
import { InputError } from "../../core/errors";
import { BUILT_IN_LIMITS, type Limit } from "../../core/figures/limits";
import { RUN_TIME } from "../../core/figures/run-time";
import { mean } from "../../core/readings";
import { type FittedBed, rowsByFit } from "../../core/summary/by-fit";
import { type SummaryRow, summary } from "../../core/summary/summary";
import { multiplier } from "../../core/uniformity/multiplier";
import { weightedMean } from "../../core/uniformity/weighted";
import { mouth as depthBy } from "../../functions/arguments";
import { areasOf } from "../../functions/by-area";
import { readings } from "../../functions/cells";
import { SHOWN_ABOVE } from "../../workbook/audit/results/other-basis";
import { type CatchClass, catchClasses } from "../readings/classes";
import { type Catches, CatchProblem, catchesOf, withCells } from "./catches";
import type { Unit } from "./entries";
import { lackOf, NEEDED, type Needed } from "./missing";
import { readingUnit, type Settings } from "./settings";

/** A run time, or why there is none, as a sentence. */
export type RunTime = { minutes: number } | { reason: string };

/** How the cans of the figures are weighted. */
export type Weighting = "by area" | "equal weight";

/** Everything that the pane shows of one range of readings. */
export interface Audit {
  area: Area;
  unit: Unit;
  catches: Catches;
  weighting: Weighting;
  /** Mean catch by that weighting. */
  mean: number;
  /** Rows of the summary; none where the cans are too few, with the reason in `lack`. */
  rows: SummaryRow[];
  lack: string;
  /** Rows with equal weight that differ from those by area by more than 2 %. */
  otherRows: SummaryRow[];
  /** What the rows were compared with. */
  limits: readonly Limit[];
  classes: CatchClass[];
  /** Run time for the driest can. */
  driest: RunTime;
  /** Run time by the basis that the settings name, where it is another one. */
  byBasis: RunTime | null;
}

/** What the settings lack of what a figure needs. */
const lackedOf = (settings: Settings, needs: readonly Needed[]) =>
  needs.filter((need) => settings[need].value === undefined);

/** Rate [mm/h] that a reading of 1 is for; null while the settings don't say. */
export function rateOfOne({ minutes, mouth }: Settings): number | null {
  if (minutes.value === undefined || mouth.value === undefined) return null;
  return caughtRate(depthBy(mouth.value)(1), minutes.value);
}

/** Above so many cans the intervals are left out, so that the pane keeps up with the selection. */
export const MOST_RESAMPLED = 2000;

type Within = <T>(work: (values: Float64Array) => T) => T;

function rowsOf(
  within: Within,
  settings: Settings,
  limits: readonly Limit[],
  areas: Float64Array | undefined,
): { rows: SummaryRow[]; lack: string } {
  const rate = rateOfOne(settings);
  const noRate = {
    value: `needs ${lackedOf(settings, ["minutes", "mouth"])
      .map((need) => NEEDED[need])
      .join(" and ")}`,
    low: "",
    high: "",
    limit: "",
    verdict: "",
  } as const;
  try {
    const rows = within((values) =>
      summary(values, rate ?? 1, limits, { intervals: values.length <= MOST_RESAMPLED, areas }),
    );
    return { rows: rows.map((row) => (rate === null && row.unit === "mm/h" ? { ...row, ...noRate } : row)), lack: "" };
  } catch (error) {
    if (!(error instanceof CatchProblem)) throw error;
    return { rows: [], lack: error.message };
  }
}

/** The area of each counted can; none while a place is being typed, so that a can has no area yet. */
function weightsOf(cells: Cell[][], areas: (number | "")[][]): Float64Array | undefined {
  try {
    return areasOf(readings("readings", cells), areas);
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** Figures with equal weight that are so far from those in use that they are shown too. */
function otherRowsOf(rows: readonly SummaryRow[], values: Float64Array, rate: number | null): SummaryRow[] {
  if (rows.length === 0) return [];
  return summary(values, rate ?? 1, [], { intervals: false }).filter(({ value }, index) => {
    const used = rows[index]!.value;
    if (typeof value !== "number" || typeof used !== "number") return false;
    return Math.abs(value - used) > SHOWN_ABOVE * Math.abs(used);
  });
}

/**
 * @param areas The area of each cell [m²] in the shape of the cells, where the figures are by area
 */
export function auditOf(
  area: Area,
  cells: Cell[][],
  settings: Settings,
  limits: readonly Limit[] = BUILT_IN_LIMITS,
  areas: (number | "")[][] | null = null,
): Audit {
  const catches = catchesOf(cells, area);
  const weights = areas ? weightsOf(cells, areas) : undefined;
  const rate = rateOfOne(settings);
  const within: Within = (work) => withCells(cells, area, work);
  const average = within((values) => (weights ? weightedMean(values, weights) : mean(values, 1)));
  const shown = rowsOf(within, settings, limits, weights);
  const lacked = lackedOf(settings, ["minutes", "mouth", "depth"]);

  function timeFor(basis: "can" | "quarter" | number): RunTime {
    if (lacked.length > 0) return { reason: lackOf(RUN_TIME.TIME.name, lacked, settings) };
    try {
      const times = multiplier(catches.values, basis, weights);
      return { minutes: runTime(settings.depth.value!, average * rate!, times) };
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return { reason: `${RUN_TIME.TIME.name}: ${error.message}` };
    }
  }

  const share = settings.share.value;
  const named = settings.basis === "share" ? share : settings.basis;
  return {
    area,
    unit: readingUnit(settings),
    catches,
    weighting: weights ? "by area" : "equal weight",
    mean: average,
    ...shown,
    otherRows: weights ? otherRowsOf(shown.rows, catches.values, rate) : [],
    limits,
    classes: catchClasses(catches.values),
    driest:
      catches.dry > 0
        ? { reason: `${RUN_TIME.TIME.name}: a dry can gets nothing, however long the run` }
        : timeFor("can"),
    byBasis:
      named === undefined
        ? { reason: lackOf(RUN_TIME.TIME.name, ["share"], settings) }
        : named === "can"
          ? null
          : timeFor(named),
  };
}

/** An audit whose verdicts are by the interval of the whole bed, where there is one [mm/h, %]. */
export function auditByFit(audit: Audit | null, bed: FittedBed | undefined): Audit | null {
  if (!audit || !bed) return audit;
  return { ...audit, rows: rowsByFit(audit.rows, bed, audit.limits, audit.catches.values.length) };
}
