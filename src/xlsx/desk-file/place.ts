import { columnNumber, plainAddress } from "../../cells/letters";
import type { Place } from "./book";

const CORNER = /^([A-Z]+)(\d+)$/i;

function corner(address: string): { row: number; column: number } {
  const parts = CORNER.exec(address);
  if (!parts) throw new Error(`an address must be like A1 or A1:B2, got "${address}"`);
  return { row: Number(parts[2]) - 1, column: columnNumber(parts[1]!) - 1 };
}

/** The rectangle behind an address such as `A1` or `$A$1:$B$2`. */
export function placeOf(address: string): Place {
  const [first, last] = plainAddress(address).split(":");
  const start = corner(first!);
  const end = corner(last ?? first!);
  return { startRow: start.row, endRow: end.row, startColumn: start.column, endColumn: end.column };
}
