import { caughtDepth } from "../../core/application/depth";
import { caughtRate } from "../../core/application/rate";
import type { Measured } from "../../core/bed/causes/measured";
import type { BedInput } from "../../core/bed/read-bed";
import { InputError } from "../../core/errors";
import { MEASURES, type MeasureId } from "../../core/figures/measures";
import { canAreas } from "../../core/pattern/can-areas";
import { type FittedBed, rowsByFit } from "../../core/summary/by-fit";
import { type SummaryRow, summary } from "../../core/summary/summary";
import { bedCans } from "../bed/bed-cans";
import { bedOfWorkbook } from "../bed/bed-of-workbook";
import { type CellsOf, firstOf, listOf, numberOf } from "../bed/cells-of";
import { limitsIn } from "./limits-in";

const isUnread = (cell: unknown) =>
  cell === null || (typeof cell === "string" && ["", "X"].includes(cell.trim().toUpperCase()));

/** The area of each place of the grid of cans [m²]; undefined where each can has equal weight. */
function gridAreas(cells: CellsOf): number[][] | undefined {
  const [width, length] = [numberOf(cells, "Bed_Width_m"), numberOf(cells, "Bed_Length_m")];
  if (firstOf(cells, "By_Area") !== true || width === undefined || length === undefined) return undefined;
  const places = (name: string) => listOf(cells, name).filter((cell) => typeof cell === "number");
  return canAreas(places("Cans_Across_m"), places("Cans_Along_m"), width, length);
}

/** Rate [mm/h] that 1 mL is for; undefined while the test isn't described. */
function rateOfOne(cells: CellsOf): number | undefined {
  const [minutes, opening] = [numberOf(cells, "Test_Minutes"), numberOf(cells, "Can_Mouth_mm")];
  if (!minutes || !opening) return undefined;
  return caughtRate(caughtDepth(1, opening), minutes);
}

/**
 * The measures of an audit's own cans against its own limits, each with its interval: what the pane, the sheets and the
 * check of a copy all show. None where readings cannot give them.
 */
export function testSummary(cells: CellsOf): SummaryRow[] {
  const typed = cells("Cans_Readings") ?? [];
  if (typed.flat().some((cell) => typeof cell !== "number" && !isUnread(cell))) return [];
  try {
    const areas = gridAreas(cells);
    const read = typed.flatMap((line, row) =>
      line.flatMap((value, column) =>
        typeof value === "number" ? [{ value, area: areas?.[row]?.[column] ?? Number.NaN }] : [],
      ),
    );
    const rate = rateOfOne(cells);
    const rows = summary(
      read.map(({ value }) => value),
      rate ?? 1,
      limitsIn(cells),
      { areas: areas && read.map(({ area }) => area) },
    );
    return rate === undefined ? rows.filter(({ measure }) => measure !== MEASURES.MAR.name) : rows;
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}

/** The bed of an audit with the rates of its cans [mm/h], for an interval by fit; undefined while something is lacking. */
export function ratedBed(cells: CellsOf): { input: BedInput; measured: Measured } | undefined {
  const { input, measured } = bedOfWorkbook(cells);
  const [minutes, opening] = [numberOf(cells, "Test_Minutes"), numberOf(cells, "Can_Mouth_mm")];
  if (!input || !minutes || !opening) return undefined;
  const { grid, across, along } = bedCans(cells);
  const rate = (reading: number | null) =>
    reading === null ? null : caughtRate(caughtDepth(reading, opening), minutes);
  return { input: { grid: grid.map((line) => line.map(rate)), across, along, ...input }, measured };
}

/** The rows with the intervals of the whole bed by fit, where there is one. */
export const byFit = (cells: CellsOf, rows: readonly SummaryRow[], whole: FittedBed | undefined): SummaryRow[] =>
  rowsByFit(
    rows,
    whole,
    limitsIn(cells),
    listOf(cells, "Cans_Readings").filter((cell) => typeof cell === "number").length,
  );

/** The measures that have intervals, by the endings of their names on the sheets. */
export const WITH_ENDS: readonly (readonly [short: string, measure: MeasureId])[] = [
  ["MAR", "MAR"],
  ["CU", "CU"],
  ["DU", "DU"],
  ["SCQ", "SC_QUARTER"],
];

/** The ends of the intervals by the names of their cells; "" where a measure has none. */
export const endsOf = (rows: readonly SummaryRow[]): Record<string, number | ""> =>
  Object.fromEntries(
    WITH_ENDS.flatMap(([short, id]) => {
      const row = rows.find(({ measure }) => measure === MEASURES[id].name);
      return [
        [`Ends_${short}_Low`, row?.low ?? ""],
        [`Ends_${short}_High`, row?.high ?? ""],
      ];
    }),
  );
