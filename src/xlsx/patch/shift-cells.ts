import { cellAt } from "../../cells/places";
import { addressParts } from "../../cells/sheet-area";
import type { Shift } from "../desk-file/book";
import type { Edit } from "../parts/edits";
import { escaped } from "../parts/escaped";
import type { FileCell } from "../parts/file-cell";
import { EVERY_TEXT, sheetContent } from "../parts/sheet-cells";
import { xmlTree } from "../parts/xml-tree";
import { formulaText } from "./cell-text";
import { type FormulaPlace, shiftedFormula, shiftedPlace, shiftedReference } from "./shift";

/** An opening tag with another value of an attribute; attributes of rows and cells hold no `>`. */
function retagged(xml: string, start: number, name: string, value: string | null): Edit {
  const end = xml.indexOf(">", start) + 1;
  const tag = xml.slice(start, end);
  const attribute = new RegExp(`\\s${name}=("[^"]*"|'[^']*')`);
  const text = value === null ? "" : ` ${name}="${value}"`;
  const changed = attribute.test(tag) ? tag.replace(attribute, text) : tag.replace(/^<[^\s/>]+/, (open) => open + text);
  return { start, end, text: changed };
}

/** Formulas that share one and whose references a shift changes: each gets its own. */
function split(cells: ReadonlyMap<string, FileCell>, shift: Shift, place: FormulaPlace): Set<string> {
  const found = new Set<string>();
  for (const { shared, formula } of cells.values()) {
    if (shared === undefined || formula === undefined) continue;
    if (place.own || shiftedFormula(formula, shift, place) !== formula) found.add(shared);
  }
  return found;
}

function formulaEdit(
  xml: string,
  p: string,
  cell: FileCell,
  shift: Shift,
  place: FormulaPlace,
  apart: boolean,
): Edit | null {
  const { formulaPlace, formula = "", kind } = cell;
  if (!formulaPlace) return null;
  const [start, end] = formulaPlace;
  const text = shiftedFormula(formula, shift, place);
  if (kind === "shared") return apart ? { start, end, text: formulaText(p, text) } : null;
  let source = xml.slice(start, end);
  const close = source.indexOf(">");
  if (place.own && kind !== undefined) {
    const tag = source.slice(0, close).replace(/\s(ref|r1|r2)="([^"]*)"/g, (whole, name: string, held: string) => {
      const moved = shiftedReference(held, shift);
      return moved === null ? whole : ` ${name}="${moved}"`;
    });
    source = tag + source.slice(close);
  }
  if (text !== formula) {
    const open = source.slice(0, source.indexOf(">") + 1);
    source = `${open}${escaped(text)}</${p}f>`;
  }
  return source === xml.slice(start, end) ? null : { start, end, text: source };
}

/** The edits that move the rows and cells of a sheet and the references in its formulas. */
export function cellShift(xml: string, shift: Shift, place: FormulaPlace): Edit[] {
  const { cells, rows } = sheetContent(xml, EVERY_TEXT);
  const p = xmlTree(xml, (name) => name === "sheetData").prefix;
  const edits: Edit[] = [];
  const goneRows = new Set<number>();
  if (place.own) {
    for (const row of rows) {
      const number = shift.axis === "rows" ? shiftedPlace(row.number - 1, shift) : row.number - 1;
      if (number === null) {
        goneRows.add(row.number);
        edits.push({ start: row.start, end: row.end, text: "" });
      } else if (number !== row.number - 1) edits.push(retagged(xml, row.start, "r", String(number + 1)));
      else if (shift.axis === "columns") edits.push(retagged(xml, row.start, "spans", null));
    }
  }
  const apart = split(cells, shift, place);
  for (const [address, cell] of cells) {
    const { row, column } = addressParts(address);
    if (goneRows.has(row)) continue;
    if (place.own) {
      const across = shift.axis === "columns" ? shiftedPlace(column - 1, shift) : column - 1;
      const down = shift.axis === "rows" ? shiftedPlace(row - 1, shift) : row - 1;
      if (across === null || down === null) {
        edits.push({ start: cell.start, end: cell.end, text: "" });
        continue;
      }
      const moved = cellAt(down + 1, across + 1);
      if (moved !== address) edits.push(retagged(xml, cell.start, "r", moved));
    }
    const formula = formulaEdit(xml, p, cell, shift, place, cell.shared !== undefined && apart.has(cell.shared));
    if (formula) edits.push(formula);
  }
  return edits;
}
