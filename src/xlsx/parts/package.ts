import { InputError } from "../../core/errors";
import { CONTENT_TYPES_SPACE, isMain, isRelations } from "./namespaces";
import { onlyRelation, plainItems, type Relation, relationsOf, relationsPart, textOf } from "./relations";
import { unzipped, WORKBOOK_TYPE } from "./safe-file";
import { decoded, readXml } from "./xml";
import { childrenOf, type XmlElement, xmlTree } from "./xml-tree";

/** A sheet as the workbook's part lists it. */
export interface ListedSheet {
  name: string;
  /** Number that stays with the sheet. */
  sheetId: string;
  /** `worksheet`, or another kind such as `chartsheet`. */
  kind: string;
  part: string;
  element: XmlElement;
}

export interface DefinedName {
  name: string;
  text: string;
  /** Place of the sheet that it belongs to, from 0; undefined for the whole workbook. */
  local: number | undefined;
  element: XmlElement;
}

/** A workbook file taken apart, before any cell is read. */
export interface FilePackage {
  parts: Map<string, Uint8Array>;
  /** The part that lists the sheets. */
  main: string;
  workbook: XmlElement;
  relations: Relation[];
  sheets: ListedSheet[];
  names: DefinedName[];
}

const MOST_SHEETS = 255;
const SHEET_KINDS = ["worksheet", "chartsheet", "dialogsheet", "xlMacrosheet", "xlIntlMacrosheet"];
const CONTENT_TYPES = "[Content_Types].xml";
const SHEET_CONTENT = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const CONTENT_OF: Readonly<Record<string, string>> = {
  worksheet: `${SHEET_CONTENT}.worksheet+xml`,
  styles: `${SHEET_CONTENT}.styles+xml`,
  sharedStrings: `${SHEET_CONTENT}.sharedStrings+xml`,
};

/** The kind of content of each part that the file gives one, of its own or, where that says something, by its extension. */
function contentTypes(parts: ReadonlyMap<string, Uint8Array>): ReadonlyMap<string, string> {
  const types = new Map<string, string>();
  const root = xmlTree(textOf(parts, CONTENT_TYPES));
  const items = plainItems(root, (space) => space === CONTENT_TYPES_SPACE, ["Default", "Override"], CONTENT_TYPES);
  const listed = (wanted: string) => items.filter(({ name }) => name === wanted);
  for (const { given } of listed("Override")) {
    const part = given.get("PartName")?.toLowerCase() ?? "";
    if (types.has(part)) throw new InputError("the file", "give each part one kind of content", part);
    types.set(part, given.get("ContentType") ?? "");
  }
  for (const { given } of listed("Default")) {
    const [end, type = ""] = [`.${given.get("Extension")?.toLowerCase()}`, given.get("ContentType")];
    if (!type.startsWith(SHEET_CONTENT)) continue;
    for (const name of parts.keys()) {
      const part = `/${name.toLowerCase()}`;
      if (part.endsWith(end) && !types.has(part)) types.set(part, type);
    }
  }
  return types;
}

/** Refuses a part whose kind of content is another than that of its relation, of which programs go by one or the other. */
function checkContent(types: ReadonlyMap<string, string>, { kind, part }: Relation): void {
  const type = types.get(`/${part.toLowerCase()}`);
  if (CONTENT_OF[kind] && type !== undefined && type !== CONTENT_OF[kind]) {
    throw new InputError("the file", "give each part the kind of content that its use asks for", type, { place: part });
  }
}

function listedSheets(
  parts: ReadonlyMap<string, Uint8Array>,
  workbook: XmlElement,
  relations: Relation[],
): ListedSheet[] {
  const lists = childrenOf(workbook, isMain, "sheets");
  if (lists.length !== 1) throw new InputError("the file", "hold one list of sheets", lists.length);
  const elements = childrenOf(lists[0], isMain, "sheet");
  if (elements.length > MOST_SHEETS) {
    throw new InputError("the file", `hold at most ${MOST_SHEETS} sheets`, elements.length);
  }
  const taken = new Set<string>();
  return elements.map((element) => {
    const name = element.given.get("name") ?? "";
    const id = element.spaced(isRelations, "id");
    const relation = relations.find((one) => one.id === id);
    if (!relation || !SHEET_KINDS.includes(relation.kind) || !parts.has(relation.part)) {
      throw new InputError("the file", "hold every sheet that it lists", name);
    }
    for (const key of [`name ${name.toLowerCase()}`, `part ${relation.part}`]) {
      if (taken.has(key)) throw new InputError("the file", "list each sheet once", name);
      taken.add(key);
    }
    return { name, sheetId: element.given.get("sheetId") ?? "", kind: relation.kind, part: relation.part, element };
  });
}

function definedNames(workbook: XmlElement): DefinedName[] {
  return childrenOf(workbook, isMain, "definedNames").flatMap((list) =>
    childrenOf(list, isMain, "definedName").map((element) => {
      const local = element.given.get("localSheetId");
      return {
        name: element.given.get("name") ?? "",
        text: element.text.trim(),
        local: local === undefined ? undefined : Number(local),
        element,
      };
    }),
  );
}

/** Takes a file from anywhere apart; its main part, its sheets and shared texts may each be found in one way only. */
export function openPackage(file: Uint8Array): FilePackage {
  const parts = unzipped(file);
  checkRelations(parts);
  const main = onlyRelation(relationsOf(parts, ""), "officeDocument")?.part ?? "";
  const workbook = xmlTree(textOf(parts, main));
  const types = contentTypes(parts);
  if (
    workbook.name !== "workbook" ||
    !isMain(workbook.space) ||
    types.get(`/${main.toLowerCase()}`) !== WORKBOOK_TYPE
  ) {
    throw new InputError("the file", "be an .xlsx workbook", "an archive of another kind");
  }
  const relations = relationsOf(parts, main);
  for (const relation of relations) checkContent(types, relation);
  for (const kind of ["sharedStrings", "styles", "theme"]) {
    const only = onlyRelation(relations, kind);
    if (only) textOf(parts, only.part);
  }
  return {
    parts,
    main,
    workbook,
    relations,
    sheets: listedSheets(parts, workbook, relations),
    names: definedNames(workbook),
  };
}

/** Refuses relations of a part that is there in another case of its name only: some programs tell the two apart. */
function checkRelations(parts: ReadonlyMap<string, Uint8Array>): void {
  const known = new Map([...parts.keys()].map((name) => [name.toLowerCase(), name]));
  for (const name of parts.keys()) {
    const [, folder, owner] = /^(.*\/)?_rels\/(.+)\.rels$/i.exec(name) ?? [];
    if (owner === undefined) continue;
    const part = known.get(`${folder ?? ""}${owner}`.toLowerCase());
    if (part !== undefined && relationsPart(part) !== name) {
      throw new InputError("the file", "name each part in one way", name);
    }
  }
}

/** Refuses a file that holds a part of xml which is not well formed; `read` are those that were read already. */
export function checkParts(parts: ReadonlyMap<string, Uint8Array>, read: ReadonlySet<string> = new Set()): void {
  for (const [name, content] of parts) {
    if (/\.(xml|rels)$/i.test(name) && !read.has(name)) readXml(decoded(content), {});
  }
}
