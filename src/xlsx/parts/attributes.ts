import { unescaped } from "./unescaped";
import { isSpace, malformed, nameEnd } from "./xml-signs";

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
