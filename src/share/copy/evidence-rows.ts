import { isoDay } from "../../cells/day-number";
import type { SheetArea } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { SHOWN_ABOVE } from "../../workbook/audit/results/other-basis";
import { cellsIn, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { DEFINITIONS } from "./definitions";
import { shortCode } from "./digest";
import type { EvidenceLooks } from "./evidence-looks";
import type { TypedInput } from "./input-list";

export const EVIDENCE = "Evidence";

export interface EvidenceRow {
  look: keyof EvidenceLooks;
  cells: readonly Stated[];
}

/** The rows of the Evidence sheet and what its defined names are for. */
export interface EvidenceRows {
  rows: EvidenceRow[];
  names: Map<string, SheetArea>;
}

/** Lines of Python that print the SHA-256 of a copy; each is a cell of its own, to be typed as it is. */
export const PYTHON = [
  "import hashlib, re, openpyxl",
  'book = openpyxl.load_workbook("copy.xlsx", data_only=True)',
  'cells = book.defined_names["Evidence_Inputs"].attr_text.split("!")[1].replace("$", "")',
  'rows = [[cell.value for cell in row] for row in book["Evidence"][cells]]',
  'text = lambda v: \'"%s"\' % re.sub("[\\t\\r\\n]+", " ", v or "")',
  'form = lambda v: text(v) if v is None or isinstance(v, str) else str(v).upper() if isinstance(v, bool) else "%.15g" % v',
  'lines = "".join("%s\\t%d\\t%d\\t%s\\n" % (name, row, column, form(value)) for name, row, column, value in rows)',
  "print(hashlib.sha256(lines.encode()).hexdigest())",
];
const REPEAT = [
  "The SHA-256 is taken over the list of what was typed, below: one line for each row, made of the first four columns with a tab between them and a line feed behind, in UTF-8.",
  "Numbers, dates too, are in it as %.15g writes them in C and Python (85, 3.5, 0.0001), texts in double quotes with tabs and line ends as one space, logical values as TRUE or FALSE.",
  "With this file saved as copy.xlsx, these lines of Python (with openpyxl) print it:",
  ...PYTHON,
];

/** The value of the cell behind a defined name. */
export function namedValue(book: FileBook, name: string): Stated {
  const area = namedArea(book, name);
  return (area && cellsIn(book, { ...area, bottom: area.top, right: area.left })[0]?.cell.value) ?? null;
}

/** Positions in metres of a reading, where the audit gives them. */
function positions(inputs: readonly TypedInput[]): (input: TypedInput) => Stated[] {
  const across = new Map<number, Stated>();
  const along = new Map<number, Stated>();
  for (const { name, row, column, value } of inputs) {
    if (name === "Cans_Across_m") across.set(column, value);
    if (name === "Cans_Along_m") along.set(row, value);
  }
  return ({ name, row, column }) =>
    name === "Cans_Readings" ? [across.get(column) ?? null, along.get(row) ?? null] : [null, null];
}

/** How the cans of an audit are weighted. */
function weighting(book: FileBook): string[] {
  const byArea = namedValue(book, "By_Area");
  if (typeof byArea !== "boolean" && byArea !== 1 && byArea !== 0) return [];
  return [
    byArea
      ? "Each can is weighted by the area that it is for: out to half-way to its neighbours, or to the bed's edge."
      : "Each can has equal weight: places of the cans or sides of the bed were not typed.",
  ];
}

/** The figure with equal weight, where it differs from the one in use by more than is passed over. */
function otherBasis(book: FileBook, equal: string, used: string): Stated {
  const [one, other] = [namedValue(book, equal), namedValue(book, used)];
  if (typeof one !== "number" || typeof other !== "number") return null;
  return Math.abs(one - other) > SHOWN_ABOVE * Math.abs(other) ? one : null;
}

/** A number in the 15 digits that programs save and that the SHA-256 is taken over. */
const inDigits = (value: Stated): Stated => (typeof value === "number" ? Number(value.toPrecision(15)) : value);

/** A cell whose formula called the add-in, as the list names it. */
export interface ReplacedLine {
  /** `Cans!B7`. */
  place: string;
  old: string;
  formula: string;
  value: Stated;
  note: string;
  fills: string;
}

/** Everything that the Evidence sheet says. */
export function evidenceRows(
  book: FileBook,
  replaced: readonly ReplacedLine[],
  inputs: readonly TypedInput[],
  facts: { version: string; day: number; digest: string },
): EvidenceRows {
  const rows: EvidenceRow[] = [];
  const names = new Map<string, SheetArea>();
  const add = (look: keyof EvidenceLooks, ...cells: Stated[]) => rows.push({ look, cells });
  const named = (name: string, left: number, right: number, top: number) => {
    if (rows.length >= top) names.set(name, { sheet: EVIDENCE, top, left, bottom: rows.length, right });
  };
  const fact = (name: string, label: string, value: Stated, words: Stated = null) => {
    add("value", label, value, words);
    names.set(name, { sheet: EVIDENCE, top: rows.length, left: 2, bottom: rows.length, right: 2 });
  };
  add("title", EVIDENCE);
  add("text", "What was in the original of this copy, so that every figure can be followed without the add-in.");
  add("text", "Agreement means that the figures follow from these readings, not that the readings are true.");
  fact("Evidence_Version", "Made with Canfall", facts.version);
  fact("Evidence_Day", "Day of the copy (day number)", facts.day, isoDay(facts.day));
  fact("Evidence_Hash", "SHA-256", facts.digest);
  fact(
    "Evidence_Code",
    "Code of this copy",
    shortCode(facts.digest),
    "the first 16 digits, also at the foot of each page",
  );
  for (const line of REPEAT) add("text", line);
  add("title", "Formulas of the add-in and what is in their place");
  add("heading", "Cell", "Old formula, without =", "New formula, without =", "Value", "How it was computed", "Array");
  const firstFormula = rows.length + 1;
  for (const { place, old, formula, value, note, fills } of replaced) {
    add("value", place, old, formula, value, note, fills);
  }
  named("Evidence_Formulas", 1, 6, firstFormula);
  if (replaced.length === 0) add("text", "none: all formulas are native ones");
  add("title", "Measures and limits");
  for (const line of weighting(book)) add("text", line);
  add("heading", "Measure", "What it is", "Its source", "Value", "Limit", "With equal weight, where over 2 % apart");
  for (const { label, meaning, source, result, used, limit } of DEFINITIONS) {
    const limits = limit ? [limit.text, limit.source].map((name) => namedValue(book, name)).filter(Boolean) : [];
    const value = namedValue(book, used);
    add("measure", label, meaning, source, value, limits.join(": ") || null, otherBasis(book, result, used));
  }
  add("title", "What was typed");
  add("heading", "Name", "Row", "Column", "Value", "Across [m]", "Along [m]");
  const firstInput = rows.length + 1;
  const placeOf = positions(inputs);
  for (const input of inputs) {
    add("value", input.name, input.row, input.column, inDigits(input.value), ...placeOf(input));
  }
  named("Evidence_Inputs", 1, 4, firstInput);
  return { rows, names };
}
