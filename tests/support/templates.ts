import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { buildWorkbook, type Entries } from "../../src/workbook/form/build";
import type { SheetSpec } from "../../src/workbook/form/sheet-spec";
import { NURSERY_EXAMPLE } from "../../src/workbook/nursery/examples/nursery";
import { NURSERY_SHEETS } from "../../src/workbook/nursery/nursery-plan";
import { formulaResults } from "./formula-results";
import { converted } from "./libreoffice";

/** What a workbook is built from. */
export interface Template {
  sheets: readonly SheetSpec[];
  entries: Entries;
}

/** The workbooks that are handed out, by file name. */
export const TEMPLATES: Readonly<Record<string, Template>> = {
  "block-audit.xlsx": { sheets: AUDIT_SHEETS, entries: {} },
  "example-audit.xlsx": { sheets: AUDIT_SHEETS, entries: EXAMPLE_ENTRIES },
  "nursery-plan.xlsx": { sheets: NURSERY_SHEETS, entries: {} },
  "example-nursery.xlsx": { sheets: NURSERY_SHEETS, entries: NURSERY_EXAMPLE },
};

/** The files of workbooks, with what LibreOffice makes of their formulas. */
export async function calculatedBooks(all: readonly Template[]): Promise<Uint8Array[]> {
  const files: Uint8Array[] = [];
  for (const { sheets, entries } of all) files.push(await buildWorkbook(sheets, entries));
  const calculated = await converted(files, "xlsx");
  const finished: Uint8Array[] = [];
  for (const [index, { sheets, entries }] of all.entries()) {
    finished.push(await buildWorkbook(sheets, entries, formulaResults(calculated[index]!)));
  }
  return finished;
}

/** The files of audits, with what LibreOffice makes of their formulas. */
export const calculatedAudits = (all: readonly Entries[]): Promise<Uint8Array[]> =>
  calculatedBooks(all.map((entries) => ({ sheets: AUDIT_SHEETS, entries })));
