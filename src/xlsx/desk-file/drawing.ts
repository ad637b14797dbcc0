import { zipSync } from "fflate";
import { type Edit, edited, tagEdit } from "../parts/edits";
import { type FilePackage, openPackage } from "../parts/package";
import { onlyRelation, relationsOf, textOf } from "../parts/relations";
import { within, type XmlElement, xmlTree } from "../parts/xml-tree";

/** The words of a picture, which the file library does not keep. */
export interface PictureWords {
  name: string;
  /** What it shows, in words. */
  alternative: string;
}

/** The drawing part of each sheet that has one, by the sheet's name. */
function drawings({ parts, sheets }: FilePackage): Map<string, string> {
  const found = new Map<string, string>();
  for (const { name, part } of sheets) {
    const drawing = onlyRelation(relationsOf(parts, part), "drawing");
    if (drawing) found.set(name, drawing.part);
  }
  return found;
}

/** The element of each picture of a drawing that says its name. */
function namings(drawing: string): XmlElement[] {
  const pictures = [...within(xmlTree(drawing))].filter(({ name }) => name === "pic");
  return pictures.flatMap((picture) => [...within(picture)].find(({ name }) => name === "cNvPr") ?? []);
}

/** The words of every picture of a file, in the order of each sheet's drawing, by the sheet's name. */
export function pictureWords(file: FilePackage): Map<string, PictureWords[]> {
  const found = new Map<string, PictureWords[]>();
  for (const [sheet, drawing] of drawings(file)) {
    const words = namings(textOf(file.parts, drawing)).map(({ given }) => ({
      name: given.get("name") ?? "",
      alternative: given.get("descr") ?? "",
    }));
    if (words.length > 0) found.set(sheet, words);
  }
  return found;
}

function worded(drawing: string, words: PictureWords[]): string {
  const edits = namings(drawing).flatMap((element, i): Edit[] => {
    const given = words[i];
    return given ? [tagEdit(element, { name: given.name, descr: given.alternative })] : [];
  });
  return edited(drawing, edits);
}

/** A file with the words of its pictures, by the sheet's name and in the order of its drawing. */
export function withPictureWords(file: Uint8Array, words: Map<string, PictureWords[]>): Uint8Array {
  if (words.size === 0) return file;
  const opened = openPackage(file);
  for (const [sheet, drawing] of drawings(opened)) {
    const given = words.get(sheet);
    if (given) opened.parts.set(drawing, new TextEncoder().encode(worded(textOf(opened.parts, drawing), given)));
  }
  return zipSync(Object.fromEntries(opened.parts));
}
