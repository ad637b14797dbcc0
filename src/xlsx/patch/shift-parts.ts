import type { Shift } from "../desk-file/book";
import { edited } from "../parts/edits";
import { relationsOf, textOf } from "../parts/relations";
import { decoded } from "../parts/xml";
import { type XmlElement, xmlTree } from "../parts/xml-tree";
import { relinkShapes } from "./shape-links";
import { type FormulaPlace, shiftedFormula, shiftedPlace, shiftedReference } from "./shift";
import { cellShift } from "./shift-cells";
import { elementShift } from "./shift-elements";
import { speaksOfCells, withOldFormulas } from "./speaking";
import { type Parts, writePart } from "./write-part";

/** Parts of a sheet that go along with its cells. */
const KINDS = ["drawing", "comments", "table", "ctrlProp", "pivotTable", "tableSingleCells"];
/** Newer kinds of these, by the end of their type. */
const isNewer = (type: string) => /\/(threadedComment|namedSheetView)$/.test(type);

const treeOf = (xml: string): XmlElement => xmlTree(xml, (name) => name === "sheetData");

function shiftPart(parts: Parts, part: string, shift: Shift, place: FormulaPlace): void {
  const xml = decoded(parts.get(part)!);
  const root = treeOf(xml);
  const cells = root.name === "worksheet" ? cellShift(xml, shift, place) : [];
  const edits = [...cells, ...elementShift(root, shift, place)];
  if (edits.length > 0) writePart(parts, part, edited(xml, edits));
}

/** The numbers that a drawing of old notes and controls gives as rows or columns, and its formulas. */
function shiftNotes(parts: Parts, part: string, shift: Shift, place: FormulaPlace): void {
  const [tag, first] = shift.axis === "rows" ? ["Row", 2] : ["Column", 0];
  const text = decoded(parts.get(part)!).replace(/<(\w+:)?shape\b[\s\S]*?<\/\1shape>/g, (shape) => {
    const held = new RegExp(`<(\\w+:)?${tag}>\\s*(\\d+)\\s*<`).exec(shape);
    if (held && shiftedPlace(Number(held[2]), shift) === null) return "";
    const moved = (one: string) => String(shiftedPlace(Number(one), shift) ?? shift.at);
    return shape
      .replace(new RegExp(`(<(?:\\w+:)?${tag}>\\s*)(\\d+)`), (_, open: string, one: string) => open + moved(one))
      .replace(/(<(?:\w+:)?Anchor>)([^<]*)/, (_, open: string, list: string) => {
        const numbers = list.split(",");
        const places = [first, first + 4];
        return open + numbers.map((one, i) => (places.includes(i) ? ` ${moved(one)}` : one)).join(",");
      });
  });
  writePart(
    parts,
    part,
    withOldFormulas(text, (formula) => shiftedFormula(formula, shift, place)),
  );
}

/** Where a shift takes the cells of a table or pivot table; null where it can't: columns would need names, a header is gone. */
function follows(ref: string, shift: Shift): string | null {
  const [from = "", to = from] = ref.split(":");
  const [left, right] = [shiftedReference(from, shift), shiftedReference(to, shift)];
  if (left === null || right === null) return null;
  const letters = (one: string) => one.replace(/\d+$/, "");
  const wide = (one: string, other: string) => columnsBetween(letters(one), letters(other));
  return wide(from, to) === wide(left, right) ? `${left}:${right}` : null;
}

/** The cells of a table or pivot table. */
function cellsOf(parts: Parts, part: string): string {
  const root = xmlTree(textOf(parts, part));
  return root.given.get("ref") ?? root.children.find(({ name }) => name === "location")?.given.get("ref") ?? "";
}

/** Whether one of these shifts, in their order, leaves a table or pivot table behind. */
function staysBehind(parts: Parts, part: string, shifts: readonly Shift[]): boolean {
  let ref: string | null = cellsOf(parts, part);
  for (const shift of shifts) if (ref !== null) ref = follows(ref, shift);
  return ref === null;
}

const number = (letters: string) => [...letters].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0);
const columnsBetween = (left: string, right: string) => number(right) - number(left);

/** What of a sheet can't go along with these shifts, in words. */
export function leftBehind(parts: Parts, sheet: string, shifts: readonly Shift[]): string[] {
  const found = relationsOf(parts, sheet).flatMap(({ kind, part }) => {
    const words = kind === "table" ? "tables" : kind === "pivotTable" ? "pivot tables" : "";
    return words !== "" && parts.has(part) && staysBehind(parts, part, shifts) ? [words] : [];
  });
  return [...new Set(found)];
}

/** Lets all of a file follow rows or columns that were inserted or deleted in one of its sheets. */
export function shiftSheet(parts: Parts, sheet: string, name: string, shift: Shift): void {
  const relations = relationsOf(parts, sheet).filter(({ part }) => parts.has(part));
  const along = new Set([sheet]);
  for (const { kind, type, part } of relations) {
    if (kind === "vmlDrawing") shiftNotes(parts, part, shift, { sheet: name, own: true });
    else if (KINDS.includes(kind) || isNewer(type)) {
      const stays = (kind === "table" || kind === "pivotTable") && staysBehind(parts, part, [shift]);
      if (!stays) along.add(part);
    }
  }
  const others = [...parts].flatMap(([part, content]) =>
    !along.has(part) && speaksOfCells(part, content) ? [part] : [],
  );
  for (const part of along) shiftPart(parts, part, shift, { sheet: name, own: true });
  for (const part of others) shiftPart(parts, part, shift, { sheet: name, own: false });
  relinkShapes(parts, (formula) => shiftedFormula(formula, shift, { sheet: name, own: false }));
}
