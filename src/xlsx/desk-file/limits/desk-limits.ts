import { LAST_COLUMN, LAST_ROW } from "../../../cells/box";
import { addressParts, areaOf, placeName, type SheetArea } from "../../../cells/sheet-area";
import { InputError } from "../../../core/errors";
import type { FileCell, FileRow, SheetContent } from "../../parts/file-cell";
import { isMain } from "../../parts/namespaces";
import type { FilePackage } from "../../parts/package";
import { onlyRelation, textOf } from "../../parts/relations";
import { sharedStrings } from "../../parts/shared-strings";
import { sheetContent } from "../../parts/sheet-cells";
import { childOf, childrenOf, type XmlElement, xmlTree } from "../../parts/xml-tree";
import { type Extent, extentOf } from "../place";
import { checkFarCells } from "./far-limits";
import { checkPlaces } from "./place-limits";

const DEEPEST = 64;
const MOST_MERGED = 200_000;
const MOST_FILLED = 100_000;
/** Some files say the width of a few columns twice. */
const MOST_DESCRIBED = 2 * LAST_COLUMN;

/** How deep the brackets of a formula are nested, those in quotes left out. */
function depthOf(formula: string): number {
  let depth = 0;
  let deepest = 0;
  for (const sign of formula.replace(/"[^"]*"|'[^']*'/g, "")) {
    if (sign === "(") depth += 1;
    if (sign === ")") depth -= 1;
    deepest = Math.max(deepest, depth);
  }
  return deepest;
}

const sizeOf = ({ top, left, bottom, right }: SheetArea) => (bottom - top + 1) * (right - left + 1);

/** Refuses formulas that are too deep or fill too much; `filled` cells are filled by those further up. */
function checkFormula(sheet: string, address: string, { formula = "", fills }: FileCell, filled: number): number {
  const place = placeName(sheet, address);
  if (depthOf(formula) > DEEPEST) {
    throw new InputError("the file", `hold formulas of at most ${DEEPEST} levels`, depthOf(formula), { place });
  }
  if (fills === undefined) return filled;
  const area = areaOf(fills, sheet);
  const all = area ? filled + sizeOf(area) : Number.NaN;
  if (!(all <= MOST_FILLED)) {
    const got = area && filled > 0 ? `${fills} after ${filled} cells of others` : fills;
    throw new InputError("the file", `fill at most ${MOST_FILLED} cells a sheet by array formulas`, got, { place });
  }
  return all;
}

/** The cells of all merges but the first of each, as `place` numbers them; refuses too many and those over each other. */
function checkMerges(sheet: string, references: readonly string[]): Pick<ReadSheet, "merges" | "covered"> {
  const areas = references.map((reference) => {
    const area = areaOf(reference, sheet);
    for (const corner of reference.split(":")) addressParts(corner.replaceAll("$", ""));
    if (!area) throw new InputError("the file", "merge cells with an address", reference, { place: sheet });
    return area;
  });
  const total = areas.reduce((sum, area) => sum + sizeOf(area), 0);
  if (total > MOST_MERGED) {
    throw new InputError("the file", `merge at most ${MOST_MERGED} cells a sheet`, total, { place: sheet });
  }
  const taken = new Set<number>();
  areas.forEach((area, i) => {
    for (let row = area.top; row <= area.bottom; row += 1) {
      for (let column = area.left; column <= area.right; column += 1) {
        const cell = placeNumber(row, column);
        if (taken.has(cell)) {
          throw new InputError("the file", "merge each cell once", references[i], { place: sheet });
        }
        taken.add(cell);
      }
    }
  });
  for (const { top, left } of areas) taken.delete(placeNumber(top, left));
  return { merges: areas, covered: taken };
}

function checkLines(sheet: string, rows: readonly FileRow[], columns: readonly XmlElement[]): void {
  const last = rows.find(({ number }) => number < 1 || number > LAST_ROW);
  if (last) throw new InputError("the file", `hold rows from 1 to ${LAST_ROW}`, last.number, { place: sheet });
  let described = 0;
  for (const { given } of columns) {
    const [first, end] = [Number(given.get("min")), Number(given.get("max"))];
    described += end - first + 1;
    if (!(first >= 1 && first <= end && end <= LAST_COLUMN)) {
      const got = `${given.get("min") ?? ""}:${given.get("max") ?? ""}`;
      throw new InputError("the file", `hold columns from 1 to ${LAST_COLUMN}`, got, { place: sheet });
    }
    if (described > MOST_DESCRIBED) {
      throw new InputError("the file", "say how wide each column is once", `${described} widths`, { place: sheet });
    }
  }
}

/** A sheet by our own reader. */
export interface ReadSheet extends SheetContent {
  /** The text of its part without that of its cells, and its elements with their places in it. */
  frame: string;
  root: XmlElement;
  columns: XmlElement[];
  merges: SheetArea[];
  /** The cells under merges, by `placeNumber`. */
  covered: ReadonlySet<number>;
  /** The last row and column that hold a cell. */
  size: Extent;
}

function sizeOfSheet(cells: SheetContent["cells"], merges: readonly SheetArea[]): Extent {
  const size: Extent = { rows: 0, columns: 0 };
  const reach = (row: number, column: number) => {
    size.rows = Math.max(size.rows, row);
    size.columns = Math.max(size.columns, column);
  };
  for (const address of cells.keys()) {
    const { row, column } = addressParts(address);
    reach(row, column);
  }
  for (const { bottom, right } of merges) reach(bottom, right);
  return size;
}

/** A number of its own for each cell of a sheet. */
export const placeNumber = (row: number, column: number): number => row * 20_000 + column;

/**
 * Refuses what would stop the grid or what it cannot show, with the place, before the grid sees the file.
 *
 * @returns Each sheet by its part
 */
export function checkForDesk(file: FilePackage): Map<string, ReadSheet> {
  const { parts, relations, sheets } = file;
  const all = new Map<string, ReadSheet>();
  const strings = onlyRelation(relations, "sharedStrings")?.part;
  const texts = strings === undefined ? [] : sharedStrings(textOf(parts, strings));
  for (const { name, part, kind } of sheets) {
    if (kind !== "worksheet") continue;
    const xml = textOf(parts, part);
    const content = sheetContent(xml, texts);
    let filled = 0;
    for (const [address, cell] of content.cells) filled = checkFormula(name, address, cell, filled);
    const frame = xml.slice(0, content.table.openEnd) + xml.slice(content.table.closeStart);
    const root = xmlTree(frame);
    const columns = childrenOf(root, isMain, "cols").flatMap((list) => childrenOf(list, isMain, "col"));
    checkLines(name, content.rows, columns);
    const merges = childrenOf(childOf(root, isMain, "mergeCells"), isMain, "mergeCell");
    const merged = checkMerges(
      name,
      merges.map(({ given }) => given.get("ref") ?? ""),
    );
    const size = sizeOfSheet(content.cells, merged.merges);
    checkPlaces(name, root, extentOf(size));
    all.set(part, { ...content, frame, root, columns, ...merged, size });
  }
  checkFarCells(file, all);
  return all;
}
