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

/** Where rows or columns from `first` to `last` are after a shift; null where they are gone. All from 0. */
export function shiftedSpan([first, last]: Span, { axis, at, count }: Shift): Span | null {
  const most = axis === "rows" ? MAX_ROWS : MAX_COLS;
  if (count >= 0) {
    const place = (one: number) => (one >= at ? one + count : one);
    const start = place(first);
    return start > most ? null : [start, last === most ? most : Math.min(place(last), most)];
  }
  const end = at - count;
  const start = first >= end ? first + count : Math.min(first, at);
  const finish = last === most ? most : last >= end ? last + count : Math.min(last, at - 1);
  return finish < start ? null : [start, finish];
}

/** Where one row or column is after a shift; null where it is gone. */
export const shiftedPlace = (place: number, shift: Shift): number | null =>
  shiftedSpan([place, place], shift)?.[0] ?? null;

/** What unprefixed references of a formula mean, and how far its relative ones go along with their cells. */
export interface FormulaPlace {
  /** The sheet whose rows or columns were inserted or deleted. */
  sheet: string;
  /** Whether the formula is in that sheet. */
  own: boolean;
  /** For the formula of a rule: how far the first cell of the rule went. */
  along?: number;
}

const SIDES = { rows: ["top", "bottom"], columns: ["left", "right"] } as const;
const GONE = "#REF!";

/** A reference after a shift of the rows or columns that it names; null where they are gone. */
export function shiftedReference(reference: string, shift: Shift, along?: number): string | null {
  const parsed = parseA1Ref(reference);
  if (!parsed || !("range" in parsed) || !parsed.range) return reference;
  const { range } = parsed;
  const [start, finish] = SIDES[shift.axis];
  const [first, last] = [range[start], range[finish]];
  if (first === null || last === null || first === undefined || last === undefined) return reference;
  const relative = along !== undefined && !range[`$${start}`] && !range[`$${finish}`];
  const span = relative ? ([first + along, last + along] as Span) : shiftedSpan([first, last], shift);
  if (!span || span[0] < 0) return null;
  if (span[0] === first && span[1] === last) return reference;
  return stringifyA1Ref({ ...parsed, range: { ...range, [start]: span[0], [finish]: span[1] } });
}

const sameName = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();

function shiftedToken(value: string, shift: Shift, { sheet, own, along }: FormulaPlace): string {
  const parsed = parseA1Ref(value);
  if (!parsed || !("range" in parsed) || parsed.workbookName) return value;
  const named = parsed.sheetName ?? "";
  if (named === "" ? !own : !sameName(named, sheet)) return value;
  return shiftedReference(value, shift, along) ?? value.slice(0, value.lastIndexOf("!") + 1) + GONE;
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

/** How far the first of the cells in a list goes along the axis; 0 where it is gone. */
export function wentAlong(list: string, shift: Shift): number {
  const first = (reference: string | undefined) => {
    const parsed = reference === undefined ? undefined : parseA1Ref(reference.trim().split(/\s+/)[0] ?? "");
    return parsed && "range" in parsed ? (parsed.range?.[SIDES[shift.axis][0]] ?? 0) : 0;
  };
  return first(shiftedList(list, shift) ?? list) - first(list);
}
