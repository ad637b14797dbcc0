import { Workbook } from "@cj-tech-master/excelts";
import type { Stated } from "../cells/stated";
import { InputError } from "../core/errors";
import { checkCopy } from "./check/check-copy";
import type { CheckedFile } from "./copy-report";
import { harmless } from "./csv";
import { otherCodes } from "./other-codes";
import { REGISTER_HEADINGS, registerRow } from "./register-row";

/** A register of copies: as a file, and its lines with their headings. */
export interface Register {
  xlsx: Uint8Array;
  rows: readonly (readonly Stated[])[];
}

const WIDTHS = [34, 24, 20, 12, 12, 10, 10, 16, 18, 22, 16, 70];

/** Checks one file for the register: one that cannot be read gives a line that says why. */
export async function checkedFile(name: string, file: Uint8Array): Promise<CheckedFile> {
  try {
    return { name, report: await checkCopy(file), problem: "" };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { name, report: null, problem: error.message };
  }
}

async function xlsxOf(rows: readonly (readonly Stated[])[]): Promise<Uint8Array> {
  const book = new Workbook();
  const sheet = book.addWorksheet("Register", { views: [{ state: "frozen", xSplit: 0, ySplit: 1 }] });
  for (const row of rows) sheet.addRow(row.map(harmless));
  WIDTHS.forEach((width, column) => {
    sheet.getColumn(column + 1).width = width;
  });
  sheet.getRow(1).font = { bold: true };
  return new Uint8Array(await book.xlsx.writeBuffer());
}

/**
 * The register of checked files, one line each in their order.
 *
 * @param others Of each file, what speaks of another code than the first of its site, block and day
 */
export async function registerTable(
  files: readonly CheckedFile[],
  others: readonly string[] = otherCodes(files),
): Promise<Register> {
  const rows = [REGISTER_HEADINGS, ...files.map((file, index) => registerRow(file, others[index]))];
  return { xlsx: await xlsxOf(rows), rows };
}
