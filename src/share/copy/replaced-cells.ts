import { cellAt } from "../../cells/places";
import { areaOf, placeName, type SheetArea } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { InputError } from "../../core/errors";
import type { FileCell } from "../../xlsx/parts/file-cell";
import { type BookSheet, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { ourCalls } from "../calls";
import { howComputed } from "./how-computed";
import { nativeCells, nativeFormula } from "./native-formula";

/** A cell of the original whose formula does not go into the copy as it is. */
export interface ReplacedCell {
  sheet: BookSheet;
  address: string;
  cell: FileCell;
  /** The formula that went; for the body of a spill that of its first cell. */
  old: string;
  /** What is there instead: a formula without `=`, or "" where the value stays alone. */
  formula: string;
  /** The cells that it fills as an array formula; "" where it is none. */
  fills: string;
  value: Stated;
  /** How the value was computed, where it stays alone. */
  note: string;
}

const MOST_FILLED = 20_000;

/** The addresses of a rectangle on a sheet, row after row. */
function addressesOf({ top, left, bottom, right }: SheetArea): string[] {
  const [rows, columns] = [bottom - top + 1, right - left + 1];
  if (rows * columns > MOST_FILLED)
    throw new InputError("a spill", `fill at most ${MOST_FILLED} cells`, rows * columns);
  return Array.from({ length: rows * columns }, (_, i) => cellAt(top + Math.floor(i / columns), left + (i % columns)));
}

/** The cells of readings one by one, where they are as many in each direction as the spill's. */
function cellsLike(book: FileBook, sheet: string, spill: SheetArea): (readings: string) => string[] | null {
  return (readings) => {
    const area = areaOf(readings, sheet) ?? namedArea(book, readings);
    if (!area || area.bottom - area.top !== spill.bottom - spill.top) return null;
    if (area.right - area.left !== spill.right - spill.left) return null;
    return addressesOf(area).map((address) => (area.sheet === sheet ? address : placeName(area.sheet, address)));
  };
}

/** Rectangles that the add-in's spills fill, by `Sheet!A1` of their first cells. */
function spillsOf(book: FileBook): Map<string, string> {
  const spills = new Map<string, string>();
  for (const sheet of book.sheets) {
    for (const [address, { formula, fills }] of sheet.cells) {
      if (formula && fills && ourCalls(formula).length > 0) spills.set(`${sheet.name}!${address}`, fills);
    }
  }
  return spills;
}

function replacedAt(book: FileBook, sheet: BookSheet, address: string, spills: Map<string, string>): ReplacedCell[] {
  const cell = sheet.cells.get(address)!;
  const old = cell.formula ?? "";
  const spillOf = (reference: string) => {
    const area = areaOf(reference, sheet.name);
    const fills = area && spills.get(`${area.sheet}!${cellAt(area.top, area.left)}`);
    return fills ? (area.sheet === sheet.name ? fills : placeName(area.sheet, fills)) : null;
  };
  const native = nativeFormula(old, spillOf);
  if (native?.formula === old) return [];
  const area = areaOf(cell.fills ?? address, sheet.name);
  const addresses = area ? addressesOf(area) : [address];
  const each =
    area && addresses.every((one) => sheet.cells.has(one)) && nativeCells(old, cellsLike(book, sheet.name, area));
  const names = ourCalls(old);
  const note = native || each ? "" : howComputed(names);
  return addresses.flatMap((one, i) => {
    const here = sheet.cells.get(one);
    if (!here) return [];
    const formula = each ? each[i]! : i === 0 ? (native?.formula ?? "") : "";
    const inArray = i > 0 && native && !each;
    const fills = !each && native?.array && i === 0 ? (cell.fills ?? address) : "";
    const said = inArray ? `filled by the formula in ${address}` : note;
    return [{ sheet, address: one, cell: here, old, formula, fills, value: here.value, note: said }];
  });
}

/**
 * Every cell of a workbook whose formula calls the add-in, with what is there in a copy.
 *
 * @throws InputError if such a cell shows an error or was not calculated: a native formula might show a value there
 */
export function replacedCells(book: FileBook): ReplacedCell[] {
  const spills = spillsOf(book);
  const replaced = book.sheets.flatMap((sheet) =>
    [...sheet.cells].flatMap(([address, { formula }]) => (formula ? replacedAt(book, sheet, address, spills) : [])),
  );
  const wrong = replaced.filter(({ cell }) => cell.error !== undefined || (cell.formula && cell.value === null));
  if (wrong.length > 0) {
    const places = wrong.map(({ sheet, address }) => placeName(sheet.name, address)).join(", ");
    throw new InputError("add-in functions", "all give values before a copy is made", wrong[0]?.cell.error ?? null, {
      place: places,
    });
  }
  return replaced;
}
