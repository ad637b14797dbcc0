import { columnNumber } from "../../cells/letters";
import { lookOfKind } from "./cell-looks";
import type { CellSpec, SheetSpec } from "./sheet-spec";

const USUAL_SIZE_PT = 11;
const USUAL_HEIGHT_PT = 15;
const USUAL_WIDTH = 8.43;
const PIXELS_A_POINT = 4 / 3;
/** Width of a letter over its size: Calibri's is 0.49, the fonts in its place are wider. */
const LETTER = 0.53;
const BOLD = 1.06;
const LINE = 1.25;
const PADDING_PX = 6;
const INDENT_PX = 9;

/** The texts that each cell of a workbook may show. */
export type Said = (cell: CellSpec) => string[];

const isText = (literal: string) => /[a-z]{2}.* /.test(literal);
const literals = (formula: string) =>
  [...formula.matchAll(/"((?:[^"]|"")*)"/g)].map(([, text]) => text!).filter(isText);
/** Names that a formula may hand on as they are. */
const handedOn = (formula: string) =>
  [...formula.replace(/"(?:[^"]|"")*"/g, "").matchAll(/(?<=^|,)[A-Z]\w*_\w+(?=\)*(,|$))/g)].map(([name]) => name);

/** The texts of a cell: its own, and those that it hands on from cells with names. */
export function saidIn(sheets: readonly SheetSpec[]): Said {
  const formulas = new Map(
    sheets.flatMap(({ cells }) => cells.flatMap(({ name, formula }) => (name && formula ? [[name, formula]] : []))),
  );
  const known = new Map<string, string[]>();
  const of = (formula: string): string[] => {
    const before = known.get(formula);
    if (before) return before;
    known.set(formula, []);
    const all = [...literals(formula), ...handedOn(formula).flatMap((name) => of(formulas.get(name) ?? ""))];
    known.set(formula, all);
    return all;
  };
  return ({ formula, value }) => (formula === undefined ? (typeof value === "string" ? [value] : []) : of(formula));
}

/** Lines of a text between words, of so many letters. */
export function linesOf(text: string, letters: number): number {
  let lines = 1;
  let filled = -1;
  for (const word of text.split(" ")) {
    if (filled >= 0 && filled + 1 + word.length > letters) {
      lines += 1;
      filled = -1;
    }
    filled += 1 + word.length;
    lines += Math.max(0, Math.ceil(filled / letters) - 1);
  }
  return lines;
}

const split = (address: string) => {
  const [, letters, row] = /^([A-Z]+)(\d+)$/.exec(address)!;
  return { column: columnNumber(letters!), row: Number(row) };
};

/** The height [points] that a cell's longest text wants where it wraps, and its rows. */
export function roomWanted(spec: SheetSpec, cell: CellSpec, texts: readonly string[]) {
  const look = lookOfKind(cell.kind);
  const [from, to = from] = cell.at.split(":");
  const [first, last] = [split(from!), split(to!)];
  let width = -PADDING_PX - (look.alignment?.indent ? INDENT_PX : 0);
  for (let column = first.column; column <= last.column; column++) {
    width += 7 * (spec.widths[column - 1] ?? USUAL_WIDTH) + 5;
  }
  const size = look.font?.size ?? USUAL_SIZE_PT;
  const letters = width / (size * PIXELS_A_POINT * LETTER * (look.font?.bold ? BOLD : 1));
  const lines = look.alignment?.wrapText ? Math.max(1, ...texts.map((text) => linesOf(text, letters))) : 1;
  return { first: first.row, last: last.row, lines, height: lines > 1 ? Math.ceil(lines * size * LINE + 2) : 0 };
}

/** Row heights [points] of a sheet, with room for every text that its cells may show. */
export function heightsWithRoom(spec: SheetSpec, said: Said): Record<number, number> {
  const heights: Record<number, number> = { ...spec.heights };
  for (const cell of spec.cells) {
    const { first, last, height } = roomWanted(spec, cell, said(cell));
    const others = Array.from({ length: last - first }, (_, row) => heights[first + row] ?? USUAL_HEIGHT_PT);
    const wanted = height - others.reduce((sum, one) => sum + one, 0);
    if (wanted > (heights[last] ?? USUAL_HEIGHT_PT)) heights[last] = wanted;
  }
  return heights;
}

const known = new WeakMap<readonly SheetSpec[], ReadonlyMap<SheetSpec, Readonly<Record<number, number>>>>();

/** Row heights [points] of the sheets of a workbook, roomy where they ask for it; calculated once for the same sheets. */
export function rowHeights(sheets: readonly SheetSpec[]): ReadonlyMap<SheetSpec, Readonly<Record<number, number>>> {
  const before = known.get(sheets);
  if (before) return before;
  const said = saidIn(sheets);
  const heights = new Map(
    sheets.map((spec) => [spec, spec.roomy ? heightsWithRoom(spec, said) : (spec.heights ?? {})] as const),
  );
  known.set(sheets, heights);
  return heights;
}
