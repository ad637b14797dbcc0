import { isRelations } from "../parts/namespaces";
import { relationsOf, textOf } from "../parts/relations";
import { decoded } from "../parts/xml";
import { within, xmlTree } from "../parts/xml-tree";
import type { Parts } from "./write-part";

type Leaning = (part: string) => boolean;

/** The elements of a name in a part, by the value of one of their attributes. */
export const held = (parts: Parts, part: string, name: string, attribute: string): string[] =>
  [...within(xmlTree(decoded(parts.get(part)!)))].flatMap((one) =>
    one.name === name ? (one.given.get(attribute) ?? []) : [],
  );

/** What of a workbook reads a sheet other than by formulas, and has nothing to read once that is deleted, in words. */
export function leaningOn(parts: Parts, main: string, sheet: string): string[] {
  const all = relationsOf(parts, main).filter(({ part }) => parts.has(part));
  const link = all.find(({ part }) => part === sheet)?.id;
  const listed = [...within(xmlTree(textOf(parts, main)))].find((one) => one.spaced(isRelations, "id") === link);
  const [name = "", id = ""] = ["name", "sheetId"].map((one) => listed?.given.get(one));
  const tables = relationsOf(parts, sheet)
    .filter(({ kind, part }) => kind === "table" && parts.has(part))
    .map(({ part }) => xmlTree(decoded(parts.get(part)!)).given);
  const tableIds = tables.map((given) => given.get("id"));
  const tableNames = tables.map((given) => given.get("name")?.toLowerCase());
  const slicer: Leaning = (part) =>
    held(parts, part, "tableSlicerCache", "tableId").some((one) => tableIds.includes(one)) ||
    held(parts, part, "pivotTable", "tabId").includes(id);
  const pivot: Leaning = (part) =>
    held(parts, part, "worksheetSource", "sheet").some((one) => one.toLowerCase() === name.toLowerCase()) ||
    held(parts, part, "worksheetSource", "name").some((one) => tableNames.includes(one.toLowerCase()));
  const kinds: [end: RegExp, leans: Leaning, words: string][] = [
    [/\/slicerCache$/, slicer, "slicers"],
    [/\/timelineCache$/, slicer, "timelines"],
    [/\/pivotCacheDefinition$/, pivot, "pivot tables"],
  ];
  return kinds.flatMap(([end, leans, words]) =>
    all.some(({ type, part }) => end.test(type) && leans(part)) ? [words] : [],
  );
}
