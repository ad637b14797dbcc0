import { areaOf, type SheetArea } from "../../../cells/sheet-area";
import { isMain, isRelations } from "../../../xlsx/parts/namespaces";
import { relationsOf } from "../../../xlsx/parts/relations";
import type { SheetElement } from "../../../xlsx/parts/sheet-order";
import type { BookSheet, FileBook } from "../../../xlsx/parts/workbook-file";
import { childOf, childrenOf, isOn, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { added, type Finding, misleading } from "../../finding";
import { shortened } from "../../shortened";
import { foreignIn } from "../book/foreign";
import type { OwnSheet } from "./own-sheet";
import { printFindings } from "./printed";

const ZOOM = [40, 250];
/** The zooms by which the views of pages go. */
const ZOOM_OF: Readonly<Record<string, readonly string[]>> = {
  pageLayout: ["zoomScalePageLayoutView"],
  pageBreakPreview: ["zoomScaleSheetLayoutView"],
};
const FIRST = "A1";
/** So many rows or columns past its cells nobody leaves a sheet by chance. */
const [FAR_ROWS, FAR_COLUMNS] = [60, 20];
const isPast = ({ top, left }: SheetArea, row: number, column: number) =>
  top > row + FAR_ROWS || left > column + FAR_COLUMNS;
const PASSWORDS = ["password", "hashValue"];
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
    ...(isOn(sheet?.get("transitionEvaluation")) ? [misleading(own.name, "calculates as another program did")] : []),
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
      const start = areaOf(given("topLeftCell") ?? FIRST, "");
      const isAway = start !== null && own.used.every(({ row, column }) => isPast(start, row, column));
      const moved = frozen.rows + frozen.columns > 0 && (given("topLeftCell") ?? FIRST) !== FIRST;
      return [
        ...said(isOn(given("showFormulas")), "shows formulas in place of values"),
        ...said(["0", "false"].includes(given("showZeros") ?? "1"), "does not show zeros"),
        ...said(isOn(given("rightToLeft")), "is shown from right to left"),
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
        ...said(isAway, "opens at a place where it has no cells", FIRST, given("topLeftCell")),
        ...said(pane !== undefined && !pane.get("state")?.startsWith("frozen"), "is split into parts"),
      ];
    }),
  );
}

/** What a sheet shows by a relation that it does not have as it is written; some programs find it by another case of its name. */
function lostParts({ parts }: FileBook, own: OwnSheet, part: string, frame: XmlElement): Finding[] {
  const known = new Set(relationsOf(parts, part).map(({ id }) => id));
  return frame.children.flatMap((child) => {
    const id = child.spaced(isRelations, "id");
    return id === undefined || known.has(id)
      ? []
      : [misleading(own.name, `holds a ${child.name} to which nothing in the file leads`)];
  });
}

function otherParts(own: OwnSheet, frame: XmlElement): Finding[] {
  const seen = new Set<string>();
  return frame.children.flatMap((child) => {
    const isOwn = child.space === frame.space;
    const foreign = isOwn && child.name !== "extLst" ? foreignIn(child) : undefined;
    if (foreign) {
      return [misleading(own.name, `holds what only some programs read (${foreign.name} in ${child.name})`)];
    }
    const twice = seen.has(child.name) && child.name !== "conditionalFormatting";
    seen.add(child.name);
    if (twice)
      return [misleading(own.name, `holds settings twice (${child.name}), of which programs read one or the other`)];
    if (isOwn && USUAL.has(child.name)) return [];
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
    return prompt && isOn(given.get("showInputMessage"))
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
  const isProtected = isOn(given?.get("sheet"));
  return [
    ...(isProtected && !allowed ? [] : [added(own.name, "its protection was taken off or loosened")]),
    ...(isProtected && PASSWORDS.some((name) => given?.has(name))
      ? [added(own.name, "is protected with a password")]
      : []),
    ...(isProtected && isOn(given?.get("selectLockedCells"))
      ? [misleading(own.name, "its cells cannot be chosen, so that nobody sees their formulas")]
      : []),
  ];
}

/** What of a sheet's view, print and other parts shows other than the workbook's own sheet. */
export const viewAndPrintFindings = (
  book: FileBook,
  own: OwnSheet,
  { part }: BookSheet,
  frame: XmlElement,
  code: string,
): Finding[] => [
  ...viewFindings(own, frame),
  ...printFindings(own, frame, code),
  ...otherParts(own, frame),
  ...lostParts(book, own, part, frame),
  ...linkFindings(own, frame),
  ...promptFindings(own, frame),
];
