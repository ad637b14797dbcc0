import { cellAt } from "../../cells/places";
import { addressParts, areaOf, placeName, type SheetArea } from "../../cells/sheet-area";
import { InputError } from "../../core/errors";
import type { FileCell, SheetContent } from "./file-cell";
import { checkParts, type DefinedName, openPackage } from "./package";
import { onlyRelation, textOf } from "./relations";
import { sharedTexts } from "./shared-strings";
import { sheetContent } from "./sheet-cells";
import type { XmlElement } from "./xml-tree";

/** A sheet of a file. */
export interface BookSheet extends SheetContent {
  name: string;
  part: string;
}

/** A workbook file as it is; nothing in it is calculated or looked up elsewhere. */
export interface FileBook {
  parts: Map<string, Uint8Array>;
  /** The part that lists the sheets. */
  main: string;
  /** The element of that part. */
  workbook: XmlElement;
  sheets: BookSheet[];
  /** Sheets that hold no cells, such as chart sheets. */
  others: { name: string; kind: string }[];
  /** What each defined name of the whole workbook is for, by its name. */
  names: Map<string, string>;
  /** Every defined name as it is listed, those of single sheets and doubled ones too. */
  allNames: DefinedName[];
  /** The texts that cells share, by their number. */
  texts: string[];
}

/** The cells of a sheet; what is wrong in it names the sheet. */
function contentOf(name: string, xml: string, texts: readonly string[], rich: ReadonlySet<number>): SheetContent {
  try {
    return sheetContent(xml, texts, rich);
  } catch (error) {
    const inCell = error instanceof InputError && error.place !== undefined && /^[A-Z]+\d+$/.test(error.place);
    throw inCell ? error.at(placeName(name, error.place!)) : error;
  }
}

/** The sheets, cells and names of a file from anywhere; each of its parts is well formed. */
export function openBook(file: Uint8Array): FileBook {
  const { parts, main, workbook, relations, sheets: listed, names } = openPackage(file);
  const strings = onlyRelation(relations, "sharedStrings")?.part;
  const { texts, rich } =
    strings === undefined ? { texts: [], rich: new Set<number>() } : sharedTexts(textOf(parts, strings));
  const sheets = listed
    .filter(({ kind }) => kind === "worksheet")
    .map(({ name, part }) => ({ name, part, ...contentOf(name, textOf(parts, part), texts, rich) }));
  const others = listed.filter(({ kind }) => kind !== "worksheet").map(({ name, kind }) => ({ name, kind }));
  checkParts(parts, new Set([main, strings ?? "", ...sheets.map(({ part }) => part)]));
  const global = names.filter(({ local }) => local === undefined).map(({ name, text }) => [name, text] as const);
  return { parts, main, workbook, sheets, others, names: new Map(global), allNames: names, texts };
}

/** The rectangle behind a defined name, or null where there is none or it leads nowhere. */
export function namedArea(book: FileBook, name: string): SheetArea | null {
  const text = book.names.get(name);
  const area = text === undefined ? null : areaOf(text, "");
  return area && book.sheets.some((sheet) => sheet.name === area.sheet) ? area : null;
}

/** A cell that holds something, by its place in a rectangle; both from 1. */
export interface PlacedCell {
  row: number;
  column: number;
  address: string;
  cell: FileCell;
}

const FEW_PLACES = 2000;

/** The cells of a rectangle that hold something, row after row. */
export function cellsIn(book: FileBook, { sheet, top, left, bottom, right }: SheetArea): PlacedCell[] {
  const cells = book.sheets.find(({ name }) => name === sheet)?.cells ?? new Map<string, FileCell>();
  const placed: PlacedCell[] = [];
  const place = (row: number, column: number, address: string, cell: FileCell | undefined) => {
    if (cell && (cell.value !== null || cell.error !== undefined || cell.formula !== undefined)) {
      placed.push({ row: row - top + 1, column: column - left + 1, address, cell });
    }
  };
  if ((bottom - top + 1) * (right - left + 1) <= FEW_PLACES) {
    for (let row = top; row <= bottom; row += 1) {
      for (let column = left; column <= right; column += 1) {
        const address = cellAt(row, column);
        place(row, column, address, cells.get(address));
      }
    }
    return placed;
  }
  for (const [address, cell] of cells) {
    const { row, column } = addressParts(address);
    if (row >= top && row <= bottom && column >= left && column <= right) place(row, column, address, cell);
  }
  return placed.sort((one, other) => one.row - other.row || one.column - other.column);
}
