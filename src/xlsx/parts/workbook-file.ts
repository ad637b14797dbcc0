import { cellAt } from "../../cells/places";
import { addressParts, areaOf, type SheetArea } from "../../cells/sheet-area";
import { InputError } from "../../core/errors";
import { attributesOf } from "./attributes";
import { relationsOf, textOf } from "./relations";
import { unzipped } from "./safe-file";
import { type FileCell, plainText, sheetCells } from "./sheet-cells";
import { xmlEvents } from "./xml";

/** A sheet of a file. */
export interface BookSheet {
  name: string;
  part: string;
  cells: Map<string, FileCell>;
}

/** A workbook file as it is; nothing in it is calculated or looked up elsewhere. */
export interface FileBook {
  parts: Map<string, Uint8Array>;
  /** The part that lists the sheets. */
  main: string;
  sheets: BookSheet[];
  /** What each defined name of the whole workbook is for, by its name. */
  names: Map<string, string>;
  /** The texts that cells share, by their number. */
  texts: string[];
}

const MOST_SHEETS = 255;

function sharedStrings(parts: Map<string, Uint8Array>, part: string | undefined): string[] {
  const texts: string[] = [];
  if (!part || !parts.has(part)) return texts;
  let text = "";
  let inside = "";
  let sound = 0;
  for (const event of xmlEvents(textOf(parts, part))) {
    if (event.kind === "text") {
      if (inside === "t" && sound === 0) text += event.text;
    } else if (event.kind === "close") {
      if (event.name === "rPh") sound -= 1;
      if (event.name === "si") {
        texts.push(plainText(text));
        text = "";
      }
      inside = "";
    } else {
      if (event.name === "rPh" && event.kind === "open") sound += 1;
      if (event.name === "si" && event.kind === "empty") texts.push("");
      inside = event.kind === "open" ? event.name : "";
    }
  }
  return texts;
}

interface Contents {
  sheets: { name: string; id: string }[];
  names: Map<string, string>;
}

function contentsOf(xml: string): Contents {
  const contents: Contents = { sheets: [], names: new Map() };
  let name: string | null = null;
  let text = "";
  for (const event of xmlEvents(xml)) {
    if (event.kind === "text") text += event.text;
    else if (event.kind === "close") {
      if (event.name === "definedName" && name !== null) contents.names.set(name, text.trim());
      name = null;
    } else if (event.name === "sheet") {
      const given = attributesOf(event.source);
      const id = [...given].find(([key]) => key.endsWith(":id"))?.[1] ?? "";
      contents.sheets.push({ name: given.get("name") ?? "", id });
    } else if (event.name === "definedName") {
      const given = attributesOf(event.source);
      name = given.has("localSheetId") ? null : (given.get("name") ?? "");
      text = "";
    }
  }
  return contents;
}

/** The sheets, cells and names of a file from anywhere. */
export function openBook(file: Uint8Array): FileBook {
  const parts = unzipped(file);
  const main = relationsOf(parts, "").find(({ type }) => type === "officeDocument")?.part ?? "";
  const relations = relationsOf(parts, main);
  const contents = contentsOf(textOf(parts, main));
  if (contents.sheets.length > MOST_SHEETS) {
    throw new InputError("the file", `hold at most ${MOST_SHEETS} sheets`, contents.sheets.length);
  }
  const texts = sharedStrings(parts, relations.find(({ type }) => type === "sharedStrings")?.part);
  const sheets = contents.sheets.flatMap(({ name, id }) => {
    const relation = relations.find((one) => one.id === id);
    if (relation?.type !== "worksheet") return [];
    return [{ name, part: relation.part, cells: sheetCells(textOf(parts, relation.part), texts) }];
  });
  return { parts, main, sheets, names: contents.names, texts };
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
