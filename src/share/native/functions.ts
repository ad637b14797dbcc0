import { columnLetters } from "../../cells/letters";
import {
  area,
  ascending,
  counter,
  each,
  first,
  flat,
  index,
  mean,
  meets,
  type Native,
  nth,
  numberAt,
  numbers,
  over,
  place,
  products,
  rounded,
  statistic,
  sum,
  surelyRounded,
} from "./arguments";
import { formatted, monthsLater } from "./formatted";
import { alike, compared, NativeError, numberOf, textOf, truthOf } from "./value";

/** The functions that the audit's formulas use, IF apart. */
export const NATIVE: Readonly<Record<string, Native>> = {
  ABS: each((x) => Math.abs(numberOf(x))),
  ACOS: each((x) => Math.acos(numberOf(x))),
  ADDRESS: (given, cells) => `${columnLetters(numberAt(given, 1, cells))}${numberAt(given, 0, cells)}`,
  AND: (given, cells) => flat(given, cells).every(truthOf),
  AVEDEV: statistic((values) => mean(values.map((value) => Math.abs(value - mean(values))))),
  AVERAGE: statistic(mean),
  CHOOSE: (given, cells) => given[numberAt(given, 0, cells)] ?? new NativeError("#VALUE!"),
  COLUMN: ([of]) => [counter(area(of).left, area(of).right)],
  COS: each((x) => Math.cos(numberOf(x))),
  COUNT: (given, cells) => flat(given, cells).filter((cell) => typeof cell === "number").length,
  COUNTA: (given, cells) => flat(given, cells).filter((cell) => cell !== null).length,
  COUNTIF: ([of, criterion], cells) => flat([of!], cells).filter(meets(first(criterion, cells))).length,
  EDATE: each((day, months) => monthsLater(numberOf(day), numberOf(months))),
  EXP: each((x) => Math.exp(numberOf(x))),
  INDEX: index,
  INT: each((x) => Math.floor(numberOf(x))),
  ISERROR: each((x) => x instanceof NativeError),
  ISLOGICAL: each((x) => typeof x === "boolean"),
  ISNUMBER: each((x) => typeof x === "number"),
  ISTEXT: each((x) => typeof x === "string"),
  LARGE: ([of, at], cells) => {
    const sorted = ascending(numbers([of!], cells)).reverse();
    return each((k) => nth(sorted, numberOf(k)))([at!], cells);
  },
  LEFT: each((text, count = 1) => textOf(text).slice(0, numberOf(count))),
  LEN: each((text) => textOf(text).length),
  LOOKUP: ([wanted, among, results], cells) =>
    flat([results!], cells)[place(first(wanted, cells), flat([among!], cells), false)] ?? null,
  LOWER: each((text) => textOf(text).toLowerCase()),
  MATCH: (given, cells) =>
    place(first(given[0], cells), flat([given[1]!], cells), given.length > 2 && numberAt(given, 2, cells) === 0) + 1,
  MAX: statistic((values) => (values.length === 0 ? 0 : values.reduce((high, value) => Math.max(high, value)))),
  MEDIAN: statistic((values) => {
    const sorted = ascending(values);
    return (nth(sorted, Math.ceil(values.length / 2)) + nth(sorted, Math.floor(values.length / 2) + 1)) / 2;
  }),
  MID: each((text, from, count) => textOf(text).substr(numberOf(from) - 1, numberOf(count))),
  MIN: statistic((values) => (values.length === 0 ? 0 : values.reduce((low, value) => Math.min(low, value)))),
  MOD: each((x, y) => {
    const [a, b] = [numberOf(x), numberOf(y)];
    return a - b * Math.floor(over(a, b));
  }),
  N: ([of], cells) => {
    const value = first(of, cells);
    if (value instanceof NativeError) throw value;
    return typeof value === "string" ? 0 : Number(value);
  },
  NOT: each((x) => !truthOf(x)),
  OR: (given, cells) => flat(given, cells).some(truthOf),
  PI: () => Math.PI,
  RIGHT: each((text, count = 1) => (numberOf(count) === 0 ? "" : textOf(text).slice(-numberOf(count)))),
  ROUND: each((x, digits) => surelyRounded(numberOf(x), numberOf(digits))),
  ROUNDDOWN: each((x, digits) => rounded(numberOf(x), numberOf(digits), "down")),
  ROUNDUP: each((x, digits) => rounded(numberOf(x), numberOf(digits), "up")),
  ROW: ([of]) => counter(area(of).top, area(of).bottom).map((row) => [row]),
  SEARCH: each((wanted, text, from = 1) => {
    const at = textOf(text)
      .toUpperCase()
      .indexOf(textOf(wanted).toUpperCase(), numberOf(from) - 1);
    if (at < 0) throw new NativeError("#VALUE!");
    return at + 1;
  }),
  SIN: each((x) => Math.sin(numberOf(x))),
  SMALL: ([of, at], cells) => {
    const sorted = ascending(numbers([of!], cells));
    return each((k) => nth(sorted, numberOf(k)))([at!], cells);
  },
  SQRT: each((x) => Math.sqrt(numberOf(x))),
  STDEV: statistic((values) =>
    Math.sqrt(over(sum(values.map((value) => (value - mean(values)) ** 2)), values.length - 1)),
  ),
  SUBSTITUTE: each((text, old, put) => textOf(text).replaceAll(textOf(old), textOf(put))),
  SUM: statistic(sum),
  SUMIF: ([of, criterion, added], cells) => {
    const [looked, summed] = [flat([of!], cells), flat([added ?? of!], cells)];
    return each((wanted) => {
      const met = meets(wanted);
      return summed.reduce<number>(
        (all, value, i) => (typeof value === "number" && met(looked[i] ?? null) ? all + value : all),
        0,
      );
    })([criterion!], cells);
  },
  SUMPRODUCT: (given, cells) => sum(products(given, cells)),
  TAN: each((x) => Math.tan(numberOf(x))),
  TEXT: each((value, pattern) => formatted(numberOf(value), textOf(pattern))),
  TRIM: each((text) => textOf(text).trim().replace(/ +/g, " ")),
  UPPER: each((text) => textOf(text).toUpperCase()),
  VALUE: each((text) => numberOf(text)),
};

const arithmetic = (work: (a: number, b: number) => number) => each((x, y) => work(numberOf(x), numberOf(y)));
const order = (holds: (order: number) => boolean) => each((x, y) => holds(compared(x, y)));

/** The signs between two values. */
export const SIGNS: Readonly<Record<string, Native>> = {
  "+": arithmetic((a, b) => (alike(a, -b) ? 0 : a + b)),
  "-": arithmetic((a, b) => (alike(a, b) ? 0 : a - b)),
  "*": arithmetic((a, b) => a * b),
  "/": arithmetic(over),
  "^": arithmetic((a, b) => a ** b),
  "&": each((x, y) => textOf(x) + textOf(y)),
  "=": order((sign) => sign === 0),
  "<>": order((sign) => sign !== 0),
  "<": order((sign) => sign < 0),
  ">": order((sign) => sign > 0),
  "<=": order((sign) => sign <= 0),
  ">=": order((sign) => sign >= 0),
};
