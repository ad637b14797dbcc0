import type { Limit } from "../figures/limits";
import { MEASURES, type MeasureId } from "../figures/measures";
import type { SummaryRow } from "./summary";
import { verdict } from "./verdict";

/** An index of the whole bed, by fit. */
export interface FittedIndex {
  estimate: number;
  low: number;
  high: number;
}

/** Rate [mm/h], CU and DU [%] of the whole bed, by fit. */
export type FittedBed = Readonly<Record<"MEAN" | "CU.CHRISTIANSEN" | "DU.QUARTER", FittedIndex>>;

function fittedFigures(bed: FittedBed): [MeasureId, FittedIndex][] {
  const { estimate, low, high } = bed["DU.QUARTER"];
  return [
    ["MAR", bed.MEAN],
    ["CU", bed["CU.CHRISTIANSEN"]],
    ["DU", bed["DU.QUARTER"]],
    ...(low > 0
      ? [["SC_QUARTER", { estimate: 100 / estimate, low: 100 / high, high: 100 / low }] as [MeasureId, FittedIndex]]
      : []),
  ];
}

/**
 * Rows of a summary with the intervals of the whole bed by fit instead of those from the cans.
 *
 *     SC (low quarter): 100 / DU, ends exchanged
 *
 * @param rows Rows as from `summary`; values stay those of the cans
 * @param bed The whole bed by fit; undefined: the rows as they are
 * @param limits What the rows are compared with
 * @returns The rows; where the interval is by fit, with its estimate, and with the verdict by that interval
 * @source own reasoning
 */
export function rowsByFit(
  rows: readonly SummaryRow[],
  bed: FittedBed | undefined,
  limits: readonly Limit[],
  cans: number,
): SummaryRow[] {
  if (!bed) return [...rows];
  const figures = new Map<string, FittedIndex>(fittedFigures(bed).map(([id, index]) => [MEASURES[id].name, index]));
  return rows.map((row) => {
    const found = figures.get(row.measure);
    if (!found || typeof row.value !== "number") return row;
    const limit = limits.find(({ measure }) => measure === row.measure);
    const { estimate, low, high } = found;
    return { ...row, estimate, low, high, verdict: limit ? verdict([low, high], limit, cans) : row.verdict };
  });
}
