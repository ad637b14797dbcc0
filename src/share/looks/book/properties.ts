import { relationsOf, textOf } from "../../../xlsx/parts/relations";
import type { FileBook } from "../../../xlsx/parts/workbook-file";
import { within, type XmlElement, xmlTree } from "../../../xlsx/parts/xml-tree";
import { added, type Finding, misleading } from "../../finding";
import { shortened } from "../../shortened";
import { CODE } from "../sheets/footers";

const FILE = "the file";
const PROPERTIES = /\/(core-properties|extended-properties|custom-properties)$/;
/** What programs show of a file beside its name; the workbook leaves these blank. */
const SHOWN = ["title", "subject", "description", "keywords", "category", "contentStatus", "HyperlinkBase"];
const MARKED_AS_FINAL = "_MarkAsFinal";

const isFinal = ({ name, given }: XmlElement) => name === "property" && given.get("name") === MARKED_AS_FINAL;

/** Words, and the code of another copy, in what a file says of itself outside its sheets. */
export function propertyFindings({ parts }: FileBook, code: string): Finding[] {
  const all = relationsOf(parts, "")
    .filter(({ type, part }) => PROPERTIES.test(type) && parts.has(part))
    .flatMap(({ part }) => [...within(xmlTree(textOf(parts, part)))]);
  const codes = all.flatMap(({ text }) => CODE.exec(text)?.slice(0, 1) ?? []);
  const other = code === "" ? undefined : codes.find((one) => one !== code);
  const words = all.filter(({ name, text }) => SHOWN.includes(name) && text.trim() !== "" && text.trim() !== code);
  return [
    ...(other ? [misleading(FILE, `its properties have the code ${other} of another copy`, code, other)] : []),
    ...words.map(({ name, text }) => added(FILE, `its property ${name} says "${shortened(text.trim(), 60)}"`)),
    ...(all.some(isFinal) ? [added(FILE, "is marked as final, which anybody can do")] : []),
  ];
}
