import type { Input } from "../../cells/cell";
import { zeroOrMore } from "../../core/checks";
import { InputError } from "../../core/errors";
import { numberOf } from "../parts/fields/typed-number";

/** What was pasted: a row of cans in each line, and their places where those were given. */
export interface Pasted {
  readings: Input[][];
  /** Places of the columns and of the rows [m]; null where the first cell does not say that they are there. */
  places: { across: Input[]; along: Input[] } | null;
}

/** In the first cell: the first line holds metres across the bed, and each line begins with its metres along it. */
const METRES = "m";

const placeOf = (row: number, column: number) => `row ${row + 1}, column ${column + 1}`;

/** What separates the cans of a row: a tab where there is one, else a semicolon, else spaces. */
function separatorOf(text: string): "\t" | ";" | " " {
  return text.includes("\t") ? "\t" : text.includes(";") ? ";" : " ";
}

function amount(name: string, text: string, unit: string, place: string): number {
  const value = numberOf(name, text, place);
  try {
    return zeroOrMore(name, value, unit);
  } catch (error) {
    throw error instanceof InputError ? error.at(place) : error;
  }
}

function readingOf(text: string, place: string): Input {
  if (text === "" || text.toLowerCase() === "x") return text.toLowerCase();
  return amount("readings", text, "mL", place);
}

/** The cells of each line, as many in one as in the other. */
function cellsOf(text: string): string[][] {
  const separator = separatorOf(text);
  const lines = text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== "");
  const rows = lines.map((line, row) => {
    const cells = separator === " " ? line.trim().split(/ +/) : line.split(separator).map((cell) => cell.trim());
    const comma = separator === " " ? cells.findIndex((cell) => cell.includes(",")) : -1;
    if (comma < 0) return cells;
    throw new InputError("readings", "be separated by tabs, semicolons or spaces, not by commas", cells[comma], {
      place: placeOf(row, comma),
    });
  });
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) => [...row, ...Array.from({ length: width - row.length }, () => "")]);
}

/**
 * Readings from elsewhere, a row of cans in each line: numbers, `x` for a can that was not read, nothing for no can.
 * Where the first cell is `m`, the first line and the first column are the cans' places in metres.
 *
 * @throws InputError if there are none, one is no reading, or a comma might part cans or be a decimal sign
 */
export function pastedReadings(text: string): Pasted {
  const cells = cellsOf(text);
  const placed = cells[0]?.[0]?.toLowerCase() === METRES;
  const from = placed ? 1 : 0;
  const readings = cells
    .slice(from)
    .map((line, row) => line.slice(from).map((cell, column) => readingOf(cell, placeOf(row + from, column + from))));
  if (!readings[0]?.length) throw new InputError("readings", "be pasted or typed here", "");
  if (!placed) return { readings, places: null };
  const metres = (cell: string, row: number, column: number) => amount("places", cell, "m", placeOf(row, column));
  return {
    readings,
    places: {
      across: cells[0]!.slice(1).map((cell, column) => metres(cell, 0, column + 1)),
      along: cells.slice(1).map(([cell], row) => metres(cell!, row + 1, 0)),
    },
  };
}
