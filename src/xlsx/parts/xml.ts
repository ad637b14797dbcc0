import { SaxesParser, type SaxesTagNS } from "saxes";
import { InputError } from "../../core/errors";

/** A tag with its name, namespace and attributes. */
export type XmlTag = SaxesTagNS;

/** What to do with the tags and texts of a part in their order; places are signs from the start of the part. */
export interface XmlReading {
  open?(tag: XmlTag, start: number, end: number): void;
  /** An empty tag closes at once: `start` and `end` are then both its end. */
  close?(tag: XmlTag, start: number, end: number): void;
  text?(text: string): void;
}

const MOST_NESTED = 64;
const ENCODINGS = ["utf-8", "utf8", "us-ascii", "ascii"];

/** A part that is not well formed, with the reason. */
export const malformed = (why: string) => new InputError("the file", "hold well-formed parts", why);

/** The text of a part; without its declaration where that would no longer be true of it. */
export function decoded(part: Uint8Array): string {
  const wide = (part[0] === 0xff && part[1] === 0xfe) || (part[0] === 0xfe && part[1] === 0xff);
  const encoding = wide ? (part[0] === 0xff ? "utf-16le" : "utf-16be") : "utf-8";
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(part);
    return wide && text.startsWith("<?xml ") ? text.slice(text.indexOf("?>") + 2) : text;
  } catch {
    throw malformed("a part that is no text");
  }
}

const REASONS: readonly [said: string, why: string][] = [
  ["entity", "an unknown entity"],
  ["unclosed tag", "a tag that is not closed"],
  ["close tag", "a tag that is not closed"],
  ["closing tag", "a tag that is not closed"],
  ["unclosed", "a mark without an end"],
  ["unexpected end", "a mark without an end"],
  ["namespace", "a prefix that is not declared"],
  ["duplicate attribute", "an attribute given twice"],
  ["disallowed character", "a sign that is not allowed"],
];

function checkEncoding(encoding: string | undefined): void {
  if (encoding !== undefined && !ENCODINGS.includes(encoding.toLowerCase())) throw malformed("an unusual encoding");
}

/**
 * Reads an xml part strictly and with its namespaces. Nothing outside the part is ever looked up, and a part with a
 * document type is refused, since that could define entities that grow without end. Six events are listened to, a
 * seventh only where there is some: with more, V8 keeps the parser's fields in a table and takes five times as long.
 *
 * @throws InputError if the part is not well formed
 */
export function readXml(xml: string, reading: XmlReading): void {
  const parser = new SaxesParser({ xmlns: true, position: false });
  const { open, close, text } = reading;
  let depth = 0;
  let start = 0;
  parser.on("error", ({ message }) => {
    const said = message.toLowerCase();
    throw malformed(REASONS.find(([words]) => said.includes(words))?.[1] ?? "a damaged tag");
  });
  parser.on("doctype", () => {
    throw malformed("a document type");
  });
  parser.on("opentagstart", () => {
    if (depth === 0) checkEncoding(parser.xmlDecl.encoding);
    start = xml.lastIndexOf("<", parser.position - 1);
    depth += 1;
    if (depth > MOST_NESTED) throw malformed("tags nested too deep");
  });
  if (open) parser.on("opentag", (tag) => open.call(reading, tag, start, parser.position));
  parser.on("closetag", (tag) => {
    depth -= 1;
    if (!close) return;
    const end = parser.position;
    close.call(reading, tag, tag.isSelfClosing ? end : xml.lastIndexOf("<", end - 1), end);
  });
  if (text) {
    parser.on("text", (part) => text.call(reading, part));
    if (xml.includes("<![CDATA[")) parser.on("cdata", (part) => text.call(reading, part));
  }
  parser.write(xml);
  parser.close();
}

/** A tag's attributes that are in no namespace, by name: `z:id` is none of them. */
export function attributesOf(tag: XmlTag): Map<string, string> {
  const given = new Map<string, string>();
  for (const name in tag.attributes) {
    const { prefix, value } = tag.attributes[name]!;
    if (prefix === "") given.set(name, value);
  }
  return given;
}
