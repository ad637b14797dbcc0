import type { Shift } from "../desk-file/book";
import { type Edit, tagEdit } from "../parts/edits";
import { escaped } from "../parts/escaped";
import { isRelations } from "../parts/namespaces";
import type { XmlElement } from "../parts/xml-tree";
import { type FormulaPlace, ruleStart, shiftedFormula, shiftedList, shiftedPlace, shiftedSpan } from "./shift";
import { shiftedFilters } from "./shift-filters";
import { bareSheet, holdsFormula, isLink } from "./speaking";

/** Attributes that name cells of the sheet that holds them. */
const PLACES = ["ref", "sqref", "activeCell", "sourceRef"];
/** Elements that name one cell. */
const CELLS = ["inputCells", "cellWatch", "singleXmlCell", "cellSmartTags"];
/** Rules whose formula is written for the first of their cells. */
const RULES = ["conditionalFormatting", "dataValidation"];
/** Elements that go where none of their cells is left. */
const LEAVES = [
  ...RULES,
  "hyperlink",
  "mergeCell",
  "protectedRange",
  "ignoredError",
  "sparkline",
  "comment",
  "threadedComment",
  ...CELLS,
];

/** Lists that a file holds only with something in them. */
const EMPTIED = [
  "dataValidations",
  "conditionalFormattings",
  "hyperlinks",
  "mergeCells",
  "protectedRanges",
  "ignoredErrors",
  "sparklines",
  "sparklineGroup",
  "sparklineGroups",
  "scenario",
  "scenarios",
  "cellWatches",
  "smartTags",
  "ext",
  "extLst",
];

const sameName = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();
const inside = (element: XmlElement, text: string): Edit[] =>
  element.openEnd === element.end || text === element.text
    ? []
    : [{ start: element.openEnd, end: element.closeStart, text: escaped(text) }];

/** The cells that an element is for, as an attribute or as a child says. */
const cellsOf = ({ given, children }: XmlElement): string | undefined =>
  given.get("sqref") ?? given.get("ref") ?? children.find(({ name }) => name === "sqref")?.text;

/** A row or a column of a picture's corner: gone ones leave the corner where they were. */
function corner(element: XmlElement, axis: Shift["axis"], shift: Shift): Edit[] {
  const place = Number(element.text);
  if (axis !== shift.axis || !Number.isInteger(place)) return [];
  return inside(element, String(shiftedPlace(place, shift) ?? shift.at));
}

/** The columns that an entry of widths is for, or the row or column behind a page break. */
function numbered(element: XmlElement, shift: Shift): Edit[] | null {
  const { name, given } = element;
  if (name === "col" && shift.axis === "columns") {
    const span = shiftedSpan([Number(given.get("min")) - 1, Number(given.get("max")) - 1], shift);
    const gone = { start: element.start, end: element.end, text: "" };
    return span ? [tagEdit(element, { min: String(span[0] + 1), max: String(span[1] + 1) })] : [gone];
  }
  if (name !== "brk") return null;
  const moved = shiftedPlace(Number(given.get("id")), shift);
  return [
    moved === null ? { start: element.start, end: element.end, text: "" } : tagEdit(element, { id: String(moved) }),
  ];
}

function attributes(element: XmlElement, shift: Shift, place: FormulaPlace): Edit[] {
  const changes: Record<string, string> = {};
  for (const [name, held] of element.given) {
    if (name === "location" && element.name === "hyperlink") {
      // with an id it is a place in another file
      if (element.spaced(isRelations, "id") === undefined) changes[name] = shiftedFormula(held, shift, place);
    } else if (isLink(element, name, held)) changes[name] = shiftedFormula(held, shift, place);
    else if (place.own && (PLACES.includes(name) || (CELLS.includes(element.name) && name === "r"))) {
      changes[name] = shiftedList(held, shift) ?? held;
    }
  }
  const changed = Object.entries(changes).filter(([name, value]) => element.given.get(name) !== value);
  return changed.length === 0 ? [] : [tagEdit(element, Object.fromEntries(changed))];
}

/** The edits that let an element and all in it follow inserted or deleted rows or columns; cells are left out. */
export function elementShift(element: XmlElement, shift: Shift, place: FormulaPlace): Edit[] {
  const { name } = element;
  if (name === "sheetData") return [];
  if (place.own) {
    if (name === "row" || name === "col") {
      const drawn = element.text !== "" && corner(element, name === "row" ? "rows" : "columns", shift);
      if (drawn) return drawn;
    }
    const held = CELLS.includes(name) ? element.given.get("r") : cellsOf(element);
    if (LEAVES.includes(name) && held !== undefined && shiftedList(held, shift) === null) {
      return [{ start: element.start, end: element.end, text: "" }];
    }
    const wide = shift.axis === "columns" ? "colBreaks" : "rowBreaks";
    const breaks = element.name === wide ? element.children.flatMap((one) => numbered(one, shift) ?? []) : null;
    if (breaks) return breaks;
    if (name === "cols") return element.children.flatMap((one) => numbered(one, shift) ?? []);
    if (name === "autoFilter" || name === "nsvFilter") return shiftedFilters(element, shift);
    if (name === "sqref" && !holdsFormula(element))
      return inside(element, shiftedList(element.text, shift) ?? element.text);
  }
  const bare = bareSheet(element);
  if (bare !== undefined) return attributes(element, shift, { ...place, own: sameName(bare, place.sheet) });
  const isRule = place.own && RULES.includes(name);
  const here: FormulaPlace = isRule ? { ...place, rule: ruleStart(cellsOf(element) ?? "", shift) } : place;
  if (holdsFormula(element)) {
    return inside(element, shiftedFormula(element.text, shift, here));
  }
  const own = attributes(element, shift, here);
  const below = element.children.flatMap((one) => elementShift(one, shift, here));
  const gone = below.filter(
    ({ text, start, end }) => text === "" && element.children.some((one) => one.start === start && one.end === end),
  );
  if (EMPTIED.includes(name) && gone.length > 0 && gone.length === element.children.length) {
    return [{ start: element.start, end: element.end, text: "" }];
  }
  return gone.length > 0 && element.given.has("count")
    ? [tagEdit(element, { count: String(element.children.length - gone.length) }), ...below]
    : [...own, ...below];
}
