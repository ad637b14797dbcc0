import { malformed } from "./xml-signs";

const ENTITIES: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

function entity(name: string): string {
  const known = ENTITIES[name];
  if (known !== undefined) return known;
  const code = name.startsWith("#x") ? Number.parseInt(name.slice(2), 16) : Number.parseInt(name.slice(1), 10);
  if (name[0] !== "#" || !(code > 0 && code <= 0x10ffff)) throw malformed("an unknown entity");
  return String.fromCodePoint(code);
}

const ENTITY = /&([^;&]*)(;?)/g;

/** A text with its entities put in; only the five of xml and numbers are known. */
export function unescaped(text: string): string {
  if (!text.includes("&")) return text;
  return text.replace(ENTITY, (_, name: string, end: string) => {
    if (end === "") throw malformed("an unknown entity");
    return entity(name);
  });
}
