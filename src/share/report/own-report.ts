import { firstCell } from "../../cells/places";
import { addressParts } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { REPORT } from "../../workbook/audit/report/report";
import type { CellSpec, SheetSpec } from "../../workbook/form/sheet-spec";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import type { Figure } from "../copy-report";
import type { Finding } from "../finding";
import { type FileLooks, fileLooks } from "../looks/file-looks";
import { isRounding, shownText } from "../looks/shown";
import { shownAt } from "../looks/shown-at";
import { NativeValues } from "../native/native-values";
import { NativeError, Unsure } from "../native/value";

const NAME = "Authority report";
const ALL = (row: number) => `A${row}:X${row}`;
const MOST_FINDINGS = 6;
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
const MEANING = "Agreement means that the figures follow from these readings; it does not prove the readings.";

/** To be filled in by hand. */
const SIGNED = ["File", "Checked by", "Day", "Signature"].map((what) => `${what}: ${"_".repeat(24)}`).join("   ");

/** A value that the report of the workbook gives from what was typed; null where it cannot be told. */
function valueAt(values: NativeValues, { at }: CellSpec): Stated {
  const { row, column } = addressParts(firstCell(at));
  try {
    const value = values.at(REPORT.name, row, column);
    return value instanceof NativeError ? "" : value;
  } catch (error) {
    if (error instanceof Unsure) return "";
    throw error;
  }
}

/** Beside a text of the file that is another one, what the file shows a reader. */
function besides(book: FileBook, looks: FileLooks, spec: CellSpec, value: Stated): string | number {
  const plain = shownText(value, spec.format ?? "General");
  const own = MARKS[plain] ?? plain;
  const { row, column } = addressParts(firstCell(spec.at));
  const area = { sheet: REPORT.name, top: row, left: column, bottom: row, right: column };
  const shown = shownAt(book, area, looks).trim();
  if (spec.kind === "tile" || (MARKS[shown] ?? shown) === own) return typeof value === "number" ? value : own;
  return `${own || "blank"} (the file shows: ${shown.slice(0, 60) || "nothing"})`;
}

/** A figure may agree and be shown as another one. */
function verdictOn(agrees: boolean, recomputed: Stated, shown: string): string {
  if (!agrees) return "✗ does not agree";
  return typeof recomputed === "number" && !isRounding(shown, recomputed)
    ? "✗ the file holds it, and shows something else"
    : "✓ agrees";
}

const MARKS: Readonly<Record<string, string>> = {
  within: "✓ within",
  outside: "✗ outside",
  "near the limit": "≈ near the limit",
};

function figureLines(figures: readonly Figure[], from: number): CellSpec[] {
  const wanted = figures.filter(({ name }) => FIGURES.includes(name));
  return wanted.flatMap(({ label, unit, recomputed, shown, agrees }, index): CellSpec[] => {
    const row = from + index;
    const value =
      typeof recomputed === "number" ? `${Number(recomputed.toPrecision(4))} ${unit}`.trim() : String(recomputed ?? "");
    return [
      { at: `A${row}`, kind: "label", value: label },
      { at: `B${row}`, kind: "answer", value },
      { at: `C${row}:D${row}`, kind: "entry", value: `the file shows ${shown || "nothing"}` },
      { at: `E${row}:X${row}`, kind: "entry", value: verdictOn(agrees, recomputed, shown) },
    ];
  });
}

/**
 * The authority's own report of a checked file: the report of the workbook with every value calculated here from what was
 * typed, then figures beside what the file shows, and what was found. It draws nothing that the file draws.
 */
export function ownReport(
  book: FileBook,
  specs: readonly SheetSpec[],
  figures: readonly Figure[],
  { code, sentence, findings }: { code: string; sentence: string; findings: readonly Finding[] },
): SheetSpec {
  const looks = fileLooks(book);
  const recomputed = new Map(figures.map((one) => [one.name, one.recomputed] as const));
  const values = new NativeValues(book, specs, recomputed);
  const cells = REPORT.cells
    .filter(({ name }) => name !== "Copy_Code")
    .map((spec): CellSpec => {
      const { formula, name: _, ...rest } = spec;
      if (rest.at === ALL(1)) return { ...rest, value: "Report of the authority on a block audit" };
      return formula === undefined ? rest : { ...rest, value: besides(book, looks, spec, valueAt(values, spec)) };
    });
  const last = Math.max(...cells.map(({ at }) => addressParts(firstCell(at)).row)) + 1;
  const lines = figureLines(figures, last + 1);
  const behind = last + 1 + new Set(lines.map(({ at }) => addressParts(firstCell(at)).row)).size;
  const against = findings.slice(0, MOST_FINDINGS).map(({ class: kind, text }) => `${kind}: ${text}`);
  const more = findings.length - against.length;
  const said = [
    ...(against.length === 0 ? ["Nothing was found changed, hidden or misleading."] : against),
    ...(more > 0 ? [`And ${more} more.`] : []),
  ];
  return {
    name: NAME,
    widths: REPORT.widths,
    heights: { ...REPORT.heights, [behind + 1]: 26 },
    ...(REPORT.shades && { shades: REPORT.shades }),
    printed: `A1:X${behind + 3 + said.length}`,
    cells: [
      ...cells,
      { at: ALL(last), kind: "heading", value: "Figures calculated from the readings, and what the file shows" },
      ...lines,
      { at: ALL(behind), kind: "heading", value: "Findings" },
      { at: ALL(behind + 1), kind: "caution", value: sentence },
      ...said.map((value, index): CellSpec => ({ at: ALL(behind + 2 + index), kind: "note", value })),
      { at: ALL(behind + 2 + said.length), kind: "note", value: `${MEANING} Code of the copy: ${code}.` },
      { at: ALL(behind + 3 + said.length), kind: "note", value: SIGNED },
    ],
  };
}
