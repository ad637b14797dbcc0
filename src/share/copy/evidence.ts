import type { Stated } from "../../cells/stated";
import { cellsIn, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { EVIDENCE, namedValue, type ReplacedLine } from "./evidence-rows";
import type { TypedInput } from "./input-list";

/** What the Evidence sheet of a copy says. */
export interface Evidence {
  version: string;
  day: Stated;
  hash: string;
  inputs: Pick<TypedInput, "name" | "row" | "column" | "value">[];
  formulas: ReplacedLine[];
}

/** The rows of a named list, each with its columns from the first. */
function listRows(book: FileBook, name: string): Stated[][] {
  const area = namedArea(book, name);
  const rows: Stated[][] = [];
  for (const { row, column, cell } of area ? cellsIn(book, area) : []) {
    rows[row - 1] ??= [];
    rows[row - 1]![column - 1] = cell.value;
  }
  return rows.filter((row) => row !== undefined);
}

const text = (value: Stated | undefined) => (typeof value === "string" ? value : String(value ?? ""));

/** The Evidence sheet of a file, or null where it has none. */
export function evidenceOf(book: FileBook): Evidence | null {
  if (!book.sheets.some(({ name }) => name === EVIDENCE)) return null;
  return {
    version: text(namedValue(book, "Evidence_Version")),
    day: namedValue(book, "Evidence_Day"),
    hash: text(namedValue(book, "Evidence_Hash")),
    inputs: listRows(book, "Evidence_Inputs").map(([name, row, column, value]) => ({
      name: text(name),
      row: Number(row),
      column: Number(column),
      value: value ?? null,
    })),
    formulas: listRows(book, "Evidence_Formulas").map(([place, old, formula, value, note, fills]) => ({
      place: text(place),
      old: text(old),
      formula: text(formula),
      value: value ?? null,
      note: text(note),
      fills: text(fills),
    })),
  };
}
