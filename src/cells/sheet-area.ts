import { parseA1Ref } from "@borgar/fx/xlsx";
import { InputError } from "../core/errors";
import { LAST_COLUMN, LAST_ROW } from "./box";
import { columnLetters, columnNumber } from "./letters";

/** A rectangle of cells on a sheet; rows and columns from 1. */
export interface SheetArea {
  sheet: string;
  top: number;
  left: number;
  bottom: number;
  right: number;
}

const ADDRESS = /^([A-Z]{1,3})([1-9]\d{0,6})$/;

/** Row and column of an address such as `B7`. */
export function addressParts(address: string): { row: number; column: number } {
  const [, letters = "", digits = ""] = ADDRESS.exec(address) ?? [];
  const [row, column] = [Number(digits), columnNumber(letters)];
  if (!(row >= 1 && row <= LAST_ROW && column <= LAST_COLUMN)) {
    throw new InputError("the file", "hold cells with an address", address);
  }
  return { row, column };
}

function parsedArea(reference: string, sheet: string): SheetArea | null {
  const parsed = parseA1Ref(reference);
  if (!parsed || !("range" in parsed) || ("workbookName" in parsed && parsed.workbookName)) return null;
  const { top, left, bottom, right } = parsed.range;
  return {
    sheet: ("sheetName" in parsed && parsed.sheetName) || sheet,
    top: (top ?? 0) + 1,
    left: (left ?? 0) + 1,
    bottom: (bottom ?? LAST_ROW - 1) + 1,
    right: (right ?? LAST_COLUMN - 1) + 1,
  };
}

const KNOWN_MOST = 50_000;
const known = new Map<string, SheetArea | null>();

/** The rectangle that a reference names, on `sheet` where it names none; null where it is no such reference. */
export function areaOf(reference: string, sheet: string): Readonly<SheetArea> | null {
  const key = `${sheet.length} ${sheet}${reference}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  const area = parsedArea(reference, sheet);
  if (known.size >= KNOWN_MOST) known.clear();
  known.set(key, area);
  return area;
}

/** `Cans!B7`, with the sheet's name in quotes where it needs them. */
export function placeName(sheet: string, address: string): string {
  return `${/^[A-Za-z_]\w*$/.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`}!${address}`;
}

const corner = (row: number, column: number) => `$${columnLetters(column)}$${row}`;

/** The rectangle as a reference that does not move: `Cans!$B$7:$C$9`. */
export function absolute({ sheet, top, left, bottom, right }: SheetArea): string {
  const first = corner(top, left);
  const last = corner(bottom, right);
  return placeName(sheet, first === last ? first : `${first}:${last}`);
}
