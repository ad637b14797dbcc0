import { InputError } from "../../core/errors";

/** A tag of an xml part, or the text between two tags. */
export type XmlEvent =
  | { kind: "open" | "empty"; name: string; source: string; start: number; end: number }
  | { kind: "close"; name: string; start: number; end: number }
  | { kind: "text"; text: string; start: number; end: number };

const MOST_NESTED = 64;
const ENTITIES: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

const malformed = (why: string) => new InputError("the file", "hold well-formed parts", why);
const localName = (name: string) => name.slice(name.indexOf(":") + 1);
const isSpace = (code: number) => code === 32 || code === 9 || code === 10 || code === 13;

/** The text of a part. */
export function decoded(part: Uint8Array): string {
  const wide = (part[0] === 0xff && part[1] === 0xfe) || (part[0] === 0xfe && part[1] === 0xff);
  const encoding = wide ? (part[0] === 0xff ? "utf-16le" : "utf-16be") : "utf-8";
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(part);
  } catch {
    throw malformed("a part that is no text");
  }
}

/** Where the tag that starts at `start` ends: behind its `>`, which may not stand in quotes. */
function tagEnd(xml: string, start: number): number {
  for (let at = start + 1; at < xml.length; at += 1) {
    const sign = xml[at];
    if (sign === ">") return at + 1;
    if (sign === '"' || sign === "'") {
      at = xml.indexOf(sign, at + 1);
      if (at < 0) break;
    }
  }
  throw malformed("a tag without an end");
}

function nameEnd(xml: string, start: number): number {
  let at = start;
  while (at < xml.length && !isSpace(xml.charCodeAt(at)) && xml[at] !== "/" && xml[at] !== ">") at += 1;
  return at;
}

function after(xml: string, mark: string, from: number): number {
  const at = xml.indexOf(mark, from);
  if (at < 0) throw malformed("a mark without an end");
  return at + mark.length;
}

/**
 * The tags and texts of an xml part in their order; names without their prefix. Nothing outside the part is ever looked
 * up, and a part with a document type is refused, since that could define entities that grow without end.
 *
 * @throws InputError if the part is not well formed
 */
export function* xmlEvents(xml: string): Generator<XmlEvent> {
  const open: string[] = [];
  let at = 0;
  while (at < xml.length) {
    const start = xml.indexOf("<", at);
    const textEnd = start < 0 ? xml.length : start;
    if (textEnd > at && open.length > 0)
      yield { kind: "text", text: unescaped(xml.slice(at, textEnd)), start: at, end: textEnd };
    if (start < 0) break;
    if (xml.startsWith("<?", start)) at = after(xml, "?>", start);
    else if (xml.startsWith("<!--", start)) at = after(xml, "-->", start);
    else if (xml.startsWith("<![CDATA[", start)) {
      at = after(xml, "]]>", start);
      yield { kind: "text", text: xml.slice(start + 9, at - 3), start, end: at };
    } else if (xml[start + 1] === "!") throw malformed("a document type");
    else {
      at = tagEnd(xml, start);
      if (xml[start + 1] === "/") {
        const name = xml.slice(start + 2, nameEnd(xml, start + 2));
        if (open.pop() !== name) throw malformed("a tag that is not closed");
        yield { kind: "close", name: localName(name), start, end: at };
        continue;
      }
      const name = xml.slice(start + 1, nameEnd(xml, start + 1));
      const empty = xml[at - 2] === "/";
      if (!empty && open.push(name) > MOST_NESTED) throw malformed("tags nested too deep");
      yield { kind: empty ? "empty" : "open", name: localName(name), source: xml.slice(start, at), start, end: at };
    }
  }
  if (open.length > 0) throw malformed("a tag that is not closed");
}

/** The attributes of a tag, by their names with prefix. */
export function attributesOf(source: string): Map<string, string> {
  const attributes = new Map<string, string>();
  let at = nameEnd(source, 1);
  for (;;) {
    const equals = source.indexOf("=", at);
    if (equals < 0) return attributes;
    const name = source.slice(at, equals).trim();
    let open = equals + 1;
    while (isSpace(source.charCodeAt(open))) open += 1;
    const quote = source[open];
    const close = quote === '"' || quote === "'" ? source.indexOf(quote, open + 1) : -1;
    if (close < 0 || attributes.has(name)) throw malformed("a damaged tag");
    attributes.set(name, unescaped(source.slice(open + 1, close)));
    at = close + 1;
  }
}

function entity(name: string): string {
  const known = ENTITIES[name];
  if (known !== undefined) return known;
  const code = name.startsWith("#x") ? Number.parseInt(name.slice(2), 16) : Number.parseInt(name.slice(1), 10);
  if (name[0] !== "#" || !(code > 0 && code <= 0x10ffff)) throw malformed("an unknown entity");
  return String.fromCodePoint(code);
}

function unescaped(text: string): string {
  if (!text.includes("&")) return text;
  const [first = "", ...rest] = text.split("&");
  return rest.reduce((done, piece) => {
    const end = piece.indexOf(";");
    if (end < 0) throw malformed("an unknown entity");
    return done + entity(piece.slice(0, end)) + piece.slice(end + 1);
  }, first);
}

const CONTROL = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

/** A text as it stands between tags or in a quoted attribute; signs that xml cannot hold become `?`. */
export function escaped(text: string): string {
  return text
    .replace(CONTROL, "?")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
