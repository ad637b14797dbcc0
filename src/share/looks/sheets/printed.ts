import { isMain } from "../../../xlsx/parts/namespaces";
import { childOf, childrenOf, isOn, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { added, changed, type Finding, misleading } from "../../finding";
import { footerFinding, footersWanted } from "./footers";
import type { OwnSheet } from "./own-sheet";

const SCALE = [40, 250];
/** [inches]. */
const MOST_MARGIN = 1.5;
/** What a line at the foot of a page takes of it [inches]. */
const FOOT_LINE = 0.12;
/** Rows of a page that can be read. */
const MOST_ROWS = 150;
const MOST_BREAKS = 10;
const MOST_BREAKS_ACROSS = 2;
/** Sizes of paper smaller than A5, and envelopes, by the numbers of ECMA-376 part 1, 18.3.1.63. */
const SMALL_PAPER = [
  15, 19, 20, 21, 22, 23, 27, 28, 30, 31, 32, 33, 34, 35, 36, 37, 38, 43, 47, 60, 61, 69, 70, 71, 72, 73, 74, 82, 91,
  92, 93, 94, 95,
];

/** What of a sheet's pages shows other than those of the workbook's own sheet. */
export function printFindings(own: OwnSheet, frame: XmlElement, code: string): Finding[] {
  const setup = childOf(frame, isMain, "pageSetup")?.given;
  const fits = isOn(childOf(childOf(frame, isMain, "sheetPr"), isMain, "pageSetUpPr")?.given.get("fitToPage"));
  const scale = Number(setup?.get("scale") ?? 100);
  const found: Finding[] = [];
  if (!fits) found.push(added(own.name, "is no longer fitted to its page, so that columns may be printed apart"));
  if (!fits && (scale < SCALE[0]! || scale > SCALE[1]!)) {
    found.push(misleading(own.name, "is printed too small or too large to read", "100 %", `${scale} %`));
  }
  const pages = Number(setup?.get("fitToHeight") ?? 1);
  if (fits && pages > 0 && own.manyPages && own.used.at(-1)!.row > MOST_ROWS * pages) {
    found.push(misleading(own.name, "is printed too small to read, all of it on one page"));
  }
  if (fits && Number(setup?.get("fitToWidth") ?? 1) > 20)
    found.push(misleading(own.name, "is printed over many pages"));
  if (isOn(setup?.get("blackAndWhite"))) found.push(misleading(own.name, "is printed without its colours"));
  if (isOn(setup?.get("draft"))) found.push(misleading(own.name, "is printed as a draft, without its charts"));
  if (SMALL_PAPER.includes(Number(setup?.get("paperSize")))) {
    found.push(misleading(own.name, "is printed on an envelope or a card"));
  }
  if (setup?.has("paperWidth") || setup?.has("paperHeight")) {
    found.push(misleading(own.name, "is printed on paper of a size of its own"));
  }
  if (!["none", undefined].includes(setup?.get("cellComments"))) {
    found.push(added(own.name, "is printed with its notes"));
  }
  const breaks = childrenOf(childOf(frame, isMain, "rowBreaks"), isMain, "brk").filter(
    ({ given }) => isOn(given.get("man")) && !own.pageEnds.includes(Number(given.get("id"))),
  );
  const across = childrenOf(childOf(frame, isMain, "colBreaks"), isMain, "brk").filter(({ given }) =>
    isOn(given.get("man")),
  );
  const wide = Number(setup?.get("fitToWidth") ?? 1);
  if ((fits && (wide > own.pagesAcross || wide === 0)) || across.length > 0)
    found.push(added(own.name, "is printed with columns on pages of their own"));
  if (breaks.length > MOST_BREAKS || across.length > MOST_BREAKS_ACROSS)
    found.push(misleading(own.name, "is printed over many pages"));
  if ((setup?.get("errors") ?? "displayed") !== "displayed") {
    found.push(misleading(own.name, "is printed with other words in place of errors"));
  }
  const papers = childOf(frame, isMain, "headerFooter");
  for (const paper of papers?.children ?? []) found.push(...footerFinding(own, paper, code));
  if (code !== "" && footersWanted(papers).some((name) => !childOf(papers, isMain, name)?.text.includes(code))) {
    found.push(changed(own.name, "the code of the copy is not at the foot of each page", code, "none"));
  }
  const margins = childOf(frame, isMain, "pageMargins")?.given;
  if (["left", "right", "top", "bottom"].some((side) => Number(margins?.get(side) ?? 0.5) > MOST_MARGIN)) {
    found.push(misleading(own.name, "has margins that push its text off the page"));
  }
  if (["header", "footer"].some((side) => Number(margins?.get(side) ?? 0.3) > MOST_MARGIN)) {
    found.push(misleading(own.name, "has its header or footer over the text of its pages"));
  }
  if (["left", "right", "top", "bottom", "header", "footer"].some((side) => Number(margins?.get(side) ?? 0) < 0)) {
    found.push(misleading(own.name, "has margins below 0, so that a part is printed off the page"));
  }
  const [bottom, foot] = [Number(margins?.get("bottom") ?? 0.7), Number(margins?.get("footer") ?? 0.3)];
  if (bottom < foot + FOOT_LINE) {
    found.push(
      misleading(own.name, "prints its cells over the foot of its pages, where the code is", "", `${bottom} in`),
    );
  }
  if (isOn(setup?.get("useFirstPageNumber")) && Number(setup?.get("firstPageNumber") ?? 1) > 1) {
    found.push(added(own.name, "counts its pages from another number than 1"));
  }
  return found;
}
