import { type Edit, edited, tagEdit } from "../parts/edits";
import { escaped, escapedAttribute } from "../parts/escaped";
import { isMain } from "../parts/namespaces";
import type { FilePackage } from "../parts/package";
import { onlyRelation, relationsOf, relationsPart, textOf } from "../parts/relations";
import { attributesOf, readXml } from "../parts/xml";
import { childOf, childrenOf, type XmlElement, xmlTree } from "../parts/xml-tree";
import { importStyles } from "./import-styles";
import { appendNames } from "./names";
import { listSheet } from "./sheet-list";
import { declareType, freePart, type Parts, typeOf, writePart } from "./write-part";

/** What a sheet's part speaks of by numbers that are others in another file. */
interface Numbers {
  style(old: number): number;
  differential(old: number): number;
  /** The content of a shared text, as xml. */
  text(index: number): string;
  dynamic(): number;
}

/** Copies a part and all that it leads to under free names; answers the new name. */
function copied(to: Parts, from: FilePackage, part: string, names: Map<string, string>): string {
  const known = names.get(part);
  if (known !== undefined) return known;
  const [, folder, base, extension] = /^(.*)\/([^/]*?)\d*\.([^.]+)$/.exec(part) ?? [null, "xl", "part", "xml"];
  const fresh = freePart(to, folder!, base!, extension!);
  names.set(part, fresh);
  to.set(fresh, from.parts.get(part)!);
  const type = typeOf(from.parts, part);
  if (type) declareType(to, fresh, type.type);
  const rels = from.parts.get(relationsPart(part));
  if (!rels) return fresh;
  const xml = textOf(from.parts, relationsPart(part));
  const targets = new Map(relationsOf(from.parts, part).map(({ id, part: target }) => [id, target]));
  const edits = xmlTree(xml).children.flatMap((relation): Edit[] => {
    const target = targets.get(relation.given.get("Id") ?? "") ?? "";
    if (target === "" || !from.parts.has(target)) return [];
    return [tagEdit(relation, { Target: `/${copied(to, from, target, names)}` })];
  });
  writePart(to, relationsPart(fresh), edited(xml, edits));
  return fresh;
}

/** A sheet's part with the numbers of another file. */
function renumbered(xml: string, numbers: Numbers): string {
  const edits: Edit[] = [];
  const root = xmlTree(xml, (name) => name === "sheetData");
  for (const view of childrenOf(childOf(root, isMain, "sheetViews"), isMain, "sheetView")) {
    if (view.given.has("tabSelected")) edits.push(tagEdit(view, { tabSelected: null }));
  }
  for (const col of childrenOf(childOf(root, isMain, "cols"), isMain, "col")) {
    const style = col.given.get("style");
    if (style !== undefined) edits.push(tagEdit(col, { style: String(numbers.style(Number(style))) }));
  }
  for (const format of childrenOf(root, isMain, "conditionalFormatting")) {
    for (const rule of childrenOf(format, isMain, "cfRule")) {
      const look = rule.given.get("dxfId");
      if (look !== undefined) edits.push(tagEdit(rule, { dxfId: String(numbers.differential(Number(look))) }));
    }
  }
  edits.push(...cellEdits(xml, root, numbers));
  return edited(xml, edits);
}

function cellEdits(xml: string, root: XmlElement, numbers: Numbers): Edit[] {
  const { openEnd = 0, end = 0 } = childOf(root, isMain, "sheetData") ?? {};
  const edits: Edit[] = [];
  let shared = false;
  let value = "";
  let from = 0;
  readXml(xml, {
    open(tag, start, tagEnd) {
      if (start < openEnd || start >= end || !isMain(tag.uri)) return;
      if (tag.local === "v") {
        from = start;
        value = "";
      }
      if (tag.local !== "c" && tag.local !== "row") return;
      const given = attributesOf(tag);
      const style = given.get("s");
      shared = tag.local === "c" && given.get("t") === "s";
      if (style === undefined && !shared && !given.has("cm") && !given.has("vm")) return;
      const all = new Map(Object.values(tag.attributes).map((one) => [one.name, one.value]));
      if (style !== undefined) all.set("s", String(numbers.style(Number(style))));
      if (shared) all.set("t", "inlineStr");
      if (given.has("cm")) all.set("cm", String(numbers.dynamic()));
      all.delete("vm");
      const attributes = [...all].map(([name, one]) => ` ${name}="${escapedAttribute(one)}"`).join("");
      edits.push({ start, end: tagEnd, text: `<${tag.name}${attributes}${tag.isSelfClosing ? "/>" : ">"}` });
    },
    text(text) {
      value += text;
    },
    close(tag, _, closeEnd) {
      if (tag.local !== "v" || !shared || from < openEnd || from >= end) return;
      const is = tag.name.replace(/v$/, "is");
      edits.push({ start: from, end: closeEnd, text: `<${is}>${numbers.text(Number(value))}</${is}>` });
      shared = false;
    },
  });
  return edits;
}

/** The content of each shared text of a file, as xml. */
function sharedTexts({ parts, relations }: FilePackage): string[] {
  const part = onlyRelation(relations, "sharedStrings")?.part;
  if (part === undefined) return [];
  const xml = textOf(parts, part);
  return childrenOf(xmlTree(xml), isMain, "si").map(({ children }) =>
    children.map(({ start, end }) => xml.slice(start, end)).join(""),
  );
}

/** Adds all sheets of another file behind those that are there, with its names; answers the new part of each old one. */
export function importSheets(to: Parts, main: string, from: FilePackage, dynamic: () => number): Map<string, string> {
  const { style, differential } = importStyles(to, main, from);
  const texts = sharedTexts(from);
  const numbers: Numbers = { style, differential, dynamic, text: (index) => texts[index] ?? "" };
  const names = new Map<string, string>();
  const there = xmlTree(textOf(to, main));
  const first = childrenOf(childOf(there, isMain, "sheets"), isMain, "sheet").length;
  const sheets = from.sheets.filter(({ kind }) => kind === "worksheet");
  for (const { part, name, element } of sheets) {
    const fresh = copied(to, from, part, names);
    writePart(to, fresh, renumbered(textOf(to, fresh), numbers));
    listSheet(to, main, name, fresh, element.given.get("state") ?? "");
  }
  const texted = from.names.flatMap(({ text, local, element }) => {
    const place = local === undefined ? undefined : sheets.findIndex(({ part }) => part === from.sheets[local]?.part);
    if (place === -1) return [];
    const raw = new Map(element.raw);
    if (place !== undefined) raw.set("localSheetId", String(first + place));
    const attributes = [...raw].map(([key, value]) => ` ${key}="${escapedAttribute(value)}"`).join("");
    return [{ attributes, text: escaped(text) }];
  });
  appendNames(to, main, texted);
  return names;
}
