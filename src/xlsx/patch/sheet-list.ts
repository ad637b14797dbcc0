import { type Edit, edited, tagEdit } from "../parts/edits";
import { escapedAttribute } from "../parts/escaped";
import { isMain, isRelations, RELATIONS, SPREADSHEET, XML_HEAD } from "../parts/namespaces";
import { folderOf, relationsOf, relationsPart, textOf } from "../parts/relations";
import { removeParts } from "../parts/remove-parts";
import { childOf, childrenOf, type XmlElement, xmlTree } from "../parts/xml-tree";
import { declareType, freePart, type Parts, relate, writePart } from "./write-part";

const SHEET_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";

const sheetsOf = (root: XmlElement): XmlElement => childOf(root, isMain, "sheets")!;
const entriesOf = (root: XmlElement): XmlElement[] => childrenOf(sheetsOf(root), isMain, "sheet");

/** The part of each listed sheet, in their order. */
function partsOfSheets(parts: Parts, main: string, root: XmlElement): string[] {
  const relations = relationsOf(parts, main);
  return entriesOf(root).map((one) => relations.find(({ id }) => id === one.spaced(isRelations, "id"))?.part ?? "");
}

/** The edits that lead names of a sheet and views to the new places of sheets; -1 where a sheet is gone. */
function movedEdits(root: XmlElement, place: (old: number) => number): Edit[] {
  const edits: Edit[] = [];
  for (const name of childrenOf(childOf(root, isMain, "definedNames"), isMain, "definedName")) {
    const local = name.given.get("localSheetId");
    if (local === undefined) continue;
    const to = place(Number(local));
    if (to < 0) edits.push({ start: name.start, end: name.end, text: "" });
    else if (to !== Number(local)) edits.push(tagEdit(name, { localSheetId: String(to) }));
  }
  for (const view of childrenOf(childOf(root, isMain, "bookViews"), isMain, "workbookView")) {
    const changes: Record<string, string> = {};
    for (const key of ["activeTab", "firstSheet"]) {
      const held = view.given.get(key);
      const to = String(Math.max(0, place(Number(held ?? 0))));
      if (held !== undefined && to !== held) changes[key] = to;
    }
    if (Object.keys(changes).length > 0) edits.push(tagEdit(view, changes));
  }
  return edits;
}

/** Puts the list of sheets in another order, by their parts; one that is not named goes with the one before it. */
export function orderSheets(parts: Parts, main: string, order: readonly string[]): void {
  const xml = textOf(parts, main);
  const root = xmlTree(xml);
  const entries = entriesOf(root);
  const there = partsOfSheets(parts, main, root);
  const slots = there.flatMap((part, i) => (order.includes(part) ? [i] : []));
  const wanted = order.filter((part) => there.includes(part)).map((part) => there.indexOf(part));
  const olds = entries.map((_, i) => i);
  slots.forEach((slot, i) => {
    olds[slot] = wanted[i]!;
  });
  if (olds.every((old, i) => old === i)) return;
  const edits = entries.map(({ start, end }, i) => {
    const { start: from, end: to } = entries[olds[i]!]!;
    return { start, end, text: xml.slice(from, to) };
  });
  writePart(parts, main, edited(xml, [...edits, ...movedEdits(root, (old) => olds.indexOf(old))]));
}

/** All parts that a part leads to, itself included. */
function reached(parts: Parts, from: string, found = new Set<string>()): Set<string> {
  for (const { part } of relationsOf(parts, from)) {
    if (part === "" || found.has(part)) continue;
    found.add(part);
    reached(parts, part, found);
  }
  return found;
}

/** Takes a sheet out, with its own names and all parts that only it led to; answers its name. */
export function deleteSheet(parts: Parts, main: string, sheet: string): string {
  const xml = textOf(parts, main);
  const root = xmlTree(xml);
  const index = partsOfSheets(parts, main, root).indexOf(sheet);
  const entry = entriesOf(root)[index];
  if (!entry) return "";
  const local = reached(parts, sheet);
  const place = (old: number) => (old === index ? -1 : old > index ? old - 1 : old);
  const edits = [{ start: entry.start, end: entry.end, text: "" }, ...movedEdits(root, place)];
  writePart(parts, main, edited(xml, edits));
  const before = new Set(parts.keys());
  removeParts(parts, main, ({ part }) => part === sheet);
  const kept = reached(parts, "");
  for (const part of local) {
    if (kept.has(part) || !before.has(part)) continue;
    parts.delete(part);
    parts.delete(relationsPart(part));
  }
  undeclare(parts);
  return entry.given.get("name") ?? "";
}

/** Takes out what is said of parts that are gone. */
function undeclare(parts: Parts): void {
  const xml = textOf(parts, "[Content_Types].xml");
  const gone = xmlTree(xml).children.filter(
    ({ name, given }) => name === "Override" && !parts.has((given.get("PartName") ?? "").slice(1)),
  );
  if (gone.length === 0) return;
  const edits = gone.map(({ start, end }) => ({ start, end, text: "" }));
  writePart(parts, "[Content_Types].xml", edited(xml, edits));
}

/** Lists a part as a sheet behind all others. */
export function listSheet(parts: Parts, main: string, name: string, part: string, state = ""): void {
  const id = relate(parts, main, "worksheet", part);
  declareType(parts, part, SHEET_TYPE);
  const xml = textOf(parts, main);
  const root = xmlTree(xml);
  const ids = entriesOf(root).map(({ given }) => Number(given.get("sheetId") ?? 0));
  const number = Math.max(0, ...ids.filter(Number.isFinite)) + 1;
  const shown = state === "" ? "" : ` state="${state}"`;
  const entry =
    `<${root.prefix}sheet xmlns:r="${RELATIONS}" name="${escapedAttribute(name)}" sheetId="${number}"` +
    `${shown} r:id="${id}"/>`;
  const list = sheetsOf(root);
  const edit =
    list.openEnd === list.end
      ? { start: list.start, end: list.end, text: `<${root.prefix}sheets>${entry}</${root.prefix}sheets>` }
      : { start: list.closeStart, end: list.closeStart, text: entry };
  writePart(parts, main, edited(xml, [edit]));
}

/** Adds an empty sheet; answers its part. */
export function newSheet(parts: Parts, main: string, name: string): string {
  const part = freePart(parts, `${folderOf(main)}worksheets/`, "sheet", "xml");
  writePart(parts, part, `${XML_HEAD}<worksheet xmlns="${SPREADSHEET}"><sheetData/></worksheet>`);
  listSheet(parts, main, name, part);
  return part;
}

/** Gives a sheet another name in the list of sheets; answers the old one. */
export function nameSheet(parts: Parts, main: string, sheet: string, name: string): string {
  const xml = textOf(parts, main);
  const root = xmlTree(xml);
  const entry = entriesOf(root)[partsOfSheets(parts, main, root).indexOf(sheet)]!;
  const old = entry.given.get("name") ?? "";
  if (old !== name) writePart(parts, main, edited(xml, [tagEdit(entry, { name })]));
  return old;
}
