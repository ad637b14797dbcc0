import { InputError } from "../../core/errors";
import { attributesOf } from "./attributes";
import { decoded, xmlEvents } from "./xml";

/** What a part of a workbook points to. */
export interface Relation {
  id: string;
  /** Last word of the relation's type, such as `worksheet`. */
  type: string;
  /** Name of the part; "" where it lies outside the file. */
  part: string;
}

const folderOf = (part: string) => part.slice(0, part.lastIndexOf("/") + 1);

/** The part that holds the relations of a part; "" for the file itself. */
export function relationsPart(part: string): string {
  return `${folderOf(part)}_rels/${part.slice(folderOf(part).length)}.rels`;
}

function resolved(target: string, from: string): string {
  const steps = (target.startsWith("/") ? target : folderOf(from) + target).split("/");
  const path: string[] = [];
  for (const step of steps) {
    if (step === "..") path.pop();
    else if (step !== "" && step !== ".") path.push(step);
  }
  return path.join("/");
}

/** The relations of a part, none of which is followed outside the file. */
export function relationsOf(parts: ReadonlyMap<string, Uint8Array>, part: string): Relation[] {
  const content = parts.get(relationsPart(part));
  if (!content) return [];
  const relations: Relation[] = [];
  for (const event of xmlEvents(decoded(content))) {
    if ((event.kind !== "empty" && event.kind !== "open") || event.name !== "Relationship") continue;
    const given = attributesOf(event.source);
    const type = given.get("Type") ?? "";
    const outside = given.get("TargetMode") === "External";
    relations.push({
      id: given.get("Id") ?? "",
      type: type.slice(type.lastIndexOf("/") + 1),
      part: outside ? "" : resolved(given.get("Target") ?? "", part),
    });
  }
  return relations;
}

/** The text of a part that has to be there. */
export function textOf(parts: ReadonlyMap<string, Uint8Array>, part: string): string {
  const content = parts.get(part);
  if (!content) throw new InputError("the file", "hold every part that it names", part);
  return decoded(content);
}
