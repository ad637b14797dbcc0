import { addressParts } from "../../cells/sheet-area";
import { isMain } from "../parts/namespaces";
import { onlyRelation, relationsOf, textOf } from "../parts/relations";
import { childOf, childrenOf, type XmlElement, xmlTree } from "../parts/xml-tree";
import type { BookNote } from "./book";
import type { Extent } from "./place";

/** The text of a note, that of its pieces one after the other. */
function wordsOf(text: XmlElement | undefined): string {
  const pieces = text?.children.filter(({ name }) => name === "t" || name === "r") ?? [];
  return pieces.map((piece) => (piece.name === "t" ? piece.text : wordsOf(piece))).join("");
}

/** The notes of a file's sheet, as far as the desk shows it. */
export function notesOf(parts: ReadonlyMap<string, Uint8Array>, sheet: string, { rows, columns }: Extent): BookNote[] {
  const part = onlyRelation(relationsOf(parts, sheet), "comments")?.part;
  if (part === undefined || !parts.has(part)) return [];
  const list = childOf(xmlTree(textOf(parts, part)), isMain, "commentList");
  return childrenOf(list, isMain, "comment").flatMap((comment) => {
    const { row, column } = addressParts(comment.given.get("ref") ?? "");
    const text = wordsOf(childOf(comment, isMain, "text"));
    return text !== "" && row <= rows && column <= columns ? [{ row: row - 1, column: column - 1, text }] : [];
  });
}
