import { checkBook } from "../../src/share/check/check-copy";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { sheetCells } from "../../src/xlsx/parts/sheet-cells";
import type { FileBook } from "../../src/xlsx/parts/workbook-file";
import { randomNumbers } from "../support/random";
import { randomChange } from "./changes";

/** The file as it would be with one cell's tag replaced: only that cell is read again. */
function withTag(book: FileBook, sheet: string, address: string, tag: string): FileBook {
  const changed = sheetCells(
    `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="${/\d+/.exec(address)![0]}">${tag}</row></sheetData></worksheet>`,
    book.texts,
  );
  const sheets = book.sheets.map((one) =>
    one.name === sheet ? { ...one, cells: new Map([...one.cells, [address, changed.get(address)!]]) } : one,
  );
  return { ...book, sheets };
}

/** Changes one random cell of a copy at a time, so many times; answers those changes that the check did not find. */
export async function missedChanges(copies: readonly FileBook[], changes: number): Promise<string[]> {
  const draw = randomNumbers(11);
  const missed: string[] = [];
  for (let i = 0; i < changes; i += 1) {
    const copy = copies[i % copies.length]!;
    const { what, sheet, address, tag } = randomChange(copy, draw);
    const { agrees } = await checkBook(withTag(copy, sheet, address, tag), AUDIT_SHEETS);
    if (agrees) missed.push(`${what} ${sheet}!${address} ${tag}`);
  }
  return missed;
}
