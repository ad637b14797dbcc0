import { appendEdit, type Edit, edited, tagEdit } from "../parts/edits";
import { escapedAttribute } from "../parts/escaped";
import { isMain } from "../parts/namespaces";
import type { FilePackage } from "../parts/package";
import { onlyRelation, relationsOf, textOf } from "../parts/relations";
import { childOf, type XmlElement, xmlTree } from "../parts/xml-tree";
import { type Parts, writePart } from "./write-part";

const FIRST_OWN_FORMAT = 164;
/** The lists of a styles part in the order in which they must be. */
const LISTS = ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs"];

export interface NewNumbers {
  style(old: number): number;
  differential(old: number): number;
}

const stylesPart = (parts: Parts, main: string) => onlyRelation(relationsOf(parts, main), "styles")?.part;
const SAME: NewNumbers = { style: (old) => old, differential: (old) => old };

/** Adds all styles of another file to those that are there; answers their new numbers. */
export function importStyles(to: Parts, main: string, from: FilePackage): NewNumbers {
  const [part, other] = [stylesPart(to, main), stylesPart(from.parts, from.main)];
  if (part === undefined || other === undefined) return part === undefined ? { ...SAME, style: () => 0 } : SAME;
  const [xml, source] = [textOf(to, part), textOf(from.parts, other)];
  const [root, added] = [xmlTree(xml), xmlTree(source)];
  const listOf = (one: XmlElement, name: string) => childOf(one, isMain, name);
  const count = (name: string) => listOf(root, name)?.children.length ?? 0;
  const raw = ({ start, end }: XmlElement) => source.slice(start, end);
  const items = (name: string) => listOf(added, name)?.children ?? [];
  const formats = new Map<string, number>();
  const used = (listOf(root, "numFmts")?.children ?? []).map(({ given }) => Number(given.get("numFmtId") ?? 0));
  let format = Math.max(FIRST_OWN_FORMAT - 1, ...used);
  const texts: Record<string, string[]> = {
    numFmts: items("numFmts").map(({ given, prefix }) => {
      format += 1;
      formats.set(given.get("numFmtId") ?? "", format);
      return `<${prefix}numFmt numFmtId="${format}" formatCode="${escapedAttribute(given.get("formatCode") ?? "")}"/>`;
    }),
    cellXfs: items("cellXfs").map((xf) => {
      const changes: Record<string, string> = { xfId: "0" };
      for (const [key, list] of [
        ["fontId", "fonts"],
        ["fillId", "fills"],
        ["borderId", "borders"],
      ] as const) {
        changes[key] = String(Number(xf.given.get(key) ?? 0) + count(list));
      }
      const own = formats.get(xf.given.get("numFmtId") ?? "");
      if (own !== undefined) changes.numFmtId = String(own);
      const tag = tagEdit(xf, changes);
      return tag.text + source.slice(tag.end, xf.end);
    }),
  };
  for (const name of ["fonts", "fills", "borders", "dxfs"]) texts[name] = items(name).map(raw);
  writePart(
    to,
    part,
    edited(
      xml,
      LISTS.flatMap((name) => listEdits(xml, root, name, texts[name] ?? [])),
    ),
  );
  const [styles, looks] = [count("cellXfs"), count("dxfs")];
  return { style: (old) => old + styles, differential: (old) => old + looks };
}

function listEdits(xml: string, root: XmlElement, name: string, texts: string[]): Edit[] {
  if (texts.length === 0) return [];
  const list = childOf(root, isMain, name);
  const all = texts.join("");
  if (list && list.openEnd < list.end) {
    const total = String(list.children.length + texts.length);
    return [tagEdit(list, list.given.has("count") ? { count: total } : {}), appendEdit(xml, list, all)];
  }
  const text = `<${root.prefix}${name} count="${texts.length}">${all}</${root.prefix}${name}>`;
  if (list) return [{ start: list.start, end: list.end, text }];
  const before = root.children.filter(
    (one) => LISTS.indexOf(one.name) >= 0 && LISTS.indexOf(one.name) < LISTS.indexOf(name),
  );
  const at = before.at(-1)?.end ?? root.openEnd;
  return [{ start: at, end: at, text }];
}
