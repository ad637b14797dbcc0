import { isReference, stringifyTokens, tokenize } from "@borgar/fx/xlsx";
import { placeName } from "../../cells/sheet-area";
import { type Edit, edited, tagEdit } from "../parts/edits";
import { escaped } from "../parts/escaped";
import { decoded } from "../parts/xml";
import { within, type XmlElement, xmlTree } from "../parts/xml-tree";
import { type Parts, writePart } from "./write-part";

/** Elements whose text is a formula or a reference, wherever they are. */
const FORMULAS = ["f", "formula", "formula1", "formula2", "definedName", "calculatedColumnFormula"];
/** Attributes that hold a reference, and those that hold the bare name of a sheet. */
const PLACES: Record<string, string> = { hyperlink: "location" };
const NAMES: Record<string, string> = { worksheetSource: "sheet", dataRef: "sheet" };

const sameName = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();

function renamedPrefix(value: string, from: string, to: string): string {
  const at = value.lastIndexOf("!");
  if (at < 0) return value;
  const given = value.slice(0, at);
  const plain = given.startsWith("'") ? given.slice(1, -1).replaceAll("''", "'") : given;
  return sameName(plain, from) ? placeName(to, value.slice(at + 1)) : value;
}

/** A formula that speaks of a sheet by its new name. */
export function renamedFormula(formula: string, from: string, to: string): string {
  if (!formula.toLowerCase().includes(from.toLowerCase().replaceAll("'", "''"))) return formula;
  const tokens = tokenize(formula, { withLocation: false, negativeNumbers: false });
  return stringifyTokens(
    tokens.map((token) => (isReference(token) ? { ...token, value: renamedPrefix(token.value, from, to) } : token)),
  );
}

function editsOf(element: XmlElement, from: string, to: string): Edit[] {
  const { name, given, text } = element;
  if (FORMULAS.includes(name) && element.children.length === 0 && text !== "") {
    const renamed = renamedFormula(text, from, to);
    return renamed === text ? [] : [{ start: element.openEnd, end: element.closeStart, text: escaped(renamed) }];
  }
  const place = PLACES[name];
  const held = place && given.get(place);
  if (place && held && renamedPrefix(held, from, to) !== held) {
    return [tagEdit(element, { [place]: renamedPrefix(held, from, to) })];
  }
  const bare = NAMES[name];
  return bare && sameName(given.get(bare) ?? "", from) ? [tagEdit(element, { [bare]: to })] : [];
}

/** Lets every part of a file speak of a sheet by its new name. */
export function renameReferences(parts: Parts, from: string, to: string): void {
  for (const [part, bytes] of [...parts]) {
    if (
      !part.endsWith(".xml") ||
      !/\/(workbook|worksheets|charts|chartex|drawings|pivotCache|tables)/i.test(`/${part}`)
    )
      continue;
    const xml = decoded(bytes);
    const edits = [...within(xmlTree(xml))].flatMap((one) => editsOf(one, from, to));
    if (edits.length > 0) writePart(parts, part, edited(xml, edits));
  }
}
