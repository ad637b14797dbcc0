import type { SheetArea } from "../../cells/sheet-area";
import { absolute } from "../../cells/sheet-area";
import { appended, insertedBehind, mustAppend } from "./edits";
import { escaped } from "./escaped";
import { RELATIONS } from "./namespaces";
import { relationsOf, relationsPart, textOf } from "./relations";
import type { FileBook } from "./workbook-file";
import { within, xmlTree } from "./xml-tree";

const SHEET_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";

/** The first of `prefix1`, `prefix2`, … that is not taken. */
function free(prefix: string, taken: ReadonlySet<string>, suffix = ""): string {
  let number = 1;
  while (taken.has(`${prefix}${number}${suffix}`)) number += 1;
  return `${prefix}${number}${suffix}`;
}

function highestSheetId(xml: string): number {
  const ids = [...within(xmlTree(xml))].filter(({ name }) => name === "sheet").map(({ given }) => given.get("sheetId"));
  return Math.max(0, ...ids.map(Number).filter(Number.isFinite));
}

function withNames(xml: string, names: ReadonlyMap<string, SheetArea>): string {
  const defined = [...names].map(
    ([name, area]) => `<definedName name="${name}">${escaped(absolute(area))}</definedName>`,
  );
  const longer = appended(xml, "definedNames", defined.join(""));
  if (longer) return longer;
  const before = ["sheets", "functionGroups", "externalReferences"];
  return insertedBehind(xml, before, `<definedNames>${defined.join("")}</definedNames>`);
}

/** Puts a sheet behind all others of a workbook, with its defined names. */
export function addSheet(
  { parts, main }: Pick<FileBook, "parts" | "main">,
  name: string,
  sheet: string,
  names: ReadonlyMap<string, SheetArea>,
): void {
  const relations = relationsOf(parts, main);
  const id = free("rId", new Set(relations.map((relation) => relation.id)));
  const folder = main.slice(0, main.lastIndexOf("/") + 1);
  const part = free(`${folder}worksheets/sheet`, new Set(parts.keys()), ".xml");
  const write = (to: string, text: string) => parts.set(to, new TextEncoder().encode(text));
  const book = textOf(parts, main);
  const listed = `<sheet xmlns:r="${RELATIONS}" name="${escaped(name)}" sheetId="${highestSheetId(book) + 1}" r:id="${id}"/>`;
  write(main, withNames(mustAppend(book, "sheets", listed), names));
  const relation = `<Relationship Id="${id}" Type="${RELATIONS}/worksheet" Target="${part.slice(folder.length)}"/>`;
  write(relationsPart(main), mustAppend(textOf(parts, relationsPart(main)), "Relationships", relation));
  const type = `<Override PartName="/${part}" ContentType="${SHEET_TYPE}"/>`;
  write("[Content_Types].xml", mustAppend(textOf(parts, "[Content_Types].xml"), "Types", type));
  write(part, sheet);
}
