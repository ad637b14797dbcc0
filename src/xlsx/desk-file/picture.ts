import { LAST_COLUMN, LAST_ROW } from "../../cells/box";
import { isRelations } from "../parts/namespaces";
import { onlyRelation, relationsOf, textOf } from "../parts/relations";
import { within, type XmlElement, xmlTree } from "../parts/xml-tree";
import type { BookPicture, Spot } from "./book";

const EMU_A_PIXEL = 9525;
const EXTENSIONS: Record<string, BookPicture["extension"]> = { png: "png", jpeg: "jpeg", jpg: "jpeg", gif: "gif" };

/** A picture of a file with its anchor in the drawing and the element that names it. */
export interface DrawnPicture {
  picture: BookPicture;
  anchor: XmlElement;
  naming: XmlElement;
}

const child = (parent: XmlElement | undefined, name: string) => parent?.children.find((one) => one.name === name);
const count = (parent: XmlElement | undefined, name: string) => Number(child(parent, name)?.text ?? 0);

function spotOf(corner: XmlElement): Spot {
  return {
    row: count(corner, "row"),
    column: count(corner, "col"),
    right: Math.round(count(corner, "colOff") / EMU_A_PIXEL),
    down: Math.round(count(corner, "rowOff") / EMU_A_PIXEL),
  };
}

function endOf(anchor: XmlElement): BookPicture["to"] | undefined {
  const [to, size] = [child(anchor, "to"), child(anchor, "ext")];
  if (to) return spotOf(to);
  if (!size) return undefined;
  const side = (name: string) => Math.round(Number(size.given.get(name) ?? 0) / EMU_A_PIXEL);
  return { width: side("cx"), height: side("cy") };
}

const MOST_PIXELS = 100_000;

/** Whether a picture lies in a sheet and has a size that one can have: no other is shown. */
function fits(from: Spot, to: BookPicture["to"]): boolean {
  const inSheet = ({ row, column }: Spot) => row >= 0 && row < LAST_ROW && column >= 0 && column < LAST_COLUMN;
  return inSheet(from) && ("row" in to ? inSheet(to) : to.width <= MOST_PIXELS && to.height <= MOST_PIXELS);
}

/** The part of a sheet's drawing, where it has one. */
export const drawingOf = (parts: ReadonlyMap<string, Uint8Array>, sheet: string): string | undefined =>
  onlyRelation(relationsOf(parts, sheet), "drawing")?.part;

/** The pictures on a file's sheet that the desk can show, in the order of their drawing. */
export function drawnPictures(parts: ReadonlyMap<string, Uint8Array>, sheet: string): DrawnPicture[] {
  const drawing = drawingOf(parts, sheet);
  if (drawing === undefined || !parts.has(drawing)) return [];
  const images = new Map(relationsOf(parts, drawing).map(({ id, part }) => [id, part]));
  return xmlTree(textOf(parts, drawing)).children.flatMap((anchor) => {
    const drawn = child(anchor, "pic");
    const inside = drawn ? [...within(drawn)] : [];
    const naming = inside.find(({ name }) => name === "cNvPr");
    const id = inside.find(({ name }) => name === "blip")?.spaced(isRelations, "embed");
    const part = images.get(id ?? "") ?? "";
    const extension = EXTENSIONS[part.slice(part.lastIndexOf(".") + 1).toLowerCase()];
    const [bytes, from, to] = [parts.get(part), child(anchor, "from"), endOf(anchor)];
    if (!naming || !extension || !bytes || !from || !to || !fits(spotOf(from), to)) return [];
    const [name, alternative] = [naming.given.get("name") ?? "", naming.given.get("descr") ?? ""];
    return [{ anchor, naming, picture: { name, alternative, extension, bytes, from: spotOf(from), to } }];
  });
}
