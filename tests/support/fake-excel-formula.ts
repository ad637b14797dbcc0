/** An error value of the fake Excel. */
export class Fault {
  constructor(
    readonly error: string,
    readonly message?: string,
  ) {}
}

export type Value = number | string | boolean | null | Fault;
export type Matrix = Value[][];

/** What a formula can ask of its workbook; `call` throws PENDING while a custom function runs. */
export interface Surroundings {
  range(sheet: string | undefined, address: string): Matrix;
  named(name: string): Matrix;
  call(id: string, parameters: Matrix[]): Matrix;
}

export const PENDING = Symbol("pending");

const TOKEN =
  /\s*(?:(?<number>\d+(?:\.\d+)?(?:E[-+]?\d+)?)|(?<text>"(?:[^"]|"")*")|(?<range>(?:(?:'(?:[^']|'')+'|\w+)!)?[A-Z]+\d+(?::[A-Z]+\d+)?)(?![\w.(])|(?<name>[A-Z_][\w.]*)(?=\()|(?<defined>[A-Z_]\w*)|(?<operator><=|>=|<>|[-+*/&=<>(),]))/iy;

type Kind = "number" | "text" | "range" | "name" | "defined" | "operator";

function tokens(formula: string): [Kind, string][] {
  const found: [Kind, string][] = [];
  TOKEN.lastIndex = 1;
  while (TOKEN.lastIndex < formula.length) {
    const at = TOKEN.lastIndex;
    const groups = TOKEN.exec(formula)?.groups;
    if (!groups) throw new Error(`the fake Excel cannot read "${formula.slice(at)}"`);
    found.push(Object.entries(groups).find(([, part]) => part !== undefined) as [Kind, string]);
  }
  return found;
}

const width = (matrix: Matrix): number => matrix[0]!.length;

/** Applies `work` cell by cell; single cells and single rows or columns are repeated. */
function spreadOver(matrices: Matrix[], work: (...values: Value[]) => Value): Matrix {
  const rows = Math.max(...matrices.map((matrix) => matrix.length));
  const columns = Math.max(...matrices.map(width));
  const cell = (matrix: Matrix, r: number, c: number) =>
    matrix[matrix.length === 1 ? 0 : r]![width(matrix) === 1 ? 0 : c]!;
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (_, c) => work(...matrices.map((matrix) => cell(matrix, r, c)))),
  );
}

function equal(a: Value, b: Value): boolean {
  const blank = (value: Value, other: Value) => value ?? (typeof other === "string" ? "" : 0);
  return blank(a, b) === blank(b, a);
}

const OPERATORS: Record<string, (a: Value, b: Value) => Value> = {
  "=": equal,
  "<>": (a, b) => !equal(a, b),
  "&": (a, b) => `${a ?? ""}${b ?? ""}`,
  "+": (a, b) => Number(a) + Number(b),
  "-": (a, b) => Number(a) - Number(b),
  "*": (a, b) => Number(a) * Number(b),
  "/": (a, b) => (Number(b) === 0 ? new Fault("#DIV/0!") : Number(a) / Number(b)),
};
const LEVELS = [["=", "<>"], ["&"], ["+", "-"], ["*", "/"]];

function operate(operator: string, a: Value, b: Value): Value {
  if (a instanceof Fault) return a;
  if (b instanceof Fault) return b;
  return OPERATORS[operator]!(a, b);
}

function native(name: string, parameters: Matrix[]): Matrix {
  if (name === "IF") {
    return spreadOver(parameters, (test, yes, no) => (test instanceof Fault ? test : test ? yes! : no!));
  }
  if (name === "NA") return [[new Fault("#N/A")]];
  if (name === "SUM") {
    const numbers = parameters.flat(2).filter((value) => typeof value === "number");
    return [[numbers.reduce((sum, value) => sum + value, 0)]];
  }
  return [[new Fault("#NAME?")]];
}

/** The values of a formula: enough of Excel's language for the tests. */
export function evaluate(formula: string, surroundings: Surroundings): Matrix {
  const rest = tokens(formula);
  const is = (operator: string) => rest[0]?.[0] === "operator" && rest[0][1] === operator;

  function level(n: number): Matrix {
    if (n === LEVELS.length) return part();
    let left = level(n + 1);
    while (LEVELS[n]!.some(is)) {
      const operator = rest.shift()![1];
      left = spreadOver([left, level(n + 1)], (a, b) => operate(operator, a!, b!));
    }
    return left;
  }

  function parameters(): Matrix[] {
    const list: Matrix[] = [];
    for (rest.shift(); !is(")"); ) {
      list.push(level(0));
      if (is(",")) rest.shift();
    }
    rest.shift();
    return list;
  }

  function part(): Matrix {
    const [kind, text] = rest.shift()!;
    if (kind === "number") return [[Number(text)]];
    if (kind === "text") return [[text.slice(1, -1).replaceAll('""', '"')]];
    if (kind === "range") {
      const [, sheet, address] = /^(?:(.+)!)?(.+)$/.exec(text)!;
      return surroundings.range(sheet?.replace(/^'(.*)'$/, "$1").replaceAll("''", "'"), address!);
    }
    if (kind === "defined") return surroundings.named(text);
    if (kind === "name") {
      const list = parameters();
      return /^CANFALL\./i.test(text) ? surroundings.call(text.slice(8).toUpperCase(), list) : native(text, list);
    }
    const inner = level(0);
    rest.shift();
    return inner;
  }

  return level(0);
}
