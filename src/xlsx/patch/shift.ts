import {
  isReference,
  MAX_COLS,
  MAX_ROWS,
  parseA1Ref,
  stringifyA1Ref,
  stringifyTokens,
  tokenize,
} from "@borgar/fx/xlsx";
import type { Shift } from "../desk-file/book";

type Span = [first: number, last: number];

const mostOf = (axis: Shift["axis"]): number => (axis === "rows" ? MAX_ROWS : MAX_COLS);

/** Where rows or columns from `first` to `last` are after a shift; null where they are gone. All from 0. */
export function shiftedSpan([first, last]: Span, { axis, at, count }: Shift): Span | null {
  const most = mostOf(axis);
  const open = last === most && first < most; // such as to the last row, whatever is above
  if (count >= 0) {
    const place = (one: number) => (one >= at ? one + count : one);
    const start = place(first);
    return start > most ? null : [start, open ? most : Math.min(place(last), most)];
  }
  const end = at - count;
  const start = first >= end ? first + count : Math.min(first, at);
  const finish = open ? most : last >= end ? last + count : Math.min(last, at - 1);
  return finish < start ? null : [start, finish];
}

/** Where one row or column is after a shift; null where it is gone. */
export const shiftedPlace = (place: number, shift: Shift): number | null =>
  shiftedSpan([place, place], shift)?.[0] ?? null;

/** The first of a rule's cells that is left, from the first that it had: how far off it was, and is after the shift. */
export interface RuleStart {
  was: number;
  is: number;
}

/** What unprefixed references of a formula mean, and how far its relative ones go along with their cells. */
export interface FormulaPlace {
  /** The sheet whose rows or columns were inserted or deleted. */
  sheet: string;
  /** Whether the formula is in that sheet. */
  own: boolean;
  /** For the formula of a rule. */
  rule?: RuleStart;
}

const SIDES = { rows: ["top", "bottom"], columns: ["left", "right"] } as const;
const GONE = "#REF!";

/** A reference after a shift of the rows or columns that it names; null where they are gone. */
export function shiftedReference(reference: string, shift: Shift, rule?: RuleStart): string | null {
  const parsed = parseA1Ref(reference);
  if (!parsed || !("range" in parsed) || !parsed.range) return reference;
  const { range } = parsed;
  const [start, finish] = SIDES[shift.axis];
  const [first, last] = [range[start], range[finish]];
  if (first === null || last === null || first === undefined || last === undefined) return reference;
  const relative = rule !== undefined && !range[`$${start}`] && !range[`$${finish}`];
  const away = (by: number): Span => [first + by, Math.min(last + by, mostOf(shift.axis))];
  // what the formula of the first cell left spoke of; where that is gone, what is as far from the cell as it was
  const read = relative ? shift.count < 0 && shiftedSpan(away(rule.was), shift) : shiftedSpan([first, last], shift);
  const span = read || !relative ? read : away(rule.is);
  if (!span || span[0] < 0) return null;
  if (span[0] === first && span[1] === last) return reference;
  const moved = { ...range, [start]: span[0], [finish]: span[1] };
  return reference.slice(0, reference.lastIndexOf("!") + 1) + stringifyA1Ref({ range: moved });
}

const sameName = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();

function shiftedToken(value: string, shift: Shift, { sheet, own, rule }: FormulaPlace): string {
  const parsed = parseA1Ref(value);
  if (!parsed || !("range" in parsed) || parsed.workbookName) return value;
  const named = parsed.sheetName ?? "";
  if (named === "" ? !own : !sameName(named, sheet)) return value;
  return shiftedReference(value, shift, rule) ?? value.slice(0, value.lastIndexOf("!") + 1) + GONE;
}

/** A formula after rows or columns of a sheet were inserted or deleted. */
export function shiftedFormula(formula: string, shift: Shift, place: FormulaPlace): string {
  const tokens = tokenize(formula, { withLocation: false, negativeNumbers: false });
  return stringifyTokens(
    tokens.map((token) => (isReference(token) ? { ...token, value: shiftedToken(token.value, shift, place) } : token)),
  );
}

/** A list of references such as `A1:B2 D4`; null where none is left. */
export function shiftedList(list: string, shift: Shift): string | null {
  const left = list
    .trim()
    .split(/\s+/)
    .flatMap((one) => shiftedReference(one, shift) ?? []);
  return left.length === 0 ? null : left.join(" ");
}

/** Where the rule of a list of cells starts after a shift; at its first cell where none is left. */
export function ruleStart(list: string, { axis, at, count }: Shift): RuleStart {
  const spans = list
    .trim()
    .split(/\s+/)
    .map((one): Span => {
      const parsed = parseA1Ref(one);
      const range = parsed && "range" in parsed ? parsed.range : undefined;
      return [range?.[SIDES[axis][0]] ?? 0, range?.[SIDES[axis][1]] ?? mostOf(axis)];
    });
  const first = spans[0]![0];
  const left = spans.find((span) => shiftedSpan(span, { axis, at, count })) ?? spans[0]!;
  const isGone = count < 0 && at <= left[0] && left[0] < at - count;
  const was = isGone ? at - count : left[0];
  return { was: was - first, is: (shiftedPlace(was, { axis, at, count }) ?? was) - first };
}
