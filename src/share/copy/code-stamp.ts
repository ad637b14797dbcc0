import { cellAt } from "../../cells/places";
import { copyCodeSentence } from "../../workbook/audit/report/copy-code";
import type { Edit } from "../../xlsx/parts/edits";
import { escaped } from "../../xlsx/parts/escaped";
import { isMain } from "../../xlsx/parts/namespaces";
import { before } from "../../xlsx/parts/sheet-order";
import { type BookSheet, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { childOf, type XmlElement, xmlTree } from "../../xlsx/parts/xml-tree";
import { valueXml } from "./evidence-sheet";

const BEFORE = before("headerFooter");
const FOOTERS = ["oddFooter", "evenFooter", "firstFooter"];

/** A footer with the code in its middle. */
function withCode(footer: string, code: string): string {
  if (footer.includes("&CCanfall")) return footer.replace("&CCanfall", `&CCanfall ${code}`);
  return footer.includes("&C") ? footer.replace("&C", `&CCanfall ${code} `) : `${footer}&CCanfall ${code}`;
}

/** What puts the code at the foot of each printed page of a sheet whose table of cells is taken out. */
function footerEdits(xml: string, code: string): Edit[] {
  const root = xmlTree(xml);
  const paper = childOf(root, isMain, "headerFooter");
  const footers = paper?.children.filter(({ name }) => FOOTERS.includes(name)) ?? [];
  if (footers.length > 0) {
    return footers.map(({ openEnd, closeStart, text }) => ({
      start: openEnd,
      end: closeStart,
      text: escaped(withCode(text, code)),
    }));
  }
  const text = `<headerFooter><oddFooter>${escaped(withCode("", code))}</oddFooter></headerFooter>`;
  const { start, end } = paper ?? emptyBehind(root);
  return [{ start, end, text }];
}

/** The place of a footer in a sheet that has none. */
function emptyBehind(root: XmlElement) {
  const end = root.children.filter(({ name }) => BEFORE.includes(name)).at(-1)!.end; // at least the table of cells
  return { start: end, end };
}

/** What puts the code of a copy on its Report and at the foot of each page of a sheet, as edits of its part `xml`. */
export function codeEdits(book: FileBook, sheet: BookSheet, xml: string, code: string): Edit[] {
  const { openEnd, closeStart } = sheet.table;
  const cut = closeStart - openEnd;
  const behind = (at: number) => (at < openEnd ? at : at + cut);
  const footers = footerEdits(xml.slice(0, openEnd) + xml.slice(closeStart), code).map(({ start, end, text }) => ({
    start: behind(start),
    end: behind(end),
    text,
  }));
  const place = namedArea(book, "Copy_Code");
  const address = place?.sheet === sheet.name ? cellAt(place.top, place.left) : "";
  const cell = sheet.cells.get(address);
  if (!cell) return footers;
  const style = cell.given.get("s");
  const text = valueXml(address, style === undefined ? "" : ` s="${escaped(style)}"`, copyCodeSentence(code));
  return [{ start: cell.start, end: cell.end, text }, ...footers];
}
