import { cellAt } from "../../src/cells/places";
import type { Stated } from "../../src/cells/stated";
import { auditFigures } from "../../src/share/figures/audit-figures";
import { formulaCells } from "../../src/share/native/formula-cells";
import { NativeValues } from "../../src/share/native/native-values";
import { NativeError, type Scalar, Unsure } from "../../src/share/native/value";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { buildWorkbook, type Entries } from "../../src/workbook/form/build";
import type { FileCell } from "../../src/xlsx/parts/file-cell";
import { type FileBook, namedArea, openBook } from "../../src/xlsx/parts/workbook-file";

/** How a program in another language reads numbers from text is its own affair, so these are from core. */
const LIMITS = /^Limit_/;

const NO_CELL: Omit<FileCell, "value"> = { given: new Map(), start: 0, end: 0 };

/** What the evaluator gives; undefined where rounding decides, so that it is not certain. */
function certain(evaluate: () => Scalar): Scalar | undefined {
  try {
    return evaluate();
  } catch (error) {
    if (error instanceof Unsure) return undefined;
    throw error;
  }
}

/** A copy of an audit with other values in cells by their names. */
export function typedInto(book: FileBook, values: Readonly<Record<string, string | number>>): FileBook {
  const copy = { ...book, sheets: book.sheets.map((sheet) => ({ ...sheet, cells: new Map(sheet.cells) })) };
  for (const [name, value] of Object.entries(values)) {
    const { sheet, top, left } = namedArea(book, name)!;
    const { cells } = copy.sheets.find((one) => one.name === sheet)!;
    cells.set(cellAt(top, left), { ...NO_CELL, ...cells.get(cellAt(top, left)), value: value === "" ? null : value });
  }
  return copy;
}

/**
 * A copy of an audit with the values of its formulas from our own evaluator, which tests/share/native.test.ts holds
 * against LibreOffice. Verdicts where rounding decides are from core.
 */
export function calculated(book: FileBook): FileBook {
  const copy = typedInto(book, {});
  const limits = [...auditFigures(book).figures].filter(([name]) => LIMITS.test(name));
  const values = new NativeValues(book, AUDIT_SHEETS, new Map(limits));
  const unsure: [string, string, string][] = [];
  const put = (sheet: string, address: string, value: Stated) => {
    const { cells } = copy.sheets.find(({ name }) => name === sheet)!;
    cells.set(address, { ...NO_CELL, ...cells.get(address), value });
  };
  for (const spec of AUDIT_SHEETS) {
    const sheet = spec.name;
    for (const { address, row, column, name = "" } of formulaCells(spec)) {
      const value = certain(() => values.at(sheet, row, column));
      if (value === undefined) unsure.push([sheet, address, name]);
      else put(sheet, address, value instanceof NativeError ? null : value);
    }
  }
  const { figures } = auditFigures(copy);
  for (const [sheet, address, name] of unsure) put(sheet, address, figures.get(name) ?? "");
  return copy;
}

/** An audit as it is before a program calculates it. */
export const uncalculated = async (entries: Entries): Promise<FileBook> =>
  openBook(await buildWorkbook(AUDIT_SHEETS, entries));

/** The file of such an audit. */
export async function nativeFile(entries: Entries): Promise<Uint8Array> {
  const book = calculated(await uncalculated(entries));
  const results = AUDIT_SHEETS.flatMap((spec) =>
    formulaCells(spec).map(({ key, address }): [string, string | number | boolean] => [
      key,
      book.sheets.find(({ name }) => name === spec.name)!.cells.get(address)?.value ?? "",
    ]),
  );
  return buildWorkbook(AUDIT_SHEETS, entries, new Map(results));
}
