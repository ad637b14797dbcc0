import type { ArrayValueObject, BaseReferenceObject, BaseValueObject } from "@univerjs/preset-sheets-core";

/** A part of a parsed formula, as the grid calculates it. */
export interface Node {
  nodeType: number;
  getToken(): string;
  getChildren(): Node[];
  getValue(): BaseValueObject | BaseReferenceObject | null | undefined;
  setValue(value: ReturnType<Node["getValue"]>): void;
  execute(): void;
  isEmptyParamFunction?(): boolean;
  isAsync?(): boolean;
  executeAsync?(): Promise<unknown>;
  setRefOffset?(right: number, down: number): void;
}

const MOST_CELLS = 2_000_000;
const MOST_LETTERS = 32_767;
const OPERATOR = 3;
export const FUNCTION = 4;

type Size = [rows: number, columns: number];

function sizeOf(value: ReturnType<Node["getValue"]>): Size {
  if (!value) return [1, 1];
  if (value.isReferenceObject()) {
    const { startRow, endRow, startColumn, endColumn } = (value as BaseReferenceObject).getRangePosition();
    return [endRow - startRow + 1, endColumn - startColumn + 1];
  }
  if (!(value as BaseValueObject).isArray()) return [1, 1];
  const array = value as BaseValueObject & { getRowCount(): number; getColumnCount(): number };
  return [array.getRowCount(), array.getColumnCount()];
}

function numberOf(node: Node | undefined, missing = 1): number {
  const value = node?.getValue();
  if (!value || value.isReferenceObject()) return missing;
  const number = Number((value as BaseValueObject).getValue());
  return Number.isFinite(number) ? number : missing;
}

/** The cells that functions answer with whose arguments say how many. */
const ASKED: Record<string, (of: Node[]) => number> = {
  SEQUENCE: ([rows, columns]) => numberOf(rows) * numberOf(columns),
  RANDARRAY: ([rows, columns]) => numberOf(rows) * numberOf(columns),
  MAKEARRAY: ([rows, columns]) => numberOf(rows) * numberOf(columns),
  EXPAND: ([, rows, columns]) => numberOf(rows) * numberOf(columns),
  MUNIT: ([rows]) => numberOf(rows) ** 2,
};

/** Functions that compare each cell of an argument with each cell of another, or each with all others. */
const COMPARING =
  /^(COUNTIFS?|SUMIFS?|AVERAGEIFS?|MAXIFS|MINIFS|X?MATCH|[XVH]?LOOKUP|FREQUENCY|RANK.*|PERCENTRANK.*|MODE.*|UNIQUE|SORTBY)$/;
const MOST_COMPARED = 5_000_000;
/** Functions of matrices, whose work grows with the third power of their size. */
const MATRICES = new Set(["MMULT", "MINVERSE", "MDETERM"]);
const MOST_PRODUCTS = 100_000_000;

/** Functions that count up to one of their numbers. */
const LOOPING = /^(BINOM.*|CRITBINOM|NEGBINOM.*|POISSON.*|HYPGEOM.*|BESSEL[IJKY]|WORKDAY.*|CUMIPMT|CUMPRINC|VDB)$/;
const MOST_LOOPS = 10_000_000;

/** Functions that count cells, those past the last row and column that the grid has too. */
const COUNTING = new Set(["ROWS", "COLUMNS", "COUNTBLANK"]);

function isPastSheet(value: ReturnType<Node["getValue"]>): boolean {
  if (!value?.isReferenceObject()) return false;
  const range = value as BaseReferenceObject;
  const { endRow, endColumn } = range.getRangeData();
  return endRow >= range.getActiveSheetRowCount() || endColumn >= range.getActiveSheetColumnCount();
}

const told = new Map<string, boolean>();

/** Whether single values can ask such a function for much. */
function needsNumbers(name: string): boolean {
  const known = told.get(name) ?? (name in ASKED || LOOPING.test(name) || COUNTING.has(name) || name === "REPT");
  told.set(name, known);
  return known;
}

const isOne = (value: ReturnType<Node["getValue"]>): boolean =>
  !value ||
  (value.isReferenceObject() ? (value as BaseReferenceObject).isCell() : !(value as BaseValueObject).isArray());

const long = (count: number) => Math.round(count).toLocaleString("en");

/** What is said of a part of a formula that would need too many cells or letters; "" where it doesn't. */
export function refusedSize(node: Node): string {
  if (node.nodeType !== OPERATOR && node.nodeType !== FUNCTION) return "";
  const given = node.getChildren();
  const name = node.getToken().toUpperCase();
  if (!needsNumbers(name) && given.every((one) => isOne(one.getValue()))) return "";
  if (COUNTING.has(name) && given.some((one) => isPastSheet(one.getValue())))
    return `${name} can count cells only as far as the sheet goes here`;
  const sizes = given.map((one) => sizeOf(one.getValue()));
  const together = Math.max(1, ...sizes.map(([rows]) => rows)) * Math.max(1, ...sizes.map(([, columns]) => columns));
  const cells = Math.max(together, ASKED[name]?.(given) ?? 0);
  if (cells > MOST_CELLS)
    return `the formula asks for ${long(cells)} cells, at most ${long(MOST_CELLS)} are calculated`;
  const counts = sizes.map(([rows, columns]) => rows * columns).sort((a, b) => b - a);
  if (COMPARING.test(name) && (counts[0] ?? 1) * (counts[1] ?? 1) > MOST_COMPARED)
    return `${name} would compare ${long(counts[0]! * counts[1]!)} pairs of cells, at most ${long(MOST_COMPARED)} are compared`;
  const [[rows = 0, inner = 0] = [], [, columns = rows] = []] = sizes;
  if (MATRICES.has(name) && rows * inner * columns > MOST_PRODUCTS)
    return `${name} would take ${long(rows * inner * columns)} products, at most ${long(MOST_PRODUCTS)} are calculated`;
  const loops = LOOPING.test(name) ? Math.max(...given.map((one) => Math.abs(numberOf(one, 0)))) : 0;
  if (loops > MOST_LOOPS) return `${name} would count to ${long(loops)}, at most to ${long(MOST_LOOPS)} is counted`;
  if (name !== "REPT") return "";
  const letters = numberOf(given[1], 0);
  return letters > MOST_LETTERS
    ? `REPT asks for ${long(letters)} repeats, a cell holds at most ${long(MOST_LETTERS)} letters`
    : "";
}

/** Cells of an answer whose texts are measured. */
const MOST_MEASURED = 1000;

/** What is said of a part that gives a text longer than a cell holds; "" where it doesn't. */
export function refusedText(node: Node): string {
  const value = node.getValue();
  if (!value || value.isReferenceObject()) return "";
  if (!(value as BaseValueObject).isArray() && !(value as BaseValueObject).isString()) return "";
  const [rows, columns] = sizeOf(value);
  if (rows * columns > MOST_MEASURED) return "";
  const held = (value as BaseValueObject).isArray() ? (value as ArrayValueObject).getArrayValue().flat() : [value];
  const letters = Math.max(0, ...held.map((one) => (one as BaseValueObject | null)?.getValue?.()).map(lettersOf));
  return letters > MOST_LETTERS
    ? `the formula makes a text of ${long(letters)} letters, a cell holds at most ${long(MOST_LETTERS)}`
    : "";
}

const lettersOf = (value: unknown): number => (typeof value === "string" ? value.length : 0);
