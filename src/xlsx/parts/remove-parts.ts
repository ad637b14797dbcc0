import { withoutElements } from "./edits";
import { type Relation, relationsOf, relationsPart, textOf } from "./relations";

/** Takes parts out of a workbook, with the relations that lead to them from `from` and their entries as content. */
export function removeParts(
  parts: Map<string, Uint8Array>,
  from: string,
  unwanted: (relation: Relation) => boolean,
): void {
  const gone = relationsOf(parts, from).filter((relation) => relation.part !== "" && unwanted(relation));
  if (gone.length === 0) return;
  const write = (to: string, text: string) => parts.set(to, new TextEncoder().encode(text));
  for (const { part } of gone) {
    parts.delete(part);
    removeParts(parts, part, (inner) => parts.has(inner.part) && unwanted(inner));
    parts.delete(relationsPart(part));
  }
  if (parts.has(relationsPart(from))) {
    const ids = new Set(gone.map(({ id }) => id));
    const kept = withoutElements(textOf(parts, relationsPart(from)), "Relationship", (given) =>
      ids.has(given.get("Id") ?? ""),
    );
    write(relationsPart(from), kept);
  }
  const types = textOf(parts, "[Content_Types].xml");
  const names = new Set(gone.map(({ part }) => `/${part}`));
  write(
    "[Content_Types].xml",
    withoutElements(types, "Override", (given) => names.has(given.get("PartName") ?? "")),
  );
}
