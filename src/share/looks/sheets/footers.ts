import { isOn, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { type Finding, misleading } from "../../finding";
import { shortened } from "../../shortened";
import { isStrange } from "../cells/fonts";
import type { OwnSheet } from "./own-sheet";

/** The footers that the pages of a sheet have. */
export const footersWanted = (papers: XmlElement | undefined) => [
  "oddFooter",
  ...(isOn(papers?.given.get("differentOddEven")) ? ["evenFooter"] : []),
  ...(isOn(papers?.given.get("differentFirst")) ? ["firstFooter"] : []),
];

/** Looks in a header or footer by which words cannot be read. */
const UNREADABLE = /&K(?!000000)[0-9A-F+-]{5,6}|&[1-4](?!\d)|&(3\d|[4-9]\d|\d{3})|&[SXYG]/i;
const FONT = /&"([^",]*)/g;
const MOST_LINES = 3;
/** The code of a copy. */
export const CODE = /\b[0-9a-f]{4}(?: [0-9a-f]{4}){3}\b/;

/** Whether the words of a header or footer are in signs, in huge or tiny letters, or pushed over the page. */
const isUnreadable = (text: string): boolean =>
  UNREADABLE.test(text) ||
  [/&P/gi, /&N/gi].some((page) => (text.match(page) ?? []).length > 1) ||
  [...text.matchAll(FONT)].some(([, font = ""]) => font !== "-" && isStrange(font)) ||
  text.split(/\r\n|\n|\r/).length > MOST_LINES;

/** Words in headers and footers other than the workbook's own: its sheet, Canfall, the code and the page. */
export function footerFinding(own: OwnSheet, { name, text }: XmlElement, code: string): Finding[] {
  const plain = text
    .replace(/&"[^"]*"/g, "")
    .replace(/&K[0-9A-F]{6}/gi, "")
    .replace(/&[LCRAPNBIU]/g, " ")
    .replace(/&\d+/g, "")
    .replace(/\b(Canfall|Page|of)\b/g, "")
    .replace(code === "" ? /$^/ : code, "")
    .trim();
  if (plain === "" && isUnreadable(text)) {
    return [misleading(own.name, "the words at the head or foot of its pages cannot be read", "", shortened(text, 60))];
  }
  if (plain === "") return [];
  const place = /header/i.test(name) ? "header" : "footer";
  const [other] = CODE.exec(plain) ?? [];
  if (other)
    return [misleading(own.name, `the ${place} of its pages has the code ${other} of another copy`, code, other)];
  return [misleading(own.name, `the ${place} of its pages says "${shortened(plain, 60)}"`, "", shortened(plain, 60))];
}
