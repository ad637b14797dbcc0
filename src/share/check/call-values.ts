import { isReference, type Token } from "@borgar/fx/xlsx";
import { areaOf, type SheetArea } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { cellsIn, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { unguarded } from "../copy/native-formula";

/** A number of a formula's argument; undefined where the argument is something else. */
export type Scalar = number | string | undefined;

function areaOfArgument(book: FileBook, argument: readonly Token[], sheet: string): SheetArea | null {
  const [token, ...rest] = unguarded(argument);
  if (!token || rest.length > 0 || !(isReference(token) || token.type === "unknown")) return null;
  return areaOf(token.value, sheet) ?? namedArea(book, token.value);
}

const scalarOf = (value: Stated): Scalar =>
  typeof value === "number" || typeof value === "string" ? value : undefined;

/** What a single argument stands for: a literal, or the value in one cell. */
export function scalar(book: FileBook, argument: readonly Token[] | undefined, sheet: string): Scalar {
  const [token, ...rest] = argument ?? [];
  if (!token || rest.length > 0) return undefined;
  if (token.type === "number") return Number(token.value);
  if (token.type === "string") return token.value.slice(1, -1);
  const area = areaOfArgument(book, argument!, sheet);
  return area
    ? scalarOf(cellsIn(book, { ...area, bottom: area.top, right: area.left })[0]?.cell.value ?? null)
    : undefined;
}

/** Readings with their shape. */
export interface CalledReadings {
  values: number[];
  rows: number;
  columns: number;
}

/** The readings in the range of an argument, x and blank cells skipped; null where one is something else. */
export function readings(book: FileBook, argument: readonly Token[] | undefined, sheet: string): CalledReadings | null {
  const area = areaOfArgument(book, argument ?? [], sheet);
  if (!area) return null;
  const values: number[] = [];
  for (const { cell } of cellsIn(book, area)) {
    if (typeof cell.value === "number") values.push(cell.value);
    else if (typeof cell.value !== "string" || !["", "x"].includes(cell.value.trim().toLowerCase())) return null;
  }
  return { values, rows: area.bottom - area.top + 1, columns: area.right - area.left + 1 };
}
