import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/** The words of a picture, which the file library does not keep. */
export interface PictureWords {
  name: string;
  /** What it shows, in words. */
  alternative: string;
}

type Parts = Record<string, Uint8Array>;

const NEEDED = /^xl\/(workbook\.xml|_rels\/|worksheets\/_rels\/|drawings\/drawing)/;
const PICTURE = /<(\w+:)?pic\b[^>]*>[\s\S]*?<(?:\w+:)?cNvPr\b([^>]*?)\/?>/g;
const ENTITIES: Record<string, string> = { "&lt;": "<", "&gt;": ">", "&quot;": '"', "&apos;": "'", "&amp;": "&" };

const drawnText = (text: string): string =>
  text
    .replace(/&#(x?)([0-9a-f]+);/gi, (_, hex: string, code: string) =>
      String.fromCodePoint(Number.parseInt(code, hex ? 16 : 10)),
    )
    .replace(/&(lt|gt|quot|apos|amp);/g, (entity) => ENTITIES[entity]!);

const escaped = (text: string): string =>
  text.replace(/[<>"&\n\r\t]/g, (one) => {
    const entity = Object.entries(ENTITIES).find(([, meant]) => meant === one);
    return entity ? entity[0] : `&#${one.charCodeAt(0)};`;
  });

function attribute(tag: string, name: string): string {
  const found = new RegExp(`(?:^|\\s)${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(tag);
  return drawnText(found?.[1] ?? found?.[2] ?? "");
}

const text = (parts: Parts, path: string): string => (parts[path] ? strFromU8(parts[path]) : "");

/** The part behind a relation of `owner` whose type ends in `kind`, or the one with that id. */
function related(parts: Parts, owner: string, wanted: (id: string, type: string) => boolean): string | undefined {
  const [, folder, file] = /^(.*\/)([^/]+)$/.exec(owner)!;
  for (const [, tag] of text(parts, `${folder}_rels/${file}.rels`).matchAll(/<(?:\w+:)?Relationship\b([^>]*)>/g)) {
    if (!wanted(attribute(tag!, "Id"), attribute(tag!, "Type"))) continue;
    return new URL(attribute(tag!, "Target"), `file:///${owner}`).pathname.slice(1);
  }
  return undefined;
}

/** The drawing part of each sheet that has one, by the sheet's name. */
function drawings(parts: Parts): Map<string, string> {
  const found = new Map<string, string>();
  for (const [, tag] of text(parts, "xl/workbook.xml").matchAll(/<(?:\w+:)?sheet\s([^>]*)>/g)) {
    const id = attribute(tag!, "r:id");
    const sheet = related(parts, "xl/workbook.xml", (one) => one === id);
    const drawing = sheet && related(parts, sheet, (_, type) => type.endsWith("/drawing"));
    if (drawing) found.set(attribute(tag!, "name"), drawing);
  }
  return found;
}

/** The words of every picture of a file, in the order of each sheet's drawing, by the sheet's name. */
export function pictureWords(file: Uint8Array): Map<string, PictureWords[]> {
  const parts = unzipSync(file, { filter: ({ name }) => NEEDED.test(name) });
  const found = new Map<string, PictureWords[]>();
  for (const [sheet, drawing] of drawings(parts)) {
    const words = [...text(parts, drawing).matchAll(PICTURE)].map(([, , tag]) => ({
      name: attribute(tag!, "name"),
      alternative: attribute(tag!, "descr"),
    }));
    if (words.length > 0) found.set(sheet, words);
  }
  return found;
}

function worded(drawing: string, words: PictureWords[]): string {
  let count = 0;
  return drawing.replace(PICTURE, (whole, _prefix, tag: string) => {
    const given = words[count++];
    if (!given) return whole;
    const rest = tag.replace(/\s(name|descr)\s*=\s*("[^"]*"|'[^']*')/g, "");
    const said = ` name="${escaped(given.name)}" descr="${escaped(given.alternative)}"`;
    const at = whole.lastIndexOf(tag);
    return `${whole.slice(0, at)}${rest.trimEnd()}${said}${whole.slice(at + tag.length)}`;
  });
}

/** A file with the words of its pictures, by the sheet's name and in the order of its drawing. */
export function withPictureWords(file: Uint8Array, words: Map<string, PictureWords[]>): Uint8Array {
  if (words.size === 0) return file;
  const parts = unzipSync(file);
  for (const [sheet, drawing] of drawings(parts)) {
    const given = words.get(sheet);
    if (given) parts[drawing] = strToU8(worded(text(parts, drawing), given));
  }
  return zipSync(parts);
}
