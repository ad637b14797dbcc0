import type { SheetArea } from "../../cells/sheet-area";

/** What a formula shows in place of a value. */
export class NativeError extends Error {}

/** Thrown where what spreadsheet programs would answer is not certain: nothing is said of such a cell. */
export class Unsure extends Error {}

/** What one cell may hold; null where it is blank. */
export type Scalar = number | string | boolean | null | NativeError;
export type Matrix = readonly (readonly Scalar[])[];
/** What a part of a formula may give: a value, several, or cells. */
export type Value = Scalar | Matrix | SheetArea;

export const isArea = (value: Value): value is SheetArea =>
  typeof value === "object" && value !== null && "sheet" in value;
export const isMatrix = (value: Value): value is Matrix => Array.isArray(value);

/** A value for each of so many rows and columns; places from 0. */
export function matrixOf(rows: number, columns: number, at: (row: number, column: number) => Scalar): Matrix {
  const matrix: Scalar[][] = [];
  for (let row = 0; row < rows; row += 1) {
    const line: Scalar[] = [];
    for (let column = 0; column < columns; column += 1) line.push(at(row, column));
    matrix.push(line);
  }
  return matrix;
}

const VALUE = () => new NativeError("#VALUE!");
/** So many of the last bits of two numbers may differ before a spreadsheet program calls them different. */
const ALIKE = 2 ** -48;
const DIGITS = 15;

export const alike = (a: number, b: number) => a === b || Math.abs(a - b) < ALIKE * Math.abs(a);

export function numberOf(value: Scalar): number {
  if (value instanceof NativeError) throw value;
  if (value === null) return 0;
  if (typeof value !== "string") return Number(value);
  const text = value.trim();
  if (/^[-+]?\d+(\.\d+)?$/.test(text)) return Number(text);
  // dates, percentages and decimal commas are read by the settings of the machine
  if (/\d/.test(text)) throw new Unsure();
  throw VALUE();
}

export function textOf(value: Scalar): string {
  if (value instanceof NativeError) throw value;
  if (typeof value === "number") return String(Number(value.toPrecision(DIGITS)));
  return typeof value === "boolean" ? String(value).toUpperCase() : (value ?? "");
}

export function truthOf(value: Scalar): boolean {
  if (typeof value === "string") throw VALUE();
  return numberOf(value) !== 0;
}

const rank = (value: Scalar) => ["number", "string", "boolean"].indexOf(typeof value);
const likeBlank = (other: Scalar): Scalar => (typeof other === "string" ? "" : typeof other === "boolean" ? false : 0);

/** Below, equal or above 0, in the order of spreadsheets: numbers, texts without regard to capitals, logical values. */
export function compared(one: Scalar, other: Scalar): number {
  const [a, b] = [one ?? likeBlank(other), other ?? likeBlank(one)];
  if (typeof a === "number" && typeof b === "number") return alike(a, b) ? 0 : a - b;
  for (const value of [a, b]) if (value instanceof NativeError) throw value;
  if (rank(a) !== rank(b)) return rank(a) - rank(b);
  const [p, q] = [textOf(a).toUpperCase(), textOf(b).toUpperCase()];
  return p < q ? -1 : p > q ? 1 : 0;
}
