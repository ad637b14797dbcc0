import { firstCell } from "../../cells/places";
import { addressParts } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { FACTS_TOP, REPORT } from "../../workbook/audit/report/report";
import { speaksOfPane } from "../../workbook/audit/working/kept";
import type { CellSpec, SheetSpec } from "../../workbook/form/sheet-spec";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { NOT_GIVEN } from "../check/agreement";
import { figureFindings } from "../check/figure-findings";
import { EVIDENCE } from "../copy/evidence-rows";
import type { Figure } from "../copy-report";
import { cellsOfFile } from "../figures/cells-of-file";
import { type Finding, grouped } from "../finding";
import { type FileLooks, fileLooks } from "../looks/cells/file-looks";
import { figureText, isRounding, plainFormat, shownText } from "../looks/cells/shown";
import { shownAt } from "../looks/cells/shown-at";
import { NativeValues } from "../native/native-values";
import { NativeError, Unsure } from "../native/value";
import { shortened } from "../shortened";
import { typedLines } from "./typed-lines";

const NAME = "Authority report";
const ALL = (row: number) => `A${row}:X${row}`;
const LEFT = (row: number) => `A${row}:J${row}`;
const RIGHT = (row: number) => `K${row}:X${row}`;
const MOST_FINDINGS = 6;
const MOST_SHOWN = 120;
/** Lines of readings with which it can be read on one page. */
const ONE_PAGE_ROWS = 12;
const FIGURES = [
  "Used_MAR",
  "Used_CU",
  "Used_DU",
  "Used_SC_Can",
  "Used_SC_Quarter",
  "Result_Run_Time_min",
  "Net_Depth_mm",
  "Run_Multiplier",
  "Result_Water_kL",
];
/** Rows at the top: what the check says, what speaks against the copy, and which file it is. */
const [TITLE, VERDICT, AGAINST, FILE] = [1, 2, 3, 4];
export const AGAINST_PLACE = ALL(AGAINST);
export const FILE_PLACE = ALL(FILE);
export const SIGNED = "Signature: ";
export const NOTHING_FOUND = "Nothing was found changed, hidden or misleading.";

/** A value that a sheet of the workbook gives from what was typed; blank where it cannot be told. */
function valueAt(values: NativeValues, sheet: string, row: number, column: number): Stated {
  try {
    const value = values.at(sheet, row, column);
    return value instanceof NativeError ? "" : value;
  } catch (error) {
    if (error instanceof Unsure) return "";
    throw error;
  }
}

const MARKS: Readonly<Record<string, string>> = {
  outside: "✗ outside",
  within: "✓ within",
  "near the limit": "≈ near the limit",
};

const rowOf = ({ at }: CellSpec) => addressParts(firstCell(at)).row;

/** What the file says of a figure that cannot be given, without a number. */
const IS_NEEDED = /^needs [^\d]+$/;

/** Beside a text of the file that is another one, what the file shows a reader. */
function besides(book: FileBook, looks: FileLooks, spec: CellSpec, value: Stated): Pick<CellSpec, "value" | "format"> {
  const plain = shownText(value, spec.format ?? "General");
  const own = MARKS[plain] ?? plain;
  const { row, column } = addressParts(firstCell(spec.at));
  const area = { sheet: REPORT.name, top: row, left: column, bottom: row, right: column };
  const shown = shownAt(book, area, looks).trim();
  if (spec.kind === "tile" || (MARKS[shown] ?? shown) === own) {
    const apart = typeof value === "number" && spec.kind !== "tile" && !spec.format && row >= FACTS_TOP;
    return {
      value: typeof value === "number" ? value : ofFile(own.replace(OF_PANE, "")),
      ...(apart && { format: plainFormat(value) }),
    };
  }
  if (own === NOT_GIVEN && IS_NEEDED.test(shown)) return { value: shown };
  return { value: `${own || "blank"} (the file shows: ${shortened(shown, MOST_SHOWN) || "nothing"})` };
}

/** What a text says of the pane of the add-in, which an officer need not have. */
const OF_PANE = /, (?:until|as) [^.:,]*\bpane\b[^.:,]*/g;

/** A figure may agree and be shown as another one. */
function verdictOn({ agrees, recomputed, shown }: Figure): string {
  if (agrees && recomputed === NOT_GIVEN) return "≈ cannot be given, and the file gives none";
  if (!agrees) return "✗ does not agree";
  return typeof recomputed === "number" && !isRounding(shown, recomputed)
    ? "✗ the file holds it, and shows something else"
    : "✓ agrees";
}

const figureLines = (figures: readonly Figure[], from: number): CellSpec[] =>
  figures.flatMap((figure, index): CellSpec[] => {
    const { label, unit, recomputed, format, shown, place } = figure;
    const row = from + index;
    return [
      { at: `A${row}`, kind: "label", value: label },
      { at: `B${row}`, kind: "answer", value: `${figureText(recomputed, format)} ${unit}`.trim() },
      { at: `C${row}:D${row}`, kind: "entry", value: `${place} shows ${shown || "nothing"}` },
      { at: `E${row}:J${row}`, kind: "entry", value: verdictOn(figure) },
    ];
  });

const VERDICTS = REPORT.cells.filter(({ formula }) => formula?.startsWith("Verdict_"));

/** Which measures are outside and within the limits of the file, outside first; "" where none has a verdict. */
function limitWords(drawn: readonly CellSpec[]): string {
  const at = new Map(drawn.map((cell) => [firstCell(cell.at), String(cell.value ?? "")]));
  const said = VERDICTS.map((cell) => [at.get(firstCell(cell.at))!, at.get(`A${rowOf(cell)}`)!] as const);
  const groups = Object.values(MARKS).flatMap((mark) => {
    const labels = said.filter(([verdict]) => verdict === mark).map(([, label]) => label);
    return labels.length > 0 ? [`${mark}: ${labels.join(", ")}`] : [];
  });
  return groups.length > 0 ? ` Against the limits that the file sets: ${groups.join("; ")}.` : "";
}

/** Texts of the audit's own report that speak of what comes with it, as an authority says them. */
const SAID_OF_FILE: readonly [from: string, to: string][] = [
  ["on the sheet Coverage", "on the file's sheet Coverage"],
  ["all: sheet Actions", "all: the file's sheet Actions"],
  [" Photos and the raw readings go with it.", ""],
];
const ofFile = (text: string): string => SAID_OF_FILE.reduce((said, [from, to]) => said.replace(from, to), text);

const codeWords = (code: string, old: string) =>
  old === ""
    ? `Code of the copy: ${code}.`
    : `Code of what is typed in it now: ${code}. Its pages have the code ${old}.`;

/** The figures that the check cannot give, in a line. */
function notGiven(figures: readonly Figure[]): string[] {
  const labels = figures
    .filter(({ agrees, recomputed }) => agrees && recomputed === NOT_GIVEN)
    .map(({ label }) => label);
  return labels.length > 0 ? [`Not given, since entries are missing: ${labels.join("; ")}.`] : [];
}

/** The texts in which the audit itself says what it found, without those that tell its owner what to press. */
function auditWords(texts: readonly (string | number | undefined)[]): string[] {
  const said = texts.map((text) => String(text ?? "").trim()).filter((text) => text !== "" && !speaksOfPane(text));
  return said.length > 0 ? said : ["The audit gives no answer in words."];
}

/**
 * The authority's own report of a checked file: what the check says, then the report of the workbook with every value
 * calculated here from what was typed, figures beside what the file shows, and what was found. It draws nothing that the
 * file draws.
 */
export function ownReport(
  book: FileBook,
  specs: readonly SheetSpec[],
  figures: readonly Figure[],
  {
    code,
    oldCode,
    agrees,
    sentence,
    findings,
  }: { code: string; oldCode: string; agrees: boolean; sentence: string; findings: readonly Finding[] },
): SheetSpec {
  const looks = fileLooks(book);
  const recomputed = new Map(figures.map((one) => [one.name, one.recomputed] as const));
  const values = new NativeValues(book, specs, recomputed);
  const onReport = `${REPORT.name}!`;
  const changedCells = new Set(
    findings
      .filter(({ class: kind, where }) => kind === "changed" && where.startsWith(onReport))
      .map(({ where }) => where.slice(onReport.length)),
  );
  const drawn = REPORT.cells
    .filter(({ name }) => name !== "Copy_Code")
    .map((spec): CellSpec => {
      const { formula, name: _, ...rest } = spec;
      if (formula === undefined) return typeof rest.value === "string" ? { ...rest, value: ofFile(rest.value) } : rest;
      const { row, column } = addressParts(firstCell(spec.at));
      const shown = besides(book, looks, spec, valueAt(values, REPORT.name, row, column));
      return changedCells.has(firstCell(spec.at))
        ? { ...rest, ...shown, kind: "caution", value: `✗ ${shown.value}` }
        : { ...rest, ...shown };
    });
  const cells = drawn.filter((cell) => rowOf(cell) > FILE && cell.kind !== "signature");
  const words = auditWords(
    drawn.filter((cell) => [VERDICT, AGAINST, FILE].includes(rowOf(cell))).map((one) => one.value),
  );
  const onEvidence = ({ where }: Finding) => where.startsWith(EVIDENCE);
  const all = [
    ...findings.filter((one) => !onEvidence(one)),
    ...grouped(figureFindings(figures)),
    ...findings.filter(onEvidence),
  ];
  const said = all.map(({ class: kind, text }) => `${kind}: ${text}`);
  const listed = [
    ...(said.length === 0 ? [NOTHING_FOUND] : said.slice(0, MOST_FINDINGS)),
    ...(said.length > MOST_FINDINGS
      ? [`And ${said.length - MOST_FINDINGS} more, which the check on screen lists.`]
      : []),
    ...notGiven(figures),
  ];
  const typed = typedLines(cellsOfFile(book), (...place) => valueAt(values, ...place));
  const wanted = figures.filter(({ name }) => FIGURES.includes(name));
  const beside = Math.max(...cells.map(rowOf)) + 1;
  let row = beside + Math.max(wanted.length, typed.readings.length);
  const section = (label: string, lines: readonly string[]) =>
    lines.flatMap((value, i): CellSpec[] => {
      row += 1;
      const words: CellSpec = { at: `B${row}:X${row}`, kind: "note", value };
      return i === 0 ? [{ at: `A${row}`, kind: "label", value: label }, words] : [words];
    });
  const more = said.length > 1 ? ` And ${said.length - 1} more: see Findings below.` : "";
  const written: CellSpec[] = [
    { at: ALL(TITLE), kind: "title", value: "Report of the authority on a block audit" },
    { at: ALL(VERDICT), kind: "caution", value: `${agrees ? "✓" : "✗"} ${sentence}` },
    { at: AGAINST_PLACE, kind: "answer", value: `${listed[0]}${more}${limitWords(drawn)}` },
    { at: FILE_PLACE, kind: "note", value: codeWords(code, oldCode) },
    ...cells,
    { at: LEFT(beside), kind: "heading", value: "Figures from the readings, and what the file's cell shows" },
    { at: RIGHT(beside), kind: "heading", value: "Readings typed in the file [mL; x: not read]" },
    ...figureLines(wanted, beside + 1),
    ...typed.readings.map((value, i): CellSpec => ({ at: RIGHT(beside + 1 + i), kind: "note", value })),
    ...section("Findings", listed),
    ...section("Words of the audit", words),
    ...section("Typed in the file", typed.more),
    { at: ALL(row + 1), kind: "signature", value: SIGNED },
  ];
  return {
    name: NAME,
    roomy: true,
    widths: REPORT.widths,
    heights: REPORT.heights ?? {},
    ...(REPORT.shades && { shades: REPORT.shades }),
    printed: `A1:X${row + 1}`,
    pages: typed.readings.length > ONE_PAGE_ROWS ? 2 : 1,
    cells: written,
  };
}
