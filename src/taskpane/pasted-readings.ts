import { zeroOrMore } from "../core/checks";
import { InputError } from "../core/errors";
import type { Input } from "../hosts/host";

const NUMBER = /^\d+([.,]\d+)?$|^[.,]\d+$/;

const placeOf = (row: number, column: number) => `row ${row + 1}, column ${column + 1}`;

/** What separates the cans of a row: a tab where there is one, else a semicolon, else spaces. */
function separatorOf(text: string): "\t" | ";" | " " {
  return text.includes("\t") ? "\t" : text.includes(";") ? ";" : " ";
}

function readingOf(text: string, place: string): Input {
  if (text === "" || text.toLowerCase() === "x") return text.toLowerCase();
  if (!NUMBER.test(text))
    throw new InputError("readings", "be numbers, or x for a can that was not read", text, { place });
  try {
    return zeroOrMore("readings", Number(text.replace(",", ".")), "mL");
  } catch (error) {
    throw error instanceof InputError ? error.at(place) : error;
  }
}

/**
 * Readings from elsewhere, a row of cans in each line: numbers, `x` for a can that was not read, nothing for no can.
 *
 * @throws InputError if there are none, one is no reading, or a comma might part cans or be a decimal sign
 */
export function pastedReadings(text: string): Input[][] {
  const lines = text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== "");
  if (lines.length === 0) throw new InputError("readings", "be pasted or typed here", "");
  const separator = separatorOf(text);
  const rows = lines.map((line, row) => {
    const cells = separator === " " ? line.trim().split(/ +/) : line.split(separator).map((cell) => cell.trim());
    return cells.map((cell, column) => {
      const place = placeOf(row, column);
      if (separator === " " && cell.includes(",")) {
        throw new InputError("readings", "be separated by tabs, semicolons or spaces, not by commas", cell, { place });
      }
      return readingOf(cell, place);
    });
  });
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) => [...row, ...Array.from({ length: width - row.length }, () => "")]);
}
