import { columnLetters } from "../../../hosts/address";
import type { SheetArea } from "../area";
import {
  alike,
  compared,
  isArea,
  isMatrix,
  type Matrix,
  NativeError,
  numberOf,
  type Scalar,
  textOf,
  truthOf,
  Unsure,
  type Value,
} from "./value";

/** Where functions find the values of cells. */
export interface Cells {
  matrix(value: Value): Matrix;
  /** The first of several values, or the one. */
  first(value: Value): Scalar;
}

type Native = (given: readonly Value[], cells: Cells) => Value;

const isSingle = (value: Value) =>
  isArea(value) ? value.top === value.bottom && value.left === value.right : !isMatrix(value);

/** Each single value by itself, or each of several. */
export function each(work: (...values: Scalar[]) => Scalar): Native {
  const safe = (...values: Scalar[]): Scalar => {
    try {
      return work(...values);
    } catch (error) {
      if (error instanceof NativeError) return error;
      throw error;
    }
  };
  return (given, cells) => {
    if (given.every(isSingle)) return safe(...given.map((value) => cells.first(value)));
    const all = given.map((value) => cells.matrix(value));
    const rows = Math.max(...all.map((matrix) => matrix.length));
    const columns = Math.max(...all.map((matrix) => matrix[0]!.length));
    const pick = (matrix: Matrix, i: number, j: number) => {
      const line = matrix.length === 1 ? matrix[0] : matrix[i];
      return (line?.length === 1 ? line[0] : line?.[j]) ?? null;
    };
    return Array.from({ length: rows }, (_, i) =>
      Array.from({ length: columns }, (_, j) => safe(...all.map((matrix) => pick(matrix, i, j)))),
    );
  };
}

/** All values of arguments, cells or not. */
const flat = (given: readonly Value[], cells: Cells): Scalar[] => given.flatMap((value) => cells.matrix(value).flat());

/** The numbers that a statistic counts: texts, logical values and blanks in cells do not count. */
function numbers(given: readonly Value[], cells: Cells): number[] {
  return given.flatMap((value) => {
    if (!isArea(value) && !isMatrix(value)) return [numberOf(value)];
    return cells.matrix(value).flatMap((line) =>
      line.filter((cell): cell is number => {
        if (cell instanceof NativeError) throw cell;
        return typeof cell === "number";
      }),
    );
  });
}

const nth = (sorted: number[], place: number): number => {
  const found = sorted[place - 1];
  if (found === undefined) throw new NativeError("#NUM!");
  return found;
};
const ascending = (values: number[]) => [...values].sort((a, b) => a - b);
const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);
const over = (top: number, bottom: number) => {
  if (bottom === 0) throw new NativeError("#DIV/0!");
  return top / bottom;
};
const mean = (values: readonly number[]) => over(sum(values), values.length);
const statistic =
  (work: (values: number[]) => number): Native =>
  (given, cells) =>
    work(numbers(given, cells));
const first = (value: Value | undefined, cells: Cells): Scalar => cells.first(value ?? null);
const numberAt = (given: readonly Value[], index: number, cells: Cells) => numberOf(first(given[index], cells));

/** Rounds decimal digits, not binary ones: halves go away from 0, or all of the rest does. */
function rounded(value: number, digits: number, up: boolean): number {
  const size = Number(Math.abs(value).toPrecision(15));
  const shifted = Number(`${size}e${digits}`);
  const whole = up ? Math.ceil(Number(shifted.toPrecision(15))) : Math.round(shifted);
  return Math.sign(value) * Number(`${whole}e${-digits}`);
}

/** Whether a value meets a criterion such as `>=0.5`. */
function meets(criterion: Scalar): (value: Scalar) => boolean {
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
function place(wanted: Scalar, values: readonly Scalar[], exact: boolean): number {
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

function index(given: readonly Value[], cells: Cells): Value {
  const of = given[0]!;
  const [row, column] = [numberAt(given, 1, cells), given.length > 2 ? numberAt(given, 2, cells) : 0];
  const { rows, columns } = sizeOf(of, cells);
  const [i, j] = given.length > 2 || rows > 1 ? [row || 1, column || 1] : [1, row];
  if (i < 1 || j < 1 || i > rows || j > columns) throw new NativeError("#REF!");
  if (!isArea(of)) return cells.matrix(of)[i - 1]![j - 1]!;
  return {
    sheet: of.sheet,
    top: of.top + i - 1,
    bottom: of.top + i - 1,
    left: of.left + j - 1,
    right: of.left + j - 1,
  };
}

function sizeOf(value: Value, cells: Cells): { rows: number; columns: number } {
  if (isArea(value)) return { rows: value.bottom - value.top + 1, columns: value.right - value.left + 1 };
  const matrix = cells.matrix(value);
  return { rows: matrix.length, columns: matrix[0]!.length };
}

const counter = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);
function area(value: Value | undefined): SheetArea {
  if (value === undefined || !isArea(value)) throw new Unsure();
  return value;
}

/** The functions that the audit's formulas use, IF apart. */
export const NATIVE: Readonly<Record<string, Native>> = {
  ABS: each((x) => Math.abs(numberOf(x!))),
  ADDRESS: (given, cells) => `${columnLetters(numberAt(given, 1, cells))}${numberAt(given, 0, cells)}`,
  AND: (given, cells) => flat(given, cells).every(truthOf),
  AVEDEV: statistic((values) => mean(values.map((value) => Math.abs(value - mean(values))))),
  AVERAGE: statistic(mean),
  CHOOSE: (given, cells) => given[numberAt(given, 0, cells)] ?? new NativeError("#VALUE!"),
  COLUMN: ([of]) => [counter(area(of).left, area(of).right)],
  COUNT: (given, cells) =>
    sum(given.map((value) => flat([value], cells).filter((cell) => typeof cell === "number").length)),
  COUNTA: (given, cells) => flat(given, cells).filter((cell) => cell !== null).length,
  COUNTIF: ([of, criterion], cells) => flat([of!], cells).filter(meets(first(criterion, cells))).length,
  INDEX: index,
  INT: each((x) => Math.floor(numberOf(x!))),
  ISERROR: each((x) => x instanceof NativeError),
  ISLOGICAL: each((x) => typeof x === "boolean"),
  ISNUMBER: each((x) => typeof x === "number"),
  ISTEXT: each((x) => typeof x === "string"),
  LARGE: ([of, at], cells) => {
    const sorted = ascending(numbers([of!], cells)).reverse();
    return each((k) => nth(sorted, numberOf(k!)))([at!], cells);
  },
  LEFT: each((text, count = 1) => textOf(text!).slice(0, numberOf(count))),
  LEN: each((text) => textOf(text!).length),
  LOOKUP: ([wanted, among, results], cells) =>
    flat([results!], cells)[place(first(wanted, cells), flat([among!], cells), false)] ?? null,
  MATCH: (given, cells) =>
    place(first(given[0], cells), flat([given[1]!], cells), given.length > 2 && numberAt(given, 2, cells) === 0) + 1,
  MAX: statistic((values) => (values.length === 0 ? 0 : values.reduce((high, value) => Math.max(high, value)))),
  MEDIAN: statistic((values) => {
    const sorted = ascending(values);
    return (nth(sorted, Math.ceil(values.length / 2)) + nth(sorted, Math.floor(values.length / 2) + 1)) / 2;
  }),
  MID: each((text, from, count) => textOf(text!).substr(numberOf(from!) - 1, numberOf(count!))),
  MIN: statistic((values) => (values.length === 0 ? 0 : values.reduce((low, value) => Math.min(low, value)))),
  MOD: each((x, y) => {
    const [a, b] = [numberOf(x!), numberOf(y!)];
    return a - b * Math.floor(over(a, b));
  }),
  N: ([of], cells) => {
    const value = first(of, cells);
    if (value instanceof NativeError) throw value;
    return typeof value === "string" ? 0 : Number(value);
  },
  NOT: each((x) => !truthOf(x!)),
  OR: (given, cells) => flat(given, cells).some(truthOf),
  PI: () => Math.PI,
  RIGHT: each((text, count = 1) => (numberOf(count) === 0 ? "" : textOf(text!).slice(-numberOf(count)))),
  ROUND: each((x, digits) => rounded(numberOf(x!), numberOf(digits!), false)),
  ROUNDUP: each((x, digits) => rounded(numberOf(x!), numberOf(digits!), true)),
  ROW: ([of]) => counter(area(of).top, area(of).bottom).map((row) => [row]),
  SEARCH: each((wanted, text, from = 1) => {
    const at = textOf(text!)
      .toUpperCase()
      .indexOf(textOf(wanted!).toUpperCase(), numberOf(from) - 1);
    if (at < 0) throw new NativeError("#VALUE!");
    return at + 1;
  }),
  SMALL: ([of, at], cells) => {
    const sorted = ascending(numbers([of!], cells));
    return each((k) => nth(sorted, numberOf(k!)))([at!], cells);
  },
  SQRT: each((x) => Math.sqrt(numberOf(x!))),
  STDEV: statistic((values) =>
    Math.sqrt(over(sum(values.map((value) => (value - mean(values)) ** 2)), values.length - 1)),
  ),
  SUBSTITUTE: each((text, old, put) => textOf(text!).replaceAll(textOf(old!), textOf(put!))),
  SUM: statistic(sum),
  SUMIF: ([of, criterion, added], cells) => {
    const [looked, summed] = [flat([of!], cells), flat([added ?? of!], cells)];
    return each((wanted) => {
      const met = meets(wanted!);
      return summed.reduce<number>(
        (all, value, i) => (typeof value === "number" && met(looked[i] ?? null) ? all + value : all),
        0,
      );
    })([criterion!], cells);
  },
  SUMPRODUCT: statistic(sum),
  TRIM: each((text) => textOf(text!).trim().replace(/ +/g, " ")),
  UPPER: each((text) => textOf(text!).toUpperCase()),
  VALUE: each((text) => numberOf(text!)),
};

const arithmetic = (work: (a: number, b: number) => number) => each((x, y) => work(numberOf(x!), numberOf(y!)));
const order = (holds: (order: number) => boolean) => each((x, y) => holds(compared(x!, y!)));

/** The signs between two values. */
export const SIGNS: Readonly<Record<string, Native>> = {
  "+": arithmetic((a, b) => (alike(a, -b) ? 0 : a + b)),
  "-": arithmetic((a, b) => (alike(a, b) ? 0 : a - b)),
  "*": arithmetic((a, b) => a * b),
  "/": arithmetic(over),
  "^": arithmetic((a, b) => a ** b),
  "&": each((x, y) => textOf(x!) + textOf(y!)),
  "=": order((sign) => sign === 0),
  "<>": order((sign) => sign !== 0),
  "<": order((sign) => sign < 0),
  ">": order((sign) => sign > 0),
  "<=": order((sign) => sign <= 0),
  ">=": order((sign) => sign >= 0),
};
