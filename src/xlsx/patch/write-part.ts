import { mustAppend } from "../parts/edits";
import { escapedAttribute } from "../parts/escaped";
import { CONTENT_TYPES_SPACE, PACKAGE_RELATIONS, RELATIONS, XML_HEAD } from "../parts/namespaces";
import { inPackage, relationsOf, relationsPart, textOf } from "../parts/relations";
import { childrenOf, xmlTree } from "../parts/xml-tree";

export type Parts = Map<string, Uint8Array>;

const CONTENT_TYPES = "[Content_Types].xml";
const inTypes = (space: string): boolean => space === CONTENT_TYPES_SPACE;

/** Puts a text in a part. */
export function writePart(parts: Parts, part: string, text: string): void {
  parts.set(part, new TextEncoder().encode(text));
}

/** A name for a new part that no part has: `folder/base1.xml`, …; "" is the folder of parts in none. */
export function freePart(parts: Parts, folder: string, base: string, extension: string): string {
  const taken = new Set([...parts.keys()].map((name) => name.toLowerCase()));
  const within = folder === "" || folder.endsWith("/") ? folder : `${folder}/`;
  let number = 1;
  while (taken.has(`${within}${base}${number}.${extension}`.toLowerCase())) number += 1;
  return `${within}${base}${number}.${extension}`;
}

/** Adds a relation of the usual types from a part to another; answers its id. */
export function relate(parts: Parts, from: string, type: string, to: string): string {
  const taken = new Set(relationsOf(parts, from).map(({ id }) => id));
  let number = 1;
  while (taken.has(`rId${number}`)) number += 1;
  const id = `rId${number}`;
  const full = type.includes("/") ? type : `${RELATIONS}/${type}`;
  const rels = relationsPart(from);
  if (!parts.has(rels)) {
    writePart(parts, rels, `${XML_HEAD}<Relationships xmlns="${PACKAGE_RELATIONS}"/>`);
  }
  const text = textOf(parts, rels);
  const [root] = [xmlTree(text)];
  const p = inPackage(root.space) ? root.prefix : "";
  const relation = `<${p}Relationship Id="${id}" Type="${full}" Target="/${escapedAttribute(to)}"/>`;
  writePart(parts, rels, mustAppend(text, "Relationships", relation));
  return id;
}

/** The kind of content of a part. */
export function typeOf(parts: Parts, part: string): { type: string; byExtension: boolean } | undefined {
  const root = xmlTree(textOf(parts, CONTENT_TYPES));
  const own = childrenOf(root, inTypes, "Override").find(({ given }) => given.get("PartName") === `/${part}`);
  if (own) return { type: own.given.get("ContentType") ?? "", byExtension: false };
  const extension = part.slice(part.lastIndexOf(".") + 1).toLowerCase();
  const usual = childrenOf(root, inTypes, "Default").find(
    ({ given }) => given.get("Extension")?.toLowerCase() === extension,
  );
  return usual && { type: usual.given.get("ContentType") ?? "", byExtension: true };
}

/** Says of what kind the content of a part is. */
export function declareType(parts: Parts, part: string, type: string): void {
  if (typeOf(parts, part)?.type === type) return;
  const text = textOf(parts, CONTENT_TYPES);
  const { prefix } = xmlTree(text);
  const override = `<${prefix}Override PartName="/${escapedAttribute(part)}" ContentType="${escapedAttribute(type)}"/>`;
  writePart(parts, CONTENT_TYPES, mustAppend(text, "Types", override));
}
