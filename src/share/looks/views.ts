import { isMain } from "../../xlsx/parts/namespaces";
import type { SheetElement } from "../../xlsx/parts/sheet-order";
import { childOf, childrenOf, type XmlElement } from "../../xlsx/parts/xml-tree";
import { added, changed, type Finding, misleading } from "../finding";
import { shortened } from "../shortened";
import { on } from "./file-looks";
import { footerFinding, footersWanted } from "./footers";
import type { OwnSheet } from "./own-sheet";

const ZOOM = [40, 250];
/** The zooms by which the views of pages go. */
const ZOOM_OF: Readonly<Record<string, readonly string[]>> = {
  pageLayout: ["zoomScalePageLayoutView"],
  pageBreakPreview: ["zoomScaleSheetLayoutView"],
};
const SCALE = [40, 250];
/** [inches]. */
const MOST_MARGIN = 1.5;
/** Rows of a page that can be read. */
const MOST_ROWS = 150;
const MOST_BREAKS = 10;
const MOST_BREAKS_ACROSS = 2;
/** Sizes of paper smaller than A5, and envelopes, by the numbers of ECMA-376 part 1, 18.3.1.63. */
const SMALL_PAPER = [
  15, 19, 20, 21, 22, 23, 27, 28, 30, 31, 32, 33, 34, 35, 36, 37, 38, 43, 47, 60, 61, 69, 70, 71, 72, 73, 74, 82, 91,
  92, 93, 94, 95,
];
const FIRST = "A1";
/** Elements that a sheet of the workbook has, or that programs add without showing anything else. */
const USUAL: ReadonlySet<string> = new Set<SheetElement>([
  "sheetPr",
  "dimension",
  "sheetViews",
  "sheetFormatPr",
  "cols",
  "sheetData",
  "sheetCalcPr",
  "sheetProtection",
  "mergeCells",
  "phoneticPr",
  "conditionalFormatting",
  "dataValidations",
  "hyperlinks",
  "printOptions",
  "pageMargins",
  "pageSetup",
  "headerFooter",
  "rowBreaks",
  "colBreaks",
  "customProperties",
  "cellWatches",
  "ignoredErrors",
  "drawing",
  "legacyDrawing",
]);
const WORDS: Readonly<Record<string, string>> = {
  autoFilter: "a filter, which hides rows",
  tableParts: "a table laid over its cells",
  oleObjects: "an embedded object",
  controls: "form controls",
  picture: "a picture behind its cells",
  scenarios: "scenarios, which change values",
  legacyDrawingHF: "a picture in its header or footer",
  drawingHF: "a picture in its header or footer",
  customSheetViews: "views that hide parts of it",
  extLst: "looks that only some programs show",
};

function viewFindings(own: OwnSheet, frame: XmlElement): Finding[] {
  const views = childrenOf(childOf(frame, isMain, "sheetViews"), isMain, "sheetView");
  const sheet = childOf(frame, isMain, "sheetPr")?.given;
  const bent = [
    ...(views.length > 1 ? [misleading(own.name, "has more than one view")] : []),
    ...(on(sheet?.get("transitionEvaluation")) ? [misleading(own.name, "calculates as another program did")] : []),
    ...(["0", "false"].includes(sheet?.get("enableFormatConditionsCalculation") ?? "1")
      ? [misleading(own.name, "keeps its colours when figures change")]
      : []),
  ];
  return bent.concat(
    views.flatMap((view) => {
      const given = (name: string) => view.given.get(name);
      const pane = childOf(view, isMain, "pane")?.given;
      const frozen = pane?.get("state")?.startsWith("frozen")
        ? { rows: Number(pane.get("ySplit") ?? 0), columns: Number(pane.get("xSplit") ?? 0) }
        : { rows: 0, columns: 0 };
      const said = (when: boolean, what: string, was = "", is = "") =>
        when ? [misleading(own.name, what, was, is)] : [];
      const zooms = ["zoomScale", "zoomScaleNormal", ...(ZOOM_OF[given("view") ?? ""] ?? [])].map((name) =>
        Number(given(name) ?? 100),
      );
      const zoom = zooms.find((one) => one > 0 && (one < ZOOM[0]! || one > ZOOM[1]!));
      const moved = frozen.rows + frozen.columns > 0 && (given("topLeftCell") ?? FIRST) !== FIRST;
      return [
        ...said(on(given("showFormulas")), "shows formulas in place of values"),
        ...said(["0", "false"].includes(given("showZeros") ?? "1"), "does not show zeros"),
        ...said(on(given("rightToLeft")), "is shown from right to left"),
        ...said(zoom !== undefined, "is shown too small or too large to read", "100 %", `${zoom} %`),
        ...said(
          frozen.rows > own.frozen.rows || frozen.columns > own.frozen.columns,
          "other rows or columns stay in sight than those of the workbook",
          `${own.frozen.rows} rows, ${own.frozen.columns} columns`,
          `${frozen.rows} rows, ${frozen.columns} columns`,
        ),
        ...said(
          moved,
          "its first rows or columns cannot be reached, since others are frozen",
          FIRST,
          given("topLeftCell"),
        ),
        ...said(pane !== undefined && !pane.get("state")?.startsWith("frozen"), "is split into parts"),
      ];
    }),
  );
}

function printFindings(own: OwnSheet, frame: XmlElement, code: string): Finding[] {
  const setup = childOf(frame, isMain, "pageSetup")?.given;
  const fits = on(childOf(childOf(frame, isMain, "sheetPr"), isMain, "pageSetUpPr")?.given.get("fitToPage"));
  const scale = Number(setup?.get("scale") ?? 100);
  const found: Finding[] = [];
  if (!fits && (scale < SCALE[0]! || scale > SCALE[1]!)) {
    found.push(misleading(own.name, "is printed too small or too large to read", "100 %", `${scale} %`));
  }
  const pages = Number(setup?.get("fitToHeight") ?? 1);
  if (fits && pages > 0 && own.manyPages && own.used.at(-1)!.row > MOST_ROWS * pages) {
    found.push(misleading(own.name, "is printed too small to read, all of it on one page"));
  }
  if (fits && Number(setup?.get("fitToWidth") ?? 1) > 20)
    found.push(misleading(own.name, "is printed over many pages"));
  if (on(setup?.get("blackAndWhite"))) found.push(misleading(own.name, "is printed without its colours"));
  if (on(setup?.get("draft"))) found.push(misleading(own.name, "is printed as a draft, without its charts"));
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
    ({ given }) => on(given.get("man")) && !own.pageEnds.includes(Number(given.get("id"))),
  );
  const across = childrenOf(childOf(frame, isMain, "colBreaks"), isMain, "brk").filter(({ given }) =>
    on(given.get("man")),
  );
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
  if (on(setup?.get("useFirstPageNumber")) && Number(setup?.get("firstPageNumber") ?? 1) > 1) {
    found.push(added(own.name, "counts its pages from another number than 1"));
  }
  return found;
}

/** An element below one that only some programs read; what a program adds in its own list is shown by no other part. */
function foreignIn({ children }: XmlElement): XmlElement | undefined {
  for (const child of children) {
    if (child.name === "extLst") continue;
    const found = isMain(child.space) ? foreignIn(child) : child;
    if (found) return found;
  }
  return undefined;
}

function otherParts(own: OwnSheet, frame: XmlElement): Finding[] {
  const seen = new Set<string>();
  return frame.children.flatMap((child) => {
    const foreign = isMain(child.space) && child.name !== "extLst" ? foreignIn(child) : undefined;
    if (foreign) {
      return [misleading(own.name, `holds what only some programs read (${foreign.name} in ${child.name})`)];
    }
    const twice = seen.has(child.name) && child.name !== "conditionalFormatting";
    seen.add(child.name);
    if (twice) return [misleading(own.name, `holds ${child.name} twice, of which programs read one or the other`)];
    if (isMain(child.space) && USUAL.has(child.name)) return [];
    return [
      misleading(
        own.name,
        `holds ${WORDS[child.name] ?? `a part that Canfall's own workbook does not have (${child.name})`}`,
      ),
    ];
  });
}

/** Where a link of a cell leads, as far as it is not a place of the workbook. */
function linkFindings(own: OwnSheet, frame: XmlElement): Finding[] {
  return childrenOf(childOf(frame, isMain, "hyperlinks"), isMain, "hyperlink").map(({ given }) => {
    const where = `${own.name}!${given.get("ref") ?? ""}`;
    const words = given.get("tooltip");
    return words
      ? misleading(where, `has a link that shows "${shortened(words, 60)}"`)
      : added(where, "has a link", "", given.get("location") ?? "elsewhere");
  });
}

/** Prompts that are shown beside cells; the workbook has none. */
function promptFindings(own: OwnSheet, frame: XmlElement): Finding[] {
  return childrenOf(childOf(frame, isMain, "dataValidations"), isMain, "dataValidation").flatMap(({ given }) => {
    const prompt = [given.get("promptTitle"), given.get("prompt")].filter(Boolean).join(": ");
    return prompt && on(given.get("showInputMessage"))
      ? [
          misleading(
            `${own.name}!${(given.get("sqref") ?? "").split(" ")[0]}`,
            `shows a note "${shortened(prompt, 60)}" when it is chosen`,
          ),
        ]
      : [];
  });
}

/** Whether a person may type over its formulas, or change its looks. */
export function protectionFindings(own: OwnSheet, frame: XmlElement): Finding[] {
  const given = childOf(frame, isMain, "sheetProtection")?.given;
  const allowed = ["formatCells", "insertRows", "deleteRows", "insertColumns", "deleteColumns"].some((name) =>
    ["0", "false"].includes(given?.get(name) ?? "1"),
  );
  if (given && on(given.get("sheet")) && !allowed) return [];
  return [added(own.name, "its protection was taken off or loosened")];
}

/** What of a sheet's view, print and other parts shows other than the workbook's own sheet. */
export const viewAndPrintFindings = (own: OwnSheet, frame: XmlElement, code: string): Finding[] => [
  ...viewFindings(own, frame),
  ...printFindings(own, frame, code),
  ...otherParts(own, frame),
  ...linkFindings(own, frame),
  ...promptFindings(own, frame),
];
