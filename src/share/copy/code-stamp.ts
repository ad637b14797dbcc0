import { cellAt } from "../../cells/places";
import { copyCodeSentence } from "../../workbook/audit/report/copy-code";
import { edited, insertedBehind } from "../../xlsx/parts/edits";
import { escaped } from "../../xlsx/parts/escaped";
import { isMain } from "../../xlsx/parts/namespaces";
import { textOf } from "../../xlsx/parts/relations";
import { sheetContent } from "../../xlsx/parts/sheet-cells";
import { before } from "../../xlsx/parts/sheet-order";
import { type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { childOf, xmlTree } from "../../xlsx/parts/xml-tree";
import { valueXml } from "./evidence-sheet";

const BEFORE = before("headerFooter");
const FOOTERS = ["oddFooter", "evenFooter", "firstFooter"];

/** A footer with the code in its middle. */
function withCode(footer: string, code: string): string {
  if (footer.includes("&CCanfall")) return footer.replace("&CCanfall", `&CCanfall ${code}`);
  return footer.includes("&C") ? footer.replace("&C", `&CCanfall ${code} `) : `${footer}&CCanfall ${code}`;
}

/** A sheet's part with the code at the foot of each printed page. */
function stamped(xml: string, code: string): string {
  const root = xmlTree(xml, (name) => name === "sheetData");
  const paper = childOf(root, isMain, "headerFooter");
  const footers = paper?.children.filter(({ name }) => FOOTERS.includes(name)) ?? [];
  if (footers.length > 0) {
    return edited(
      xml,
      footers.map(({ openEnd, closeStart, text }) => ({
        start: openEnd,
        end: closeStart,
        text: escaped(withCode(text, code)),
      })),
    );
  }
  const footer = `<oddFooter>${escaped(withCode("", code))}</oddFooter>`;
  if (!paper) return insertedBehind(xml, BEFORE, `<headerFooter>${footer}</headerFooter>`);
  return edited(xml, [{ start: paper.start, end: paper.end, text: `<headerFooter>${footer}</headerFooter>` }]);
}

/** Puts the code of a copy on its Report and at the foot of each of its pages. */
export function stampCode(book: FileBook, code: string): void {
  const write = (part: string, xml: string) => book.parts.set(part, new TextEncoder().encode(xml));
  const place = namedArea(book, "Copy_Code");
  const report = place && book.sheets.find(({ name }) => name === place.sheet);
  if (report) {
    const address = cellAt(place.top, place.left);
    const xml = textOf(book.parts, report.part);
    const cell = sheetContent(xml, book.texts).cells.get(address);
    if (cell) {
      const style = cell.given.get("s");
      const text = valueXml(address, style === undefined ? "" : ` s="${escaped(style)}"`, copyCodeSentence(code));
      write(report.part, edited(xml, [{ start: cell.start, end: cell.end, text }]));
    }
  }
  for (const { part } of book.sheets) write(part, stamped(textOf(book.parts, part), code));
}
