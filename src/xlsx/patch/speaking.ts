import { isRelations } from "../parts/namespaces";
import type { XmlElement } from "../parts/xml-tree";

/** Elements whose text is a formula or a reference, wherever they are. */
const FORMULAS = new Set([
  "f",
  "nf",
  "formula",
  "formula1",
  "formula2",
  "definedName",
  "calculatedColumnFormula",
  "totalsRowFormula",
]);
/** Attributes with a formula. */
const LINKS = new Set(["fmlaLink", "fmlaRange", "fmlaTxbx", "fmlaGroup", "textlink", "linkedCell", "listFillRange"]);
/** Attributes that are a formula in one kind of element: what a query asks for, and what another program's pane is tied to. */
const OWN_LINKS: Record<string, string> = { parameter: "cell", binding: "appref" };
/** Elements that name cells of the sheet whose bare name they hold. */
const NAMING_SHEETS = new Set(["worksheetSource", "dataRef", "rangeSet"]);
/** What the parts that speak of cells begin with. */
const ROOTS = new Set([
  "workbook",
  "worksheet",
  "chartSpace",
  "wsDr",
  "userShapes",
  "pivotCacheDefinition",
  "table",
  "formControlPr",
  "connections",
  "dialogsheet",
  "webextension",
]);
const HEAD_BYTES = 4096;

/** Whether the text of an element is a formula; newer parts of charts keep theirs in `sqref`. */
export const holdsFormula = ({ name, text, children }: XmlElement): boolean =>
  children.length === 0 && text !== "" && (FORMULAS.has(name) || (name === "sqref" && text.includes("!")));

/** Whether an attribute of an element holds a formula: also a limit of a scale or of a set of signs can be one. */
export const isLink = ({ name }: XmlElement, attribute: string, held: string): boolean =>
  LINKS.has(attribute) ||
  OWN_LINKS[name] === attribute ||
  (name === "cfvo" && attribute === "val" && !Number.isFinite(Number(held)));

/** The sheet whose cells an element names by a bare name; undefined where it names none, or one of another file. */
export const bareSheet = (element: XmlElement): string | undefined =>
  NAMING_SHEETS.has(element.name) && element.spaced(isRelations, "id") === undefined
    ? element.given.get("sheet")
    : undefined;

/** Whether a part can speak of cells, by its first tag: files may keep their parts in any folder. */
export function speaksOfCells(part: string, content: Uint8Array): boolean {
  if (!part.endsWith(".xml")) return false;
  const head = new TextDecoder().decode(content.subarray(0, HEAD_BYTES)).replace(/\0|<!--[\s\S]*?-->/g, "");
  return ROOTS.has(/<(?![?!])(?:[\w.-]+:)?([\w.-]+)/.exec(head)?.[1] ?? "");
}

/** The formulas in a drawing of old notes and controls, each as `change` gives it. */
export const withOldFormulas = (vml: string, change: (formula: string) => string): string =>
  vml.replace(/(<(?:\w+:)?Fmla(?:Link|Range|Txbx|Group|Pict)>)([^<]+)/g, (_, open: string, held: string) => {
    return open + change(held);
  });
