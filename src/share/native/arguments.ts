import type { SheetArea } from "../../cells/sheet-area";
import {
  compared,
  isArea,
  isMatrix,
  type Matrix,
  matrixOf,
  NativeError,
  numberOf,
  type Scalar,
  textOf,
  Unsure,
  type Value,
} from "./value";

/** Where functions find the values of cells. */
export interface Cells {
  matrix(value: Value): Matrix;
  /** The first of several values, or the one. */
  first(value: Value): Scalar;
  /** The cells that a name is for. */
  named(name: string): SheetArea;
}

export type Native = (given: readonly Value[], cells: Cells) => Value;

type Single = (a: Scalar, b: Scalar, c: Scalar) => Scalar;

const isSingle = (value: Value) =>
  isArea(value) ? value.top === value.bottom && value.left === value.right : !isMatrix(value);

/** An error that is met is the answer. */
function safe(work: Single, a: Scalar, b: Scalar, c: Scalar): Scalar {
  try {
    return work(a, b, c);
  } catch (error) {
    if (error instanceof NativeError) return error;
    throw error;
  }
}

function pick(matrix: Matrix, i: number, j: number): Scalar {
  const line = matrix.length === 1 ? matrix[0] : matrix[i];
  return (line?.length === 1 ? line[0] : line?.[j]) ?? null;
}

/** Each single value by itself, or each of several. */
export function each(work: Single): Native {
  return (given, cells) => {
    const [a, b, c] = [given[0]!, given[1]!, given[2]!];
    if (isSingle(a) && isSingle(b) && isSingle(c)) return safe(work, cells.first(a), cells.first(b), cells.first(c));
    const all = given.map((value) => cells.matrix(value));
    const rows = Math.max(...all.map((matrix) => matrix.length));
    const columns = Math.max(...all.map((matrix) => matrix[0]!.length));
    return matrixOf(rows, columns, (i, j) => {
      const picked = all.map((matrix) => pick(matrix, i, j));
      return safe(work, picked[0]!, picked[1]!, picked[2]!);
    });
  };
}

/** All values of arguments, cells or not. */
export function flat(given: readonly Value[], cells: Cells): Scalar[] {
  const all: Scalar[] = [];
  for (const value of given) {
    if (isSingle(value)) all.push(cells.first(value));
    else for (const line of cells.matrix(value)) all.push(...line);
  }
  return all;
}

/** The numbers that a statistic counts: texts, logical values and blanks in cells do not count. */
export function numbers(given: readonly Value[], cells: Cells): number[] {
  const all: number[] = [];
  for (const value of given) {
    if (!isArea(value) && !isMatrix(value)) all.push(numberOf(value));
    else {
      for (const cell of flat([value], cells)) {
        if (cell instanceof NativeError) throw cell;
        if (typeof cell === "number") all.push(cell);
      }
    }
  }
  return all;
}

/** The products of the values in the same place of each argument; what is no number there is 0. */
export function products(given: readonly Value[], cells: Cells): number[] {
  if (given.length === 1) return numbers(given, cells);
  const [first, ...others] = given.map((value) => flat([value], cells));
  if (others.some((other) => other.length !== first!.length)) throw new NativeError("#VALUE!");
  const factor = (value: Scalar) => {
    if (value instanceof NativeError) throw value;
    return typeof value === "number" ? value : 0;
  };
  return first!.map((value, i) => others.reduce<number>((all, other) => all * factor(other[i]!), factor(value)));
}

export const nth = (sorted: number[], place: number): number => {
  const found = sorted[place - 1];
  if (found === undefined) throw new NativeError("#NUM!");
  return found;
};
export const ascending = (values: number[]) => [...values].sort((a, b) => a - b);
export const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);
export const over = (top: number, bottom: number) => {
  if (bottom === 0) throw new NativeError("#DIV/0!");
  return top / bottom;
};
export const mean = (values: readonly number[]) => over(sum(values), values.length);
export const statistic =
  (work: (values: number[]) => number): Native =>
  (given, cells) =>
    work(numbers(given, cells));
export const first = (value: Value | undefined, cells: Cells): Scalar => cells.first(value ?? null);
export const numberAt = (given: readonly Value[], index: number, cells: Cells) => numberOf(first(given[index], cells));

/** Moves the decimal point, by digits and not by a product, which would bring in binary ones. */
function shifted(value: number, places: number): number {
  const [digits, power] = value.toExponential().split("e");
  return Number(`${digits}e${Number(power) + places}`);
}

/** Rounds decimal digits, not binary ones: halves go away from 0, or all of the rest does. */
export function rounded(value: number, digits: number, way: "nearest" | "up" | "down"): number {
  const size = shifted(Number(Math.abs(value).toPrecision(15)), digits);
  const sure = Number(size.toPrecision(15));
  const whole = way === "up" ? Math.ceil(sure) : way === "down" ? Math.floor(sure) : Math.round(size);
  return Math.sign(value) * shifted(whole, -digits);
}

/** Rounded where every program rounds alike: a half that binary digits only come near goes up in one and down in another. */
export function surelyRounded(value: number, digits: number): number {
  const twice = 2 * shifted(Math.abs(value), digits);
  const nearest = Math.round(twice);
  const isHalf = nearest % 2 === 1;
  if (isHalf && twice !== nearest && Math.abs(twice - nearest) <= 1e-12 * nearest) throw new Unsure();
  return rounded(value, digits, "nearest");
}

/** Whether a value meets a criterion such as `>=0.5`. */
export function meets(criterion: Scalar): (value: Scalar) => boolean {
  const [, sign = "=", rest = ""] = /^(<=|>=|<>|<|>|=)?(.*)$/s.exec(textOf(criterion)) ?? [];
  const wanted = rest !== "" && Number.isFinite(Number(rest)) ? Number(rest) : rest;
  return (value) => {
    if (value instanceof NativeError || value === null) return false;
    if (typeof value !== typeof wanted) return sign === "<>";
    const order = compared(value, wanted);
    if (order === 0) return ["=", "<=", ">="].includes(sign);
    return sign === "<>" || (order < 0 ? sign.startsWith("<") : sign.startsWith(">"));
  };
}

/** Where a value stands: exactly, or the last that is not above it. */
export function place(wanted: Scalar, values: readonly Scalar[], exact: boolean): number {
  const found = exact
    ? values.findIndex(
        (value) =>
          value !== null &&
          !(value instanceof NativeError) &&
          typeof value === typeof wanted &&
          compared(value, wanted) === 0,
      )
    : values.reduce<number>(
        (last, value, i) => (typeof value === typeof wanted && compared(value, wanted) <= 0 ? i : last),
        -1,
      );
  if (found < 0) throw new NativeError("#N/A");
  return found;
}

export function index(given: readonly Value[], cells: Cells): Value {
  const of = given[0]!;
  const [row, column] = [numberAt(given, 1, cells), given.length > 2 ? numberAt(given, 2, cells) : 0];
  const { rows, columns } = sizeOf(of, cells);
  const [i, j] = given.length > 2 || rows > 1 ? [row || 1, column || 1] : [1, row];
  if (i < 1 || j < 1 || i > rows || j > columns) throw new NativeError("#REF!");
  if (!isArea(of)) return cells.matrix(of)[i - 1]![j - 1]!;
  return {
    sheet: of.sheet,
    top: of.top + i - 1,
    left: of.left + j - 1,
    bottom: of.top + i - 1,
    right: of.left + j - 1,
  };
}

function sizeOf(value: Value, cells: Cells): { rows: number; columns: number } {
  if (isArea(value)) return { rows: value.bottom - value.top + 1, columns: value.right - value.left + 1 };
  const matrix = cells.matrix(value);
  return { rows: matrix.length, columns: matrix[0]!.length };
}

export const counter = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);
export function area(value: Value | undefined): SheetArea {
  if (value === undefined || !isArea(value)) throw new Unsure();
  return value;
}
