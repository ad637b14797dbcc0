import { AUDIT_SHEETS } from "../workbook/audit/audit";
import { planNewsSince } from "../workbook/earlier/earlier-sheets";
import type { SheetSpec } from "../workbook/form/sheet-spec";
import { NURSERY_SHEETS } from "../workbook/nursery/nursery-plan";
import type { FileBook } from "../xlsx/parts/workbook-file";
import { namedValue } from "./copy/evidence-rows";

/** A workbook with so many of the sheets of one kind is of that kind; a single one can be in any. */
export const FEWEST_SHEETS = 2;
const BOTH: readonly SheetSpec[] = [...AUDIT_SHEETS, ...NURSERY_SHEETS];

export function holdsSheets({ sheets }: Pick<FileBook, "sheets">, specs: readonly SheetSpec[]): boolean {
  return specs.filter((spec) => sheets.some(({ name }) => name === spec.name)).length >= FEWEST_SHEETS;
}

/** What is new since the version of a file's nursery plan; null where it is of the present one. */
export const planNews = (book: FileBook): string | null =>
  planNewsSince(String(namedValue(book, "Plan_Version") ?? ""));

export const holdsPlan = (book: Pick<FileBook, "sheets">): boolean => holdsSheets(book, NURSERY_SHEETS);

/** The sheets that a file is held against: the audit's, those of a nursery plan of this version, or both. */
export function knownSheets(book: FileBook): readonly SheetSpec[] {
  if (!holdsPlan(book) || planNews(book) !== null) return AUDIT_SHEETS;
  return holdsSheets(book, AUDIT_SHEETS) ? BOTH : NURSERY_SHEETS;
}
