import { InputError } from "../../core/errors";
import { kindOf, PACKAGE_RELATIONS } from "./namespaces";
import { decoded } from "./xml";
import { type XmlElement, xmlTree } from "./xml-tree";

/** What a part of a workbook points to. */
export interface Relation {
  id: string;
  /** The full type. */
  type: string;
  /** What the type means, such as `worksheet`; "" where it is not one of the standard's. */
  kind: string;
  /** Name of the part; "" where it lies outside the file. */
  part: string;
}

/** The folder of a part with its last stroke; "" for one that is in none. */
export const folderOf = (part: string) => part.slice(0, part.lastIndexOf("/") + 1);

/** The part that holds the relations of a part; "" for the file itself. */
export function relationsPart(part: string): string {
  return `${folderOf(part)}_rels/${part.slice(folderOf(part).length)}.rels`;
}

/** The part that a target means, as seen from a part. */
export function resolved(target: string, from: string): string {
  const steps = (target.startsWith("/") ? target : folderOf(from) + target).split("/");
  const path: string[] = [];
  for (const step of steps) {
    if (step === "..") path.pop();
    else if (step !== "" && step !== ".") path.push(step);
  }
  return path.join("/");
}

export const inPackage = (space: string): boolean => space === PACKAGE_RELATIONS;

const isPlainName = (name: string) => name === "xmlns" || name.startsWith("xmlns:");
const isPlainValue = (value: string) => value === value.trim();

/** The items of a list of parts; refused where it is written with more than items, which some programs unwrap or follow. */
export function plainItems(
  root: XmlElement,
  space: (space: string) => boolean,
  names: readonly string[],
  part: string,
): XmlElement[] {
  const odd =
    [...root.raw.keys()].find((name) => !isPlainName(name)) ??
    root.children.find((one) => !(names.includes(one.name) && space(one.space)))?.name ??
    root.children
      .flatMap(({ raw }) => [...raw])
      .find(
        ([name, value]) => (name.includes(":") && !isPlainName(name)) || (name !== "Target" && !isPlainValue(value)),
      )?.[0];
  if (odd !== undefined) throw new InputError("the file", "list its parts plainly", odd, { place: part || "its root" });
  return root.children;
}

/** The relations of a part, none of which is followed outside the file. */
export function relationsOf(parts: ReadonlyMap<string, Uint8Array>, part: string): Relation[] {
  const content = parts.get(relationsPart(part));
  if (!content) return [];
  const ids = new Set<string>();
  return plainItems(xmlTree(decoded(content)), inPackage, ["Relationship"], part).map(({ given }) => {
    const [id, type] = [given.get("Id") ?? "", given.get("Type") ?? ""];
    if (ids.has(id)) throw new InputError("the file", "name each relation of a part once", id, { place: part });
    ids.add(id);
    const outside = given.get("TargetMode") === "External";
    return { id, type, kind: kindOf(type), part: outside ? "" : resolved(given.get("Target") ?? "", part) };
  });
}

/** The one relation of a kind; undefined where there is none, refused where there are two. */
export function onlyRelation(relations: readonly Relation[], kind: string): Relation | undefined {
  const found = relations.filter((one) => one.kind === kind && one.part !== "");
  if (found.length > 1) throw new InputError("the file", `lead to one part as its ${kind}`, found.length);
  return found[0];
}

/** The text of a part that has to be there. */
export function textOf(parts: ReadonlyMap<string, Uint8Array>, part: string): string {
  const content = parts.get(part);
  if (!content) throw new InputError("the file", "hold every part that it names", part);
  return decoded(content);
}
