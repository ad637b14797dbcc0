import { isMain } from "../../../xlsx/parts/namespaces";
import type { FileBook } from "../../../xlsx/parts/workbook-file";
import { childOf, childrenOf, isOn, within, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { added, changed, type Finding, misleading } from "../../finding";
import { shortened } from "../../shortened";
import type { OwnSheet } from "../sheets/own-sheet";
import { carriedFindings } from "./carried";
import { foreignIn } from "./foreign";
import { oddNotation } from "./notations";
import { reachesOut, reachingFindings, STRINGS } from "./reaching-out";

const FILE = "the file";
/** Names of the workbook's own that are given twice, for one sheet only, or lead out of the file. */
function nameFindings({ allNames }: FileBook, own: ReadonlySet<string>): Finding[] {
  const seen = new Set<string>();
  return allNames.flatMap(({ name, text, local }) => {
    const key = name.toLowerCase();
    const ours = own.has(key);
    const twice = seen.has(`${local ?? ""} ${key}`);
    seen.add(`${local ?? ""} ${key}`);
    if (ours && local !== undefined)
      return [changed(`the name ${name}`, "is given again for one sheet only", "", text)];
    if (ours && twice) return [changed(`the name ${name}`, "is given twice", "", text)];
    if (/\[\d+\]|\|/.test(text.replace(STRINGS, ""))) {
      return [misleading(`the name ${name}`, "leads to another file", "", shortened(text, 60))];
    }
    if (reachesOut(text)) {
      return [misleading(`the name ${name}`, "fetches something from outside the file", "", shortened(text, 60))];
    }
    if (local === undefined && /^(_xlnm\.)?Print_(Area|Titles)$/i.test(name)) {
      return [
        misleading(
          `the name ${name.replace("_xlnm.", "")}`,
          "says what is printed, but not of which sheet",
          "",
          shortened(text, 60),
        ),
      ];
    }
    if (/^_xlnm\.(?!Print_|_?FilterDatabase|Extract|Criteria)/i.test(name)) {
      return [misleading(`the name ${name}`, "runs something when the file is opened", "", shortened(text, 60))];
    }
    return [];
  });
}

const withoutSheet = (reference: string) =>
  reference
    .split(/,(?=(?:[^']*'[^']*')*[^']*$)/)
    .map((one) => one.slice(one.lastIndexOf("!") + 1).replaceAll("$", ""))
    .sort()
    .join(",");

/** What is printed, and repeated on each page, where that is not the workbook's. */
function printedFindings({ workbook, allNames }: FileBook, own: readonly OwnSheet[]): Finding[] {
  const listed = childrenOf(childOf(workbook, isMain, "sheets"), isMain, "sheet").map(({ given }) => given.get("name"));
  return allNames.flatMap(({ name, text, local }) => {
    const sheet = own.find((one) => local !== undefined && one.name === listed[local]);
    if (!sheet) return [];
    const is = withoutSheet(text);
    if (/^(_xlnm\.)?Print_Area$/i.test(name) && is !== (sheet.printed ?? "")) {
      return [misleading(sheet.name, "only a part of it is printed", sheet.printed ?? "all", is)];
    }
    if (/^(_xlnm\.)?Print_Titles$/i.test(name) && is !== (sheet.repeated ?? "")) {
      return [misleading(sheet.name, "other rows or columns are repeated on its pages", sheet.repeated ?? "none", is)];
    }
    return [];
  });
}

/** Share of a window's width below which no tab of a sheet is seen [0.1 %]. */
const LEAST_TABS = 50;
/** No screen begins so far to the left or the top [20ths of a point]. */
const FAR_OFF = 30_000;
const isFarOff = (view: ReadonlyMap<string, string>) =>
  ["xWindow", "yWindow"].some(
    (side) => Math.abs(Number(view.get(side) ?? 0)) > FAR_OFF && !isOn(view.get("minimized")),
  );
/** No window is so small that somebody reads in it [20ths of a point]. */
const LEAST_WINDOW = 2000;
const isTiny = (view: ReadonlyMap<string, string>) =>
  ["windowWidth", "windowHeight"].some((side) => Number(view.get(side) ?? LEAST_WINDOW) < LEAST_WINDOW);
const SCROLLS = ["showHorizontalScroll", "showVerticalScroll"];

function settingFindings({ workbook }: FileBook): Finding[] {
  const given = (name: string) => childOf(workbook, isMain, name)?.given;
  const calc = given("calcPr");
  const views = childrenOf(childOf(workbook, isMain, "bookViews"), isMain, "workbookView").map(({ given }) => given);
  const off = (value: string | undefined) => value === "0" || value === "false";
  const said = (when: boolean, finding: Finding) => (when ? [finding] : []);
  return [
    ...said(
      isOn(given("workbookPr")?.get("date1904")),
      misleading(FILE, "counts days from 1904: each date shows four years later", "1900", "1904"),
    ),
    ...said(
      off(given("workbookPr")?.get("dateCompatibility")),
      misleading(FILE, "counts days by another calendar, of which programs know one or the other"),
    ),
    ...said(
      off(calc?.get("fullPrecision")),
      misleading(FILE, "calculates with figures as they are displayed, not as they are"),
    ),
    ...said(
      (calc?.get("calcMode") ?? "auto") !== "auto",
      added(FILE, "calculates only when it is told to", "automatic", "manual"),
    ),
    ...said(
      calc?.get("refMode") === "R1C1",
      added(FILE, "calls its columns by numbers, so that B12 is R12C2", "A1", "R1C1"),
    ),
    ...said(
      given("fileSharing") !== undefined,
      added(
        FILE,
        `asks to be opened for reading only, in the name of "${shortened(given("fileSharing")?.get("userName") ?? "", 60)}"`,
      ),
    ),
    ...said(isOn(calc?.get("iterate")), added(FILE, "allows formulas that refer to themselves")),
    ...said(
      views.some((view) => off(view.get("showSheetTabs")) || Number(view.get("tabRatio") ?? 600) < LEAST_TABS),
      misleading(FILE, "does not show the tabs of its sheets"),
    ),
    ...said(
      views.some((view) => Number(view.get("firstSheet") ?? 0) > 0),
      added(FILE, "opens with the tabs of its first sheets moved out of sight"),
    ),
    ...said(
      views.some((view) => (view.get("visibility") ?? "visible") !== "visible" || isFarOff(view) || isTiny(view)),
      misleading(FILE, "opens out of sight"),
    ),
    ...said(
      views.some((view) => SCROLLS.some((bar) => off(view.get(bar)))),
      misleading(FILE, "has no bars to scroll to what is out of sight"),
    ),
    ...said((given("workbookPr")?.get("showObjects") ?? "all") !== "all", misleading(FILE, "does not show its charts")),
    ...said(
      childOf(workbook, isMain, "customWorkbookViews") !== undefined,
      misleading(FILE, "has views that hide parts of it"),
    ),
  ];
}

function sheetStateFindings({ workbook, others }: FileBook, own: ReadonlySet<string>): Finding[] {
  const hidden = childrenOf(childOf(workbook, isMain, "sheets"), isMain, "sheet").filter(
    ({ given }) => (given.get("state") ?? "visible") !== "visible",
  );
  return [
    ...hidden.map(({ given }) => {
      const name = given.get("name") ?? "";
      return own.has(name.toLowerCase())
        ? misleading(name, "the sheet is hidden", "in sight", "hidden")
        : added(name, "is a hidden sheet that Canfall's own workbook does not have");
    }),
    ...others.map(({ name, kind }) =>
      kind === "chartsheet"
        ? added(name, "is a sheet with a chart only")
        : misleading(name, "is a sheet of macros or a dialog"),
    ),
  ];
}

/** What programs list of a workbook without carrying or showing more; what is wrong with these is looked at by its name. */
const USUAL =
  "fileVersion fileSharing workbookPr workbookProtection bookViews sheets externalReferences definedNames calcPr customWorkbookViews pivotCaches smartTagPr smartTagTypes extLst".split(
    " ",
  );

/** Elements that some programs read in one way and some in another. */
function ambiguousFindings({ workbook }: FileBook): Finding[] {
  const names = workbook.children.map(({ name }) => name);
  const doubled = names.filter((name, index) => names.indexOf(name) !== index && name !== "AlternateContent");
  if (doubled.length > 0) {
    return [misleading(FILE, `holds settings twice (${doubled[0]}), of which programs read one or the other`)];
  }
  const foreign = workbook.children.filter(({ space, name }) => space !== workbook.space && name !== "extLst");
  const twofold =
    foreign.some((one) => [one, ...within(one)].some(({ space }) => isMain(space))) ||
    workbook.children.some((child) => child.space === workbook.space && child.name !== "extLst" && foreignIn(child));
  const odd = oddNotation(within(workbook));
  const strange = workbook.children.find(({ space, name }) => isMain(space) && !USUAL.includes(name));
  return [
    ...(strange
      ? [added(FILE, `holds a part that Canfall's own workbook does not have (${strange.name.slice(0, 40)})`)]
      : []),
    ...(twofold ? [misleading(FILE, "lists parts that only some programs read")] : []),
    ...(odd === "" ? [] : [misleading(FILE, `writes a setting in a way that programs read differently (${odd})`)]),
  ];
}

function chosenFindings(frames: ReadonlyMap<string, XmlElement>): Finding[] {
  const chosen = [...frames.values()].filter((frame) =>
    [...within(frame)].some(({ name, given }) => name === "sheetView" && isOn(given.get("tabSelected"))),
  );
  return chosen.length > 1 ? [added(FILE, "opens with several sheets chosen: what is typed goes into each")] : [];
}

/** What of a file as a whole shows, fetches or carries something else than its sheets say. */
export function bookFindings(
  book: FileBook,
  names: ReadonlySet<string>,
  sheets: ReadonlySet<string>,
  own: readonly OwnSheet[],
  frames: ReadonlyMap<string, XmlElement>,
): Finding[] {
  return [
    ...nameFindings(book, names),
    ...printedFindings(book, own),
    ...settingFindings(book),
    ...sheetStateFindings(book, sheets),
    ...carriedFindings(book),
    ...ambiguousFindings(book),
    ...reachingFindings(book, frames),
    ...chosenFindings(frames),
  ];
}
