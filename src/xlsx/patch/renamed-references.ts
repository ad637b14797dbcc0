import { isReference, stringifyTokens, tokenize } from "@borgar/fx/xlsx";
import { placeName } from "../../cells/sheet-area";
import { type Edit, edited, tagEdit } from "../parts/edits";
import { escaped } from "../parts/escaped";
import { isRelations } from "../parts/namespaces";
import { decoded } from "../parts/xml";
import { within, type XmlElement, xmlTree } from "../parts/xml-tree";
import { relinkShapes } from "./shape-links";
import { bareSheet, holdsFormula, isLink, speaksOfCells, withOldFormulas } from "./speaking";
import { type Parts, writePart } from "./write-part";

/** The new name of each renamed sheet by its old one in small letters; null where the sheet is gone. */
export type Renames = ReadonlyMap<string, string | null>;

const GONE = "#REF!";

function renamedPrefix(value: string, renames: Renames): string {
  const at = value.lastIndexOf("!");
  if (at < 0) return value;
  const given = value.slice(0, at);
  const plain = given.startsWith("'") ? given.slice(1, -1).replaceAll("''", "'") : given;
  const rest = value.slice(at + 1);
  const to = renames.get(plain.toLowerCase());
  if (to === null) return GONE + rest;
  if (to !== undefined) return placeName(to, rest);
  const ends = plain.split(":"); // the first and the last of several sheets
  const renamed = ends.map((one) => renames.get(one.toLowerCase()) ?? one).join(":");
  return ends.length < 2 || renamed === plain ? value : `'${renamed.replaceAll("'", "''")}'!${rest}`;
}

/** A formula that speaks of sheets by their new names. */
export function renamedFormula(formula: string, renames: Renames): string {
  const small = formula.toLowerCase();
  if (![...renames.keys()].some((from) => small.includes(from.replaceAll("'", "''")))) return formula;
  const tokens = tokenize(formula, { withLocation: false, negativeNumbers: false });
  const renamed = tokens.map((token) =>
    isReference(token) ? { ...token, value: renamedPrefix(token.value, renames) } : token,
  );
  return renamed.every(({ value }, i) => value === tokens[i]!.value) ? formula : stringifyTokens(renamed);
}

/** A chart of a pivot table names it as `[file.xlsx]Sheet!Table`. */
function pivotName(element: XmlElement | undefined, renames: Renames): Edit[] {
  const [, file = "", sheet = "", table = ""] = /^(\[[^\]]*\])?(.*)(![^!]*)$/.exec(element?.text ?? "") ?? [];
  const to = renames.get(sheet.toLowerCase());
  if (!element || !to) return [];
  return [{ start: element.openEnd, end: element.closeStart, text: escaped(file + to + table) }];
}

function editsOf(element: XmlElement, renames: Renames): Edit[] {
  if (element.name === "pivotSource") {
    return pivotName(
      element.children.find(({ name }) => name === "name"),
      renames,
    );
  }
  if (holdsFormula(element)) {
    const renamed = renamedFormula(element.text, renames);
    return renamed === element.text
      ? []
      : [{ start: element.openEnd, end: element.closeStart, text: escaped(renamed) }];
  }
  const changes: Record<string, string> = {};
  for (const [name, held] of element.given) {
    const ownLocation =
      element.name === "hyperlink" && name === "location" && element.spaced(isRelations, "id") === undefined;
    if (ownLocation || isLink(element, name, held)) changes[name] = renamedFormula(held, renames);
  }
  const bare = bareSheet(element);
  const to = bare === undefined ? undefined : renames.get(bare.toLowerCase());
  if (to) changes.sheet = to;
  return Object.entries(changes).some(([name, value]) => element.given.get(name) !== value)
    ? [tagEdit(element, changes)]
    : [];
}

/** Lets every part of a file speak of renamed sheets by their new names, and of deleted ones as gone. */
export function renameReferences(parts: Parts, renames: Renames): void {
  for (const [part, bytes] of [...parts]) {
    if (/\.vml$/i.test(part)) {
      const vml = decoded(bytes);
      const renamed = withOldFormulas(vml, (formula) => renamedFormula(formula, renames));
      if (renamed !== vml) writePart(parts, part, renamed);
    }
    if (!speaksOfCells(part, bytes)) continue;
    const xml = decoded(bytes);
    const root = xmlTree(xml);
    const edits = [root, ...within(root)].flatMap((one) => editsOf(one, renames));
    if (edits.length > 0) writePart(parts, part, edited(xml, edits));
  }
  relinkShapes(parts, (formula) => renamedFormula(formula, renames));
}
