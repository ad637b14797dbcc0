import { textOf } from "../parts/relations";
import { decoded } from "../parts/xml";
import { xmlTree } from "../parts/xml-tree";
import { type Parts, writePart } from "./write-part";

const USUAL = "http://schemas.openxmlformats.org";
const STRICT = "http://purl.oclc.org/ooxml";

/** Each name of the usual form with that of the strict form of the standard. */
const FORMS = [
  ["spreadsheetml/2006/main", "spreadsheetml/main"],
  ["officeDocument/2006/relationships", "officeDocument/relationships"],
  ["drawingml/2006/main", "drawingml/main"],
  ["drawingml/2006/spreadsheetDrawing", "drawingml/spreadsheetDrawing"],
  ["drawingml/2006/chart", "drawingml/chart"],
].map(([usual, strict]): [string, string] => [`${USUAL}/${usual}`, `${STRICT}/${strict}`]);

/** Puts what was written into a file of the strict form into that form too: programs refuse a mixture. */
export function keepStrict(parts: Parts, main: string, opened: ReadonlyMap<string, Uint8Array>): void {
  if (!xmlTree(textOf(parts, main)).space.startsWith(STRICT)) return;
  for (const [part, bytes] of [...parts]) {
    if (opened.get(part) === bytes || !/\.(xml|rels)$/i.test(part)) continue;
    const text = decoded(bytes);
    const strict = FORMS.reduce((all, [from, to]) => all.replaceAll(from, to), text);
    if (strict !== text) writePart(parts, part, strict);
  }
}
