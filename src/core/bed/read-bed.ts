import { positive } from "../checks";
import { InputError } from "../errors";
import { type Arcs, type Arrangement, checkArcs } from "../layout/heads";
import { canField } from "../pattern/can-field";
import { strips } from "../pattern/strips";
import { type BedHead, type BedPlace, bedHeads, lineOfHead, type TypedHead } from "./bed-heads";

/** What a person knows of a bed whose cans were read. */
export interface BedInput {
  /** Catches, row after row from the top, each from left to right, any one unit; null where a can was not read. */
  grid: readonly (readonly (number | null)[])[];
  /** Places of the columns [m from the left edge], ascending. */
  across: readonly number[];
  /** Places of the rows [m from the top edge], ascending. */
  along: readonly number[];
  width: number;
  length: number;
  spacing: number;
  rowSpacing: number;
  /** The maker's throw of a head [m]. */
  radius: number;
  arrangement: Arrangement;
  arcs: Arcs;
  /** Places of the heads, where they are not as arranged. */
  heads?: readonly TypedHead[];
}

/** A can that was read. */
export interface BedCan extends BedPlace {
  row: number;
  column: number;
  /** Its catch, in the unit of the grid. */
  caught: number;
}

/** A bed that was read: every number checked, its cans in one list, its heads placed. */
export interface ReadBed extends Omit<BedInput, "heads"> {
  cans: BedCan[];
  /** Mean catch, each can weighted equally [unit of the grid], above 0. */
  mean: number;
  heads: BedHead[];
  /** Whether the places of the heads were typed. */
  typedHeads: boolean;
}

function checkPlaces(parameter: string, places: readonly number[], size: number, count: number, line: string): void {
  if (places.length !== count) {
    throw new InputError(parameter, `have one place for each of the ${count} ${line}s`, places.length);
  }
  try {
    strips(places, size);
  } catch (error) {
    if (!(error instanceof InputError) || error.parameter !== "positions") throw error;
    throw new InputError(parameter, error.rule, error.value, { place: error.place! });
  }
}

function checkHeads(heads: readonly TypedHead[], width: number, length: number, radius: number): void {
  if (heads.length === 0) throw new InputError("heads", "have at least 1 head", 0);
  const taken = new Set<string>();
  heads.forEach(({ x, y, number }, index) => {
    const row = `row ${index + 1}`;
    if (!Number.isFinite(x)) throw new InputError("heads", "be numbers", x, { place: `${row}, column 1` });
    if (!Number.isFinite(y)) throw new InputError("heads", "be numbers", y, { place: `${row}, column 2` });
    const place = number === undefined ? row : lineOfHead(number);
    const beside = Math.hypot(Math.max(-x, 0, x - width), Math.max(-y, 0, y - length));
    const at = `${x}, ${y}`;
    if (!(beside <= radius)) throw new InputError("heads", `be within a throw, ${radius} m, of the bed`, at, { place });
    if (taken.has(at)) throw new InputError("heads", "be at different places", at, { place });
    taken.add(at);
  });
}

/**
 * A bed that was read, checked and ready for a fit.
 *
 *     cans: those read, each at the place of its column and row        heads: as arranged or typed
 *
 * @param input Catches, places [m], sides [m], spacings [m], throw [m], arrangement, arcs and perhaps heads [m]
 * @returns The bed with its cans, their mean and its heads
 * @throws InputError if counts do not match, places do not ascend or are outside the bed, a length is not more than 0, a head
 * is further than a throw from the bed, or no can has water
 * @source own reasoning
 * @example readBed({ grid: [[1, null], [2, 3]], across: [1, 3], along: [1, 3], width: 4, length: 4, spacing: 4,
 *   rowSpacing: 4, radius: 4, arrangement: "border", arcs: "full" }).mean // 2
 */
export function readBed(input: BedInput): ReadBed {
  const { grid, across, along, width, length, spacing, rowSpacing, radius, arrangement, arcs } = input;
  positive("width", width, "m");
  positive("length", length, "m");
  positive("spacing", spacing, "m");
  positive("row_spacing", rowSpacing, "m");
  positive("radius", radius, "m");
  checkPlaces("across", across, width, grid[0]?.length ?? 0, "column");
  checkPlaces("along", along, length, grid.length, "row");
  const cans = cansRead(input);
  if (input.heads) checkHeads(input.heads, width, length, radius);
  else checkArcs({ arrangement, arcs });
  const heads = bedHeads({ width, length, spacing, rowSpacing, arrangement, arcs }, input.heads);
  const mean = cans.reduce((sum, { caught }) => sum + caught, 0) / cans.length;
  return { ...input, cans, mean, heads, typedHeads: input.heads !== undefined };
}

function cansRead({ grid, across, along }: BedInput): BedCan[] {
  try {
    canField(grid, across, along);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const { rule, value, place, missing } = error;
    throw new InputError("grid", rule, value, { missing, ...(place && { place }) });
  }
  return grid.flatMap((line, row) =>
    line.flatMap((caught, column) =>
      caught === null ? [] : [{ row, column, x: across[column]!, y: along[row]!, caught }],
    ),
  );
}
