import { textOf } from "../../../xlsx/parts/relations";
import type { FileBook } from "../../../xlsx/parts/workbook-file";
import { type Finding, misleading } from "../../finding";

const ESCAPED = /_x([0-9A-F]{4})_/gi;
/** So a text is written that looks like such a number itself. */
const UNDERSCORE = 0x5f;
const TEXTS = /sharedStrings|worksheets\//;

/** Whether a sign is one that a file cannot hold as it is, so that programs write it by its number. */
const needsEscape = (code: number) =>
  code < 0x20 || code === UNDERSCORE || code >= 0xfffe || (code >= 0xd800 && code <= 0xdfff);

/** Letters and digits that are written by their numbers, which some programs show as they are written. */
export function escapeFindings({ parts }: FileBook): Finding[] {
  for (const part of parts.keys()) {
    if (!TEXTS.test(part) || part.endsWith(".rels")) continue;
    for (const [written, code = ""] of textOf(parts, part).matchAll(ESCAPED)) {
      if (!needsEscape(Number.parseInt(code, 16))) {
        return [misleading("the file", `writes letters by their numbers, which some programs show so (${written})`)];
      }
    }
  }
  return [];
}
