import { cellAt } from "../../cells/places";
import type { Stated } from "../../cells/stated";
import { escaped } from "../../xlsx/parts/escaped";
import { SPREADSHEET, XML_HEAD } from "../../xlsx/parts/namespaces";
import type { EvidenceLooks } from "./evidence-looks";
import type { EvidenceRow } from "./evidence-rows";

export const WIDTHS = [26, 40, 44, 16, 30, 26];
/** Looks whose rows hold one sentence across all columns. */
const ACROSS: readonly (keyof EvidenceLooks)[] = ["title", "text"];
const ALL_WIDTHS = WIDTHS.reduce((sum, width) => sum + width);
const POINTS_A_LINE = 12.5;
const TITLE_POINTS = 26;

export const isAcross = ({ look, cells }: EvidenceRow) => cells.length === 1 && ACROSS.includes(look);

export function rowHeight(row: EvidenceRow): number {
  if (row.look === "title") return TITLE_POINTS;
  const lines = row.cells.map((value, i) => {
    return Math.ceil(String(value ?? "").length / (isAcross(row) ? ALL_WIDTHS : WIDTHS[i]!));
  });
  return POINTS_A_LINE * Math.max(1, ...lines) + 2;
}

/** The tag of a cell's content; `s` is its style. */
export function valueXml(address: string, given: string, value: Stated, formula = ""): string {
  const open = `<c r="${address}"${given}`;
  if (typeof value === "number") return `${open}>${formula}<v>${value}</v></c>`;
  if (typeof value === "boolean") return `${open} t="b">${formula}<v>${value ? 1 : 0}</v></c>`;
  if (value === null) return formula === "" ? `${open}/>` : `${open}>${formula}</c>`;
  if (formula !== "") return `${open} t="str">${formula}<v>${escaped(value)}</v></c>`;
  return `${open} t="inlineStr"><is><t xml:space="preserve">${escaped(value)}</t></is></c>`;
}

function rowXml(row: EvidenceRow, number: number, style: number): string {
  const content = row.cells.map((value, i) =>
    value === null ? "" : valueXml(cellAt(number, i + 1), ` s="${style}"`, value),
  );
  return `<row r="${number}" ht="${rowHeight(row)}" customHeight="1">${content.join("")}</row>`;
}

/** The Evidence sheet as a part of a workbook: protected without a password, one page wide in print. */
export function evidenceXml(rows: readonly EvidenceRow[], looks: EvidenceLooks, code: string): string {
  const columns = WIDTHS.map((width, i) => `<col min="${i + 1}" max="${i + 1}" width="${width}" customWidth="1"/>`);
  const body = rows.map((row, i) => rowXml(row, i + 1, looks[row.look]));
  const merged = rows.flatMap((row, i) => (isAcross(row) ? [`<mergeCell ref="A${i + 1}:F${i + 1}"/>`] : []));
  return (
    `${XML_HEAD}<worksheet xmlns="${SPREADSHEET}">` +
    `<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><dimension ref="A1:F${rows.length}"/>` +
    '<sheetViews><sheetView showGridLines="0" workbookViewId="0"/></sheetViews><sheetFormatPr defaultRowHeight="15"/>' +
    `<cols>${columns.join("")}</cols><sheetData>${body.join("")}</sheetData>` +
    '<sheetProtection sheet="1" formatColumns="0" formatRows="0"/>' +
    `<mergeCells count="${merged.length}">${merged.join("")}</mergeCells>` +
    '<pageMargins left="0.5" right="0.5" top="0.5" bottom="0.7" header="0.3" footer="0.3"/>' +
    '<pageSetup paperSize="9" orientation="landscape" fitToHeight="0"/>' +
    `<headerFooter><oddFooter>&amp;L&amp;A&amp;CCanfall ${code}&amp;RPage &amp;P of &amp;N</oddFooter></headerFooter></worksheet>`
  );
}
