import { firstCell } from "../../cells/places";
import type { Allowed } from "./allowed";
import { quoted } from "./nested-ifs";
import type { CellSpec, CheckSpec, ShadeSpec } from "./sheet-spec";

/** A line of a form: what it is called, what is typed or answered, its unit, and what is meant. */
export interface Field {
  label: string;
  /** `words`, `choose`, `date` and the like where there is none to measure in. */
  unit: string;
  note?: string;
  name?: string;
  value?: string | number;
  format?: string;
  /** Over the columns of unit and note as well; the unit then is in the label. */
  wide?: true;
  /** What may be typed. */
  allowed?: Allowed;
  /** What is asked beside the cell, in place of the note, while a formula is true; nothing is refused. */
  asks?: { when: string; words: string };
  /** What is answered instead. */
  formula?: string;
}

/** The columns of a form, such as `A` or `A:B`. */
export interface FormColumns {
  label: string;
  entry: string;
  unit: string;
  note?: string;
  /** Characters of a note that fit on one line. */
  noteLine: number;
}

export interface FormPart {
  cells: CellSpec[];
  checks: CheckSpec[];
  shades?: ShadeSpec[];
  heights: Record<number, number>;
}

/** The look of a question or a warning. */
export const STRIKING = { fill: "#f6e8c3", colour: "#543005", bold: true } as const;

const LINE = 16;
const NOTE_LINE = 12.5;

/** The cells of some columns in one row, merged where they are several. */
export const inRow = (columns: string, row: number, last = row): string => {
  const [from, to = from] = columns.split(":");
  return from === to && row === last ? `${from}${row}` : `${from}${row}:${to}${last}`;
};

/** The height [points] of a row whose longest note has so many characters. */
export const noteHeight = (characters: number, line: number): number =>
  Math.max(LINE, NOTE_LINE * Math.ceil(characters / line) + 3);

const firstOf = (columns: string) => columns.split(":")[0]!;
const lastOf = ({ unit, note = unit }: FormColumns) => note.split(":").pop()!;

/** The lines of a form from a row on; a text alone is a heading. */
export function formLines(top: number, columns: FormColumns, lines: readonly (string | Field)[]): FormPart {
  const part: FormPart & { shades: ShadeSpec[] } = { cells: [], checks: [], shades: [], heights: {} };
  const span = `${firstOf(columns.label)}:${lastOf(columns)}`;
  lines.forEach((line, index) => {
    const row = top + index;
    if (typeof line === "string") part.cells.push({ at: inRow(span, row), kind: "heading", value: line });
    else addField(part, row, columns, line);
  });
  return part;
}

/** Only what is to be typed needs to be told that it is words. */
const isAnswerInWords = ({ unit, formula }: Field) => unit === "words" && formula !== undefined;

function addField(part: FormPart & { shades: ShadeSpec[] }, row: number, columns: FormColumns, field: Field): void {
  const { label, unit, note, allowed, wide, asks, ...entry } = field;
  const at = inRow(wide ? `${firstOf(columns.entry)}:${lastOf(columns)}` : columns.entry, row);
  part.cells.push({ at: inRow(columns.label, row), kind: "label", value: wide ? `${label} [${unit}]` : label });
  part.cells.push({ at, kind: field.formula === undefined ? "input" : "answer", ...entry });
  if (!wide) part.cells.push({ at: inRow(columns.unit, row), kind: "unit", value: isAnswerInWords(field) ? "" : unit });
  if (columns.note && asks) {
    const range = inRow(columns.note, row);
    part.cells.push({ at: range, kind: "note", formula: `IF(${asks.when},${asks.words},${quoted(note ?? "")})` });
    part.shades.push({ range, formula: asks.when, ...STRIKING });
  } else if (columns.note && note) part.cells.push({ at: inRow(columns.note, row), kind: "note", value: note });
  if (allowed) part.checks.push({ range: firstCell(at), ...allowed(firstCell(at)) });
  const twoLines = wide || field.unit === "words";
  part.heights[row] = Math.max(twoLines ? 2 * LINE : LINE, noteHeight(note?.length ?? 0, columns.noteLine));
}

/** Parts of one sheet put together. */
export function joined(...parts: readonly Partial<FormPart>[]): FormPart & { shades: ShadeSpec[] } {
  return {
    cells: parts.flatMap(({ cells }) => cells ?? []),
    checks: parts.flatMap(({ checks }) => checks ?? []),
    shades: parts.flatMap(({ shades }) => shades ?? []),
    heights: Object.assign({}, ...parts.map(({ heights }) => heights)),
  };
}
