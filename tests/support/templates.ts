import { AUDIT_SHEETS } from "../../src/workbook/audit";
import { buildWorkbook, type Entries } from "../../src/workbook/build";
import { EXAMPLE_ENTRIES } from "../../src/workbook/example";
import { formulaResults } from "./formula-results";
import { converted } from "./libreoffice";

/** The workbooks that are handed out, by file name. */
export const TEMPLATES: Readonly<Record<string, Entries>> = {
  "block-audit.xlsx": {},
  "example-audit.xlsx": EXAMPLE_ENTRIES,
};

/** The files of audits, with what LibreOffice makes of their formulas. */
export async function calculatedAudits(all: readonly Entries[]): Promise<Uint8Array[]> {
  const files: Uint8Array[] = [];
  for (const entries of all) files.push(await buildWorkbook(AUDIT_SHEETS, entries));
  const calculated = await converted(files, "xlsx");
  const finished: Uint8Array[] = [];
  for (const [index, entries] of all.entries()) {
    finished.push(await buildWorkbook(AUDIT_SHEETS, entries, await formulaResults(calculated[index]!)));
  }
  return finished;
}
