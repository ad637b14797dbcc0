import { type Edit, edited } from "../parts/edits";
import { isMain, isRelations } from "../parts/namespaces";
import { relationsOf, textOf } from "../parts/relations";
import { removeParts } from "../parts/remove-parts";
import { childOf, childrenOf, within, type XmlElement, xmlTree } from "../parts/xml-tree";
import { held } from "./leaning";
import { type Parts, writePart } from "./write-part";

const CACHE = /\/(slicer|timeline)Cache$/;
const SHOWING = /\/(slicer|timeline)$/;

const isEmptied = (element: XmlElement, gone: ReadonlySet<XmlElement>): boolean =>
  element.children.length > 0 && element.children.every((one) => gone.has(one) || isEmptied(one, gone));

/** The edits that take elements out, and those around them that hold nothing else; not `root` itself. */
function without(root: XmlElement, unwanted: (element: XmlElement) => boolean): Edit[] {
  const gone = new Set([...within(root)].filter(unwanted));
  const outer = (element: XmlElement): Edit[] =>
    element.children.flatMap((one) =>
      gone.has(one) || isEmptied(one, gone) ? [{ start: one.start, end: one.end, text: "" }] : outer(one),
    );
  return gone.size === 0 ? [] : outer(root);
}

function takeOut(parts: Parts, part: string, unwanted: (element: XmlElement) => boolean): void {
  const xml = textOf(parts, part);
  const edits = without(
    xmlTree(xml, (name) => name === "sheetData"),
    unwanted,
  );
  if (edits.length > 0) writePart(parts, part, edited(xml, edits));
}

/** The caches of slicers and timelines whose table or pivot table went with a sheet, by the ids of their relations. */
function lostCaches(parts: Parts, main: string): { id: string; part: string; name: string }[] {
  const all = relationsOf(parts, main).filter(({ part }) => parts.has(part));
  const sheets = childrenOf(childOf(xmlTree(textOf(parts, main)), isMain, "sheets"), isMain, "sheet");
  const sheetIds = new Set(sheets.map(({ given }) => given.get("sheetId")));
  const tables = all
    .filter(({ kind }) => kind === "worksheet")
    .flatMap(({ part }) =>
      relationsOf(parts, part).filter(({ kind, part: table }) => kind === "table" && parts.has(table)),
    );
  const tableIds = new Set(tables.map(({ part }) => xmlTree(textOf(parts, part)).given.get("id")));
  return all
    .filter(({ type }) => CACHE.test(type))
    .flatMap(({ id, part }) => {
      const ofTables = held(parts, part, "tableSlicerCache", "tableId");
      const ofPivots = held(parts, part, "pivotTable", "tabId");
      const lost = (ids: string[], there: ReadonlySet<string | undefined>) =>
        ids.length > 0 && !ids.some((one) => there.has(one));
      if (!lost(ofTables, tableIds) && !lost(ofPivots, sheetIds)) return [];
      return [{ id, part, name: xmlTree(textOf(parts, part)).given.get("name") ?? "" }];
    });
}

/** Takes what shows a cache off a sheet: the slicer, and its shape in the drawing. */
function takeOffSheet(parts: Parts, sheet: string, caches: ReadonlySet<string>): void {
  const shapes = new Set<string>();
  const isOfCache = ({ given }: XmlElement) => caches.has(given.get("cache") ?? "");
  for (const { id, type, part } of relationsOf(parts, sheet)) {
    if (!SHOWING.test(type) || !parts.has(part)) continue;
    const { children } = xmlTree(textOf(parts, part));
    for (const one of children.filter(isOfCache)) shapes.add(one.given.get("name") ?? "");
    if (!children.every(isOfCache)) takeOut(parts, part, isOfCache);
    else {
      takeOut(parts, sheet, (one) => one.spaced(isRelations, "id") === id);
      removeParts(parts, sheet, (relation) => relation.id === id);
    }
  }
  if (shapes.size === 0) return;
  for (const { kind, part } of relationsOf(parts, sheet)) {
    if (kind !== "drawing" || !parts.has(part)) continue;
    const anchors = xmlTree(textOf(parts, part)).children.filter((anchor) =>
      [...within(anchor)].some(
        ({ name, given }) => /^(slicer|timeslicer)$/.test(name) && shapes.has(given.get("name") ?? ""),
      ),
    );
    const edits = anchors.map(({ start, end }) => ({ start, end, text: "" }));
    writePart(parts, part, edited(textOf(parts, part), edits));
  }
}

/** Takes out slicers and timelines that have nothing to choose from any more, since a sheet was deleted. */
export function removeLostSlicers(parts: Parts, main: string): void {
  const lost = lostCaches(parts, main);
  if (lost.length === 0) return;
  const names = new Set(lost.map(({ name }) => name));
  for (const { kind, part } of relationsOf(parts, main)) {
    if (kind === "worksheet" && parts.has(part)) takeOffSheet(parts, part, names);
  }
  const ids = new Set(lost.map(({ id }) => id));
  takeOut(
    parts,
    main,
    (one) =>
      ids.has(one.spaced(isRelations, "id") ?? "") ||
      (one.name === "definedName" && names.has(one.given.get("name") ?? "")),
  );
  removeParts(parts, main, ({ id }) => ids.has(id));
}
