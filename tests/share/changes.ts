import { cellAt, firstCell } from "../../src/cells/places";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import type { FileCell } from "../../src/xlsx/parts/file-cell";
import { type FileBook, namedArea } from "../../src/xlsx/parts/workbook-file";

/** A change of one cell's tag in a file, in words and as text. */
export interface CellChange {
  what: string;
  sheet: string;
  address: string;
  tag: string;
}

const RESULTS = [
  "Result_MAR",
  "Result_CU",
  "Result_DU_Quarter",
  "Result_SC_Can",
  "Result_SC_Quarter",
  "Weighted_CU",
  "Used_MAR",
  "Verdict_CU",
  "Run_Multiplier",
  "Net_Depth_mm",
  "Result_Run_Time_min",
  "Result_Water_kL",
  "Result_Cost",
] as const;

const style = ({ given }: FileCell) => (given.has("s") ? ` s="${given.get("s")}"` : "");
const xml = (text: string) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

function tag(address: string, cell: FileCell, value: string | number, formula?: string): string {
  const content = formula === undefined ? "" : `<f>${xml(formula)}</f>`;
  return typeof value === "number"
    ? `<c r="${address}"${style(cell)}>${content}<v>${value}</v></c>`
    : `<c r="${address}"${style(cell)} t="str">${content}<v>${xml(value)}</v></c>`;
}

/** A value near the old one, or another word. */
const other = (value: unknown, random: () => number) =>
  typeof value === "number" ? value * (1 + (random() < 0.5 ? 1e-6 : 0.1) * (random() + 0.1)) + 1e-6 : `${value ?? ""}!`;

/** One random change: of a reading, a result, a formula (changed or typed over), or a limit. */
export function randomChange(book: FileBook, random: () => number): CellChange {
  const pick = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)]!;
  const cellOf = (sheet: string, address: string) =>
    book.sheets.find(({ name }) => name === sheet)!.cells.get(address)!;
  const kind = pick(["reading", "result", "formula", "typed over", "limit"] as const);
  if (kind === "reading") {
    const { sheet, top, left } = namedArea(book, "Cans_Readings")!;
    const address = cellAt(top + Math.floor(random() * 5), left + Math.floor(random() * 5));
    const cell = cellOf(sheet, address);
    const value = typeof cell.value === "number" ? Number(other(cell.value, random)) : 7;
    return { what: kind, sheet, address, tag: tag(address, cell, value) };
  }
  if (kind === "result") {
    const name = pick(RESULTS);
    const { sheet, top, left } = namedArea(book, name)!;
    const address = cellAt(top, left);
    const cell = cellOf(sheet, address);
    return {
      what: `${kind} ${name}`,
      sheet,
      address,
      tag: tag(address, cell, other(cell.value, random), cell.formula),
    };
  }
  if (kind === "limit") {
    const spec = AUDIT_SHEETS.find(({ name }) => name === "Limits")!;
    const limits = spec.cells.filter(
      ({ name, value }) => name?.startsWith("Limit_") || /^[<>=\d]/.test(String(value ?? "")),
    );
    const address = firstCell(pick(limits).at);
    const cell = cellOf("Limits", address);
    return { what: kind, sheet: "Limits", address, tag: tag(address, cell, "<= 9") };
  }
  const spec = pick(AUDIT_SHEETS.filter(({ cells }) => cells.some(({ formula }) => formula)));
  const { at, formula = "" } = pick(spec.cells.filter((cell) => cell.formula));
  const address = firstCell(at);
  const cell = cellOf(spec.name, address);
  const value = typeof cell.value === "number" ? cell.value : String(cell.value ?? "");
  const changed = kind === "formula" ? tag(address, cell, value, `(${formula})*1`) : tag(address, cell, value);
  return { what: kind, sheet: spec.name, address, tag: changed };
}
