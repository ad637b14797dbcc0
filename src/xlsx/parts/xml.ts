import { unescaped } from "./unescaped";
import { malformed, nameEnd } from "./xml-signs";

/** A tag of an xml part, or the text between two tags. */
export type XmlEvent =
  | { kind: "open" | "empty"; name: string; source: string; start: number; end: number }
  | { kind: "close"; name: string; start: number; end: number }
  | { kind: "text"; text: string; start: number; end: number };

const MOST_NESTED = 64;
const CDATA = "<![CDATA[";

const localName = (name: string) => name.slice(name.indexOf(":") + 1);

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

/** Where the tag that starts at `start` ends: behind its `>`, which may not be in quotes. */
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

function after(xml: string, mark: string, from: number): number {
  const at = xml.indexOf(mark, from);
  if (at < 0) throw malformed("a mark without an end");
  return at + mark.length;
}

/**
 * Goes through the tags and texts of an xml part in their order; names without their prefix. Nothing outside the part is
 * ever looked up, and a part with a document type is refused, since that could define entities that grow without end.
 */
export class XmlScanner {
  kind: "open" | "empty" | "close" | "text" = "text";
  name = "";
  start = 0;
  end = 0;
  private readonly open: string[] = [];
  private marked = false;

  constructor(private readonly xml: string) {}

  /** The tag as it is. */
  source(): string {
    return this.xml.slice(this.start, this.end);
  }

  /** The text between two tags. */
  text(): string {
    const { xml, start, end } = this;
    return this.marked ? xml.slice(start + CDATA.length, end - 3) : unescaped(xml.slice(start, end));
  }

  /**
   * Steps to the next tag or text.
   *
   * @returns false at the end of the part
   * @throws InputError if the part is not well formed
   */
  next(): boolean {
    const { xml, open } = this;
    for (;;) {
      const at = this.end;
      const tag = xml.indexOf("<", at);
      if (tag !== at && open.length > 0) return this.found("text", at, tag < 0 ? malformedEnd() : tag);
      if (tag < 0) return open.length > 0 ? malformedEnd() : false;
      const sign = xml[tag + 1];
      if (sign === "/") return this.close(tag);
      if (sign !== "?" && sign !== "!") return this.begin(tag);
      if (sign === "?") this.end = after(xml, "?>", tag);
      else if (xml.startsWith("<!--", tag)) this.end = after(xml, "-->", tag);
      else if (xml.startsWith(CDATA, tag) && open.length > 0) {
        this.found("text", tag, after(xml, "]]>", tag));
        this.marked = true;
        return true;
      } else throw malformed("a document type");
    }
  }

  private found(kind: XmlScanner["kind"], start: number, end: number): true {
    this.kind = kind;
    this.start = start;
    this.end = end;
    this.marked = false;
    return true;
  }

  private close(tag: number): true {
    const name = this.xml.slice(tag + 2, nameEnd(this.xml, tag + 2));
    if (this.open.pop() !== name) throw malformed("a tag that is not closed");
    this.name = localName(name);
    return this.found("close", tag, tagEnd(this.xml, tag));
  }

  private begin(tag: number): true {
    const end = tagEnd(this.xml, tag);
    const name = this.xml.slice(tag + 1, nameEnd(this.xml, tag + 1));
    this.name = localName(name);
    if (this.xml[end - 2] === "/") return this.found("empty", tag, end);
    if (this.open.push(name) > MOST_NESTED) throw malformed("tags nested too deep");
    return this.found("open", tag, end);
  }
}

function malformedEnd(): never {
  throw malformed("a tag that is not closed");
}

/** The tags and texts of a small part as a sequence. */
export function* xmlEvents(xml: string): Generator<XmlEvent> {
  const scanner = new XmlScanner(xml);
  while (scanner.next()) {
    const { kind, name, start, end } = scanner;
    if (kind === "text") yield { kind, text: scanner.text(), start, end };
    else if (kind === "close") yield { kind, name, start, end };
    else yield { kind, name, source: scanner.source(), start, end };
  }
}
