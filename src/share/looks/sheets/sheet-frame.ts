import { textOf } from "../../../xlsx/parts/relations";
import type { BookSheet, FileBook } from "../../../xlsx/parts/workbook-file";
import { type XmlElement, xmlTree } from "../../../xlsx/parts/xml-tree";

/** A sheet's part but for its cells. */
export function sheetFrame({ parts }: Pick<FileBook, "parts">, { part, table }: BookSheet): XmlElement {
  const xml = textOf(parts, part);
  return xmlTree(table.openEnd === table.end ? xml : xml.slice(0, table.openEnd) + xml.slice(table.closeStart));
}
