import { isReference } from "@borgar/fx/xlsx";
import { firstCell, placesOf } from "../../cells/places";
import { addressParts } from "../../cells/sheet-area";
import { COVERAGE } from "../../workbook/audit/coverage/coverage";
import { paintedRate } from "../../workbook/audit/coverage/painted";
import { SOURCE, sourceCell } from "../../workbook/audit/coverage/places";
import { sourceCells } from "../../workbook/audit/coverage/source";
import type { FileCell } from "../../xlsx/parts/file-cell";
import type { BookSheet, FileBook } from "../../xlsx/parts/workbook-file";
import { tokensOf } from "../calls";
import { sameFormula } from "../same-formula";
import type { TypedInput } from "./input-list";

/** Under this name the Evidence sheet lists what a Coverage sheet draws on that was painted from other cells. */
export const PAINTED = "Coverage_Painted";

const SHEET = COVERAGE.name;
const OWN = new Map(sourceCells().map(({ at, formula = "" }) => [firstCell(at), formula]));
const RATES = new Set(placesOf(SOURCE.replaceAll("$", "")));
const ORIGIN = addressParts(sourceCell(0, 0));

const isBlank = (cell: FileCell | undefined) =>
  cell === undefined || (cell.formula === undefined && cell.error === undefined && (cell.value ?? "") === "");

/** The can, the minutes and the mouth that a painted rate names; null where it is no such formula. */
function partsOf(formula: string): { can: string; minutes: string; mouth: string | null } | null {
  const tokens = tokensOf(formula).map(({ value }) => value);
  const can = tokensOf(formula).find(isReference)?.value;
  const after = (sign: string) => tokens[tokens.indexOf(sign) + 2];
  const minutes = after("60");
  if (!can || !minutes || !tokens.includes("60")) return null;
  const mouth = tokens.includes("PI") ? (tokens[tokens.indexOf("PI") + 4] ?? null) : null;
  return { can, minutes, mouth };
}

/** Whether every cell of the source block is as the pane paints it: rates by one test, places as numbers, no bed. */
function isPaint(sheet: BookSheet): boolean {
  let test: { minutes: string; mouth: string | null } | null = null;
  for (const address of OWN.keys()) {
    const cell = sheet.cells.get(address);
    if (isBlank(cell)) continue;
    if (cell?.formula === undefined) {
      const { row, column } = addressParts(address);
      const isPlace = row < ORIGIN.row !== column < ORIGIN.column;
      if (!isPlace || typeof cell?.value !== "number") return false;
      continue;
    }
    const parts = RATES.has(address) ? partsOf(cell.formula) : null;
    if (!parts) return false;
    test ??= parts;
    if (!sameFormula(paintedRate(parts.can, test.minutes, test.mouth), cell.formula, SHEET)) return false;
  }
  return test !== null;
}

/** The cells of the source block of a Coverage sheet that the pane pointed at other cans; null where it did not. */
export function paintedCells(book: FileBook): ReadonlyMap<string, FileCell | undefined> | null {
  const sheet = book.sheets.find(({ name }) => name === SHEET);
  if (!sheet || !isPaint(sheet)) return null;
  return new Map([...OWN.keys()].map((address) => [address, sheet.cells.get(address)]));
}

/** What a Coverage sheet draws on in place of the audit's cans, as typed: formulas as texts with `=`. */
export function paintedInputs(book: FileBook): TypedInput[] {
  const cells = book.sheets.find(({ name }) => name === SHEET)?.cells;
  return [...OWN].flatMap(([address, own]) => {
    const cell = cells?.get(address);
    if (!cell || isBlank(cell)) return [];
    if (cell.formula !== undefined && sameFormula(own, cell.formula, SHEET)) return [];
    const { row, column } = addressParts(address);
    const value = cell.formula === undefined ? cell.value : `=${cell.formula}`;
    return [{ name: PAINTED, row, column, address, sheet: SHEET, value }];
  });
}

/** The formulas of painted rates, such that what they read is listed too. */
export const paintedFormulas = (book: FileBook) =>
  [...(paintedCells(book)?.values() ?? [])].flatMap((cell) =>
    cell?.formula === undefined ? [] : [{ formula: cell.formula, sheet: SHEET }],
  );

/** The same painted cell, whoever saved the formula. */
export function samePaint(one: unknown, other: unknown): boolean {
  if (typeof one !== "string" || typeof other !== "string") return one === other;
  return one.startsWith("=") && other.startsWith("=") && sameFormula(one.slice(1), other.slice(1), SHEET);
}
