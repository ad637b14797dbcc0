import { ErrorValue, InputError } from "../core/errors";
import type { Grid } from "../core/grid";
import { reading } from "../core/readings";

/** A range of catches: its cells as Excel passed them, and the counted readings in reading order. */
export interface Readings {
  parameter: string;
  rows: unknown[][];
  values: Float64Array;
}

/** Catches that need no second look; core says about the rest whether they are in range. */
const ORDINARY_LEAST = 1e-9;
const ORDINARY_MOST = 1e9;

const UNWRAPPED = new Set<unknown>(["FormattedNumber", "Double", "String", "Boolean"]);

/** The bare value of a cell: null for an empty one, simple data types unwrapped, an error by its name. */
export function plain(cell: unknown): unknown {
  if (cell === undefined || cell === "") return null;
  if (typeof cell !== "object" || cell === null || Array.isArray(cell)) return cell;
  if (cell instanceof CustomFunctions.Error) return new ErrorValue(cell.code);
  const { type, basicValue } = cell as { type?: unknown; basicValue?: unknown };
  if (type === "Error") return new ErrorValue(String(basicValue));
  if (type === "Empty") return null;
  return UNWRAPPED.has(type) ? plain(basicValue) : cell;
}

export function isSkipped(value: unknown): boolean {
  return value === null || (typeof value === "string" && value.trim().toLowerCase() === "x");
}

export function placeOf(row: number, column: number): string {
  return `row ${row + 1}, column ${column + 1}`;
}

/** Runs work on readings that the caller knows by another name and place. */
function about<T>(parameter: string, work: () => T, locate = (place: string) => place): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof InputError) || error.parameter !== "readings") throw error;
    const { rule, value, place, missing } = error;
    throw new InputError(parameter, rule, value, { missing, ...(place && { place: locate(place) }) });
  }
}

/** The rows of a range; a single value counts as one cell. */
export function cellsOf(parameter: string, range: unknown): unknown[][] {
  const rows = Array.isArray(range) ? range : [[range]];
  const width = rows[0]?.length;
  if (!(width > 0)) throw new InputError(parameter, "be a rectangular range of at least one cell", range);
  for (let row = 0; row < rows.length; row++) {
    if (!Array.isArray(rows[row])) {
      throw new InputError(parameter, "be a rectangular range", rows[row], { place: `row ${row + 1}` });
    }
    if (rows[row].length !== width) {
      const rule = `be a rectangular range with ${width} cells in each row`;
      throw new InputError(parameter, rule, rows[row].length, { place: `row ${row + 1}` });
    }
  }
  return rows;
}

/** What a cell says that is no plain catch: undefined where the can was not read. */
function unusual(parameter: string, cell: unknown, r: number, c: number): number | undefined {
  const value = plain(cell);
  if (isSkipped(value)) return undefined;
  const place = placeOf(r, c);
  if (typeof value !== "number" || !Number.isFinite(value)) {
    throw new InputError(parameter, "be numbers", value, { place });
  }
  return about(parameter, () => reading(value, place));
}

/** Reads a range of catches in one pass. */
export function readings(parameter: string, range: unknown): Readings {
  const rows = cellsOf(parameter, range);
  const width = rows[0]!.length;
  const values = new Float64Array(rows.length * width);
  let count = 0;
  for (let r = 0; r < rows.length; r++) {
    const row = rows[r]!;
    for (let c = 0; c < width; c++) {
      const cell = row[c];
      if (typeof cell === "number" && cell >= ORDINARY_LEAST && cell <= ORDINARY_MOST) {
        values[count++] = cell;
      } else if (cell === 0) {
        count++;
      } else {
        const found = unusual(parameter, cell, r, c);
        if (found !== undefined) values[count++] = found;
      }
    }
  }
  return { parameter, rows, values: values.subarray(0, count) };
}

/** The cell of the nth counted reading, found again only when an error has to name it. */
export function placeOfReading(rows: unknown[][], nth: number): string {
  let count = 0;
  for (let r = 0; r < rows.length; r++) {
    for (let c = 0; c < rows[r]!.length; c++) {
      if (!isSkipped(plain(rows[r]![c])) && ++count === nth) return placeOf(r, c);
    }
  }
  throw new Error(`no reading ${nth}`);
}

/** Works on the counted readings; an error about the nth of them names its cell. */
export function over<T>({ parameter, rows, values }: Readings, work: (values: Float64Array) => T): T {
  return about(
    parameter,
    () => work(values),
    (place) => placeOfReading(rows, Number(/^reading (\d+)$/.exec(place)![1])),
  );
}

/** A number for each reading in the shape of its range, "" for a can that was not read. */
export function spread({ rows, values }: Readings, of: (reading: number) => number): (number | string)[][] {
  let count = 0;
  return rows.map((row) => row.map((cell) => (isSkipped(plain(cell)) ? "" : of(values[count++]!))));
}

/** Readings laid out as in the bed: every cell must hold one. */
export function full({ parameter, rows, values }: Readings): Grid {
  rows.forEach((row, r) => {
    const gap = row.findIndex((cell) => isSkipped(plain(cell)));
    if (gap >= 0) {
      throw new InputError(parameter, "hold a reading in every cell", plain(row[gap]), { place: placeOf(r, gap) });
    }
  });
  return { rows: rows.length, columns: rows[0]!.length, values };
}
