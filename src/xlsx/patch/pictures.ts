import type { BookPicture, Spot } from "../desk-file/book";
import { type DrawnPicture, drawingOf, drawnPictures } from "../desk-file/picture";
import { appendEdit, type Edit, edited, tagEdit } from "../parts/edits";
import { escapedAttribute } from "../parts/escaped";
import { RELATIONS, XML_HEAD } from "../parts/namespaces";
import { textOf } from "../parts/relations";
import { after } from "../parts/sheet-order";
import { within, type XmlElement, xmlTree } from "../parts/xml-tree";
import { declareType, freePart, type Parts, relate, writePart } from "./write-part";

const EMU_A_PIXEL = 9525;
const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
const SHAPES = "http://schemas.openxmlformats.org/drawingml/2006/main";
const DRAWING_TYPE = "application/vnd.openxmlformats-officedocument.drawing+xml";

/** What follows the drawing of a sheet in its part. */
const BEHIND = after("drawing");

const sameBytes = (one: Uint8Array, other: Uint8Array) =>
  one.length === other.length && one.every((byte, i) => byte === other[i]);
const sameJson = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

const corner = (tag: string, { row, column, right, down }: Spot) =>
  `<xdr:${tag} xmlns:xdr="${DRAWING}"><xdr:col>${column}</xdr:col><xdr:colOff>${Math.round(right * EMU_A_PIXEL)}</xdr:colOff>` +
  `<xdr:row>${row}</xdr:row><xdr:rowOff>${Math.round(down * EMU_A_PIXEL)}</xdr:rowOff></xdr:${tag}>`;

const sizeOf = ({ width, height }: { width: number; height: number }) =>
  `<xdr:ext xmlns:xdr="${DRAWING}" cx="${Math.round(width * EMU_A_PIXEL)}" cy="${Math.round(height * EMU_A_PIXEL)}"/>`;

const endText = (to: BookPicture["to"]) => ("width" in to ? sizeOf(to) : corner("to", to));

function anchorText({ name, alternative, from, to }: BookPicture, image: string, id: number): string {
  const kind = "width" in to ? "oneCellAnchor" : "twoCellAnchor";
  const words = `name="${escapedAttribute(name)}" descr="${escapedAttribute(alternative)}"`;
  return (
    `<xdr:${kind} xmlns:xdr="${DRAWING}" xmlns:a="${SHAPES}" xmlns:r="${RELATIONS}"${"width" in to ? "" : ' editAs="oneCell"'}>` +
    `${corner("from", from)}${endText(to)}<xdr:pic><xdr:nvPicPr><xdr:cNvPr id="${id}" ${words}/>` +
    '<xdr:cNvPicPr><a:picLocks noChangeAspect="1"/></xdr:cNvPicPr></xdr:nvPicPr>' +
    `<xdr:blipFill><a:blip r:embed="${image}"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill>` +
    '<xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></a:xfrm>' +
    '<a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic><xdr:clientData/>' +
    `</xdr:${kind}>`
  );
}

/** Adds an empty drawing to a sheet. */
function newDrawing(parts: Parts, sheet: string): string {
  const drawing = freePart(parts, "xl/drawings", "drawing", "xml");
  writePart(parts, drawing, `${XML_HEAD}<xdr:wsDr xmlns:xdr="${DRAWING}" xmlns:a="${SHAPES}"/>`);
  declareType(parts, drawing, DRAWING_TYPE);
  const id = relate(parts, sheet, "drawing", drawing);
  const xml = textOf(parts, sheet);
  const root = xmlTree(xml, (name) => name === "sheetData");
  const at = root.children.find(({ name }) => BEHIND.includes(name))?.start ?? root.closeStart;
  const text = `<${root.prefix}drawing xmlns:r="${RELATIONS}" r:id="${id}"/>`;
  writePart(parts, sheet, edited(xml, [{ start: at, end: at, text }]));
  return drawing;
}

/** What moves or renames a picture that is there. */
function changeEdits(
  { picture: old, anchor, naming }: DrawnPicture,
  { name, alternative, from, to }: BookPicture,
): Edit[] {
  const edits: Edit[] = [];
  const there = (tag: string) => anchor.children.find((one) => one.name === tag);
  const replace = (element: XmlElement | undefined, text: string) => {
    if (element) edits.push({ start: element.start, end: element.end, text });
  };
  if (name !== old.name || alternative !== old.alternative) edits.push(tagEdit(naming, { name, descr: alternative }));
  if (!sameJson(from, old.from)) replace(there("from"), corner("from", from));
  if (!sameJson(to, old.to) && "width" in to === "width" in old.to) replace(there("to") ?? there("ext"), endText(to));
  else if (!sameJson(to, old.to)) {
    const kind = "width" in to ? "oneCellAnchor" : "twoCellAnchor";
    replace(there("to") ?? there("ext"), endText(to));
    edits.push({ ...tagEdit({ ...anchor, name: kind }, {}) });
    edits.push({ start: anchor.closeStart, end: anchor.end, text: `</${anchor.prefix}${kind}>` });
  }
  return edits;
}

/** Lets a sheet show these pictures and no others; charts and shapes beside them stay. */
export function patchPictures(parts: Parts, sheet: string, pictures: readonly BookPicture[]): void {
  const held = [...drawnPictures(parts, sheet)];
  if (held.length === 0 && pictures.length === 0) return;
  const drawing = drawingOf(parts, sheet) ?? newDrawing(parts, sheet);
  const edits: Edit[] = [];
  const fresh: BookPicture[] = [];
  for (const picture of pictures) {
    const alike = held.filter((one) => sameBytes(one.picture.bytes, picture.bytes));
    const found =
      alike.find((one) => sameJson([one.picture.from, one.picture.to], [picture.from, picture.to])) ??
      alike.find((one) => one.picture.name === picture.name) ??
      alike[0];
    if (!found) {
      fresh.push(picture);
      continue;
    }
    held.splice(held.indexOf(found), 1);
    edits.push(...changeEdits(found, picture));
  }
  for (const { anchor } of held) edits.push({ start: anchor.start, end: anchor.end, text: "" });
  const xml = textOf(parts, drawing);
  const root = xmlTree(xml);
  const ids = [...within(root)].filter(({ name }) => name === "cNvPr").map(({ given }) => Number(given.get("id") ?? 0));
  let id = Math.max(0, ...ids.filter(Number.isFinite));
  const texts = fresh.map((picture) => {
    const media = freePart(parts, "xl/media", "image", picture.extension);
    parts.set(media, picture.bytes);
    declareType(parts, media, `image/${picture.extension}`);
    id += 1;
    return anchorText(picture, relate(parts, drawing, "image", media), id);
  });
  if (texts.length > 0) edits.push(appendEdit(xml, root, texts.join("")));
  writePart(parts, drawing, edited(xml, edits));
}
