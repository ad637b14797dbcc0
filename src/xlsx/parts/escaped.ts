const CONTROL = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

/** A text as it is written between tags or in a quoted attribute; signs that xml cannot hold become `?`. */
export function escaped(text: string): string {
  return text
    .replace(CONTROL, "?")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("\r", "&#13;");
}

/** The same for an attribute, in which the ends of lines would become spaces. */
export const escapedAttribute = (text: string): string =>
  escaped(text).replaceAll("\n", "&#10;").replaceAll("\t", "&#9;");
