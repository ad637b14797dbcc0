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

/** What a single argument is for: a literal, or the value in one cell. */
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

/** Readings with their shape, and the area of each where the call gives areas. */
export interface CalledReadings {
  values: number[];
  rows: number;
  columns: number;
  areas?: number[] | undefined;
}

const isSkipped = (value: Stated) => typeof value === "string" && ["", "x"].includes(value.trim().toLowerCase());

/** The readings in the range of an argument, x and blank cells skipped; null where one is something else. */
export function readings(
  book: FileBook,
  argument: readonly Token[] | undefined,
  areas: readonly Token[] | undefined,
  sheet: string,
): CalledReadings | null {
  const area = areaOfArgument(book, argument ?? [], sheet);
  if (!area) return null;
  const counted = cellsIn(book, area).filter(({ cell }) => !isSkipped(cell.value));
  const values = counted.map(({ cell }) => cell.value);
  if (!values.every((value) => typeof value === "number")) return null;
  const shape = { rows: area.bottom - area.top + 1, columns: area.right - area.left + 1 };
  if (!areas || areas.length === 0) return { values, ...shape };
  const given = areaOfArgument(book, areas, sheet);
  if (given?.bottom !== (given?.top ?? 0) + shape.rows - 1) return null;
  if (given.right !== given.left + shape.columns - 1) return null;
  const each = new Map(cellsIn(book, given).map(({ row, column, cell }) => [`${row} ${column}`, cell.value]));
  const own = counted.map(({ row, column }) => each.get(`${row} ${column}`));
  return own.every((value) => typeof value === "number") ? { values, ...shape, areas: own } : null;
}
