import type { BedPlace } from "../core/bed/bed-heads";
import { type BedInput, type ReadBed, readBed } from "../core/bed/read-bed";
import { positive } from "../core/checks";
import { InputError } from "../core/errors";
import { type Arcs, parseArcs, parseArrangement } from "../core/layout/heads";
import { optional, word } from "./arguments";
import { cellsOf, isSkipped, placeOf, plain, readings } from "./cells";
import { placesIn } from "./places";

/** The arguments that BED.CAUSES and BED.INTERVAL share, as Excel passed them. */
export interface BedArguments {
  grid: unknown;
  across: unknown;
  along: unknown;
  width: unknown;
  length: unknown;
  spacing: unknown;
  radius: unknown;
  arrangement: unknown;
  arcs: unknown;
  row_spacing: unknown;
  heads: unknown;
}

function metres(parameter: string, value: unknown): number {
  return positive(parameter, plain(value), "m");
}

function catchesIn(range: unknown): (number | null)[][] {
  const { rows, values } = readings("grid", range);
  let count = 0;
  return rows.map((row) => row.map((cell) => (isSkipped(plain(cell)) ? null : values[count++]!)));
}

/** Places of heads in two columns, with the row that each is in; lines without either place are left out. */
function headsIn(range: unknown): { places: BedPlace[]; rows: number[] } {
  if (!Array.isArray(range) && plain(range) === null) return { places: [], rows: [] };
  const cells = cellsOf("heads", range);
  if (cells[0]!.length !== 2) throw new InputError("heads", "have 2 columns, across and along", cells[0]!.length);
  const rows = cells.flatMap((line, row) => (line.every((cell) => isSkipped(plain(cell))) ? [] : [row]));
  const number = (row: number, column: number) => {
    const value = plain(cells[row]![column]);
    if (typeof value === "number" && Number.isFinite(value)) return value;
    throw new InputError("heads", "be numbers", value, { place: placeOf(row, column) });
  };
  return { places: rows.map((row) => ({ x: number(row, 0), y: number(row, 1) })), rows };
}

/** The bed that the arguments describe; an error about a place in a range names its cell. */
export function bedOf(given: BedArguments): ReadBed {
  const [width, length] = [metres("width", given.width), metres("length", given.length)];
  const { places, rows } = headsIn(given.heads);
  const spacing = metres("spacing", given.spacing);
  const input: BedInput = {
    grid: catchesIn(given.grid),
    across: placesIn("across", given.across, width),
    along: placesIn("along", given.along, length),
    width,
    length,
    spacing,
    rowSpacing: optional(given.row_spacing, spacing, (value) => metres("row_spacing", value)),
    radius: metres("radius", given.radius),
    arrangement: parseArrangement(word(plain(given.arrangement))),
    arcs: optional<Arcs>(given.arcs, "full", (value) => parseArcs(word(value))),
    ...(places.length > 0 && { heads: places }),
  };
  try {
    return readBed(input);
  } catch (error) {
    const line = error instanceof InputError && error.parameter === "heads" && /^row (\d+)$/.exec(error.place ?? "");
    throw line ? (error as InputError).at(`row ${rows[Number(line[1]) - 1]! + 1}`) : error;
  }
}
