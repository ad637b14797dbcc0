import type { CellValueInput, Cell as FileCell, Workbook, Worksheet, WorksheetView } from "@cj-tech-master/excelts";
import type { Cell } from "../../cells/cell";
import { columnLetters } from "../../cells/letters";
import type { BookChange, CellChange, Frozen, SheetChange } from "./book";
import type { PictureWords } from "./drawing";
import { callsOurs, storedFormula } from "./formula";
import { setLook } from "./look";
import { setPictures } from "./picture";
import { addresses, filled } from "./read";

const PIXELS_A_CHARACTER = 7;
const CELL_PADDING_PX = 5;

type Result = number | string | boolean | { error: "#VALUE!" };

const result = (value: Cell | undefined): Result => {
  if (value === null || value === undefined) return "";
  return typeof value === "object" ? { error: value.error as "#VALUE!" } : value;
};

function clearSpill(sheet: Worksheet, cell: FileCell): void {
  const ref = filled(cell);
  if (!ref?.includes(":")) return;
  for (const address of addresses(ref)) if (address !== cell.address) sheet.getCell(address).value = null;
}

function writeFormula(sheet: Worksheet, cell: FileCell, formula: string, { value, spill }: CellChange): void {
  const stored = storedFormula(formula);
  if (!spill && !callsOurs(formula)) {
    cell.value = { formula: stored, result: result(value) };
    return;
  }
  const [row, column] = [Number(cell.row), Number(cell.col)];
  const last = spill ? `:${columnLetters(column + spill[0]!.length - 1)}${row + spill.length - 1}` : "";
  cell.value = {
    formula: stored,
    result: result(value),
    shareType: "array",
    ref: `${cell.address}${last}`,
    isDynamicArray: true,
  };
  spill?.forEach((line, i) => {
    line.forEach((one, j) => {
      if (i + j > 0) sheet.getCell(row + i, column + j).value = result(one);
    });
  });
}

function writeCell(sheet: Worksheet, change: CellChange): void {
  const cell = sheet.getCell(change.row + 1, change.column + 1);
  const { input } = change;
  if (change.look) setLook(cell, change.look);
  if (input === undefined) {
    if (cell.formula && change.value !== undefined) {
      cell.value = { ...(cell.value as object), result: result(change.value) } as CellValueInput;
    }
    return;
  }
  clearSpill(sheet, cell);
  if (typeof input === "string" && input.startsWith("=")) writeFormula(sheet, cell, input, change);
  else cell.value = input === "" ? null : input;
}

function setFrozen(sheet: Worksheet, { rows, columns }: Frozen): void {
  const {
    state: _,
    xSplit: __,
    ySplit: ___,
    topLeftCell: ____,
    ...view
  } = { ...sheet.views?.[0] } as WorksheetView & Partial<Record<"xSplit" | "ySplit" | "topLeftCell", unknown>>;
  const frozen = { state: "frozen", xSplit: columns, ySplit: rows } as const;
  sheet.views = [{ ...view, ...(rows + columns > 0 ? frozen : { state: "normal" }) } as WorksheetView];
}

type Words = Map<number, PictureWords[]>;

function writeSheet(workbook: Workbook, ids: Map<string, number>, words: Words, change: SheetChange): Worksheet {
  const id = ids.get(change.key);
  const sheet = workbook.worksheets.find((one) => one.id === id) ?? workbook.addWorksheet(change.name);
  ids.set(change.key, sheet.id);
  if (sheet.name !== change.name) sheet.name = change.name;
  for (const [column, width] of Object.entries(change.widths)) {
    sheet.getColumn(Number(column) + 1).width = (width - CELL_PADDING_PX) / PIXELS_A_CHARACTER;
  }
  if (change.frozen) setFrozen(sheet, change.frozen);
  if (change.pictures) {
    setPictures(sheet, change.pictures);
    words.set(
      sheet.id,
      change.pictures.map(({ name, alternative }) => ({ name, alternative })),
    );
  }
  for (const cell of change.cells) writeCell(sheet, cell);
  return sheet;
}

/** Leaves pages numbered on from sheet to sheet where the file did so; excelts would begin each sheet at 1. */
function numberOn({ pageSetup }: Worksheet): void {
  const setup: Partial<typeof pageSetup> & { useFirstPageNumber?: boolean } = pageSetup;
  if (!setup.useFirstPageNumber) delete setup.firstPageNumber;
}

/** Patches what changed at the desk into a file's workbook; everything else stays as it was. */
export function patch(workbook: Workbook, ids: Map<string, number>, words: Words, change: BookChange): void {
  const kept = new Set(change.sheets.map(({ key }) => key));
  for (const [key, id] of [...ids]) {
    if (kept.has(key)) continue;
    workbook.removeWorksheet(id);
    ids.delete(key);
  }
  change.sheets.forEach((sheet, place) => {
    writeSheet(workbook, ids, words, sheet).orderNo = place + 1;
  });
  workbook.worksheets.forEach(numberOn);
  for (const { name, reference } of change.removedNames) workbook.definedNames.remove(reference, name);
  for (const { name, reference } of change.addedNames) workbook.definedNames.add(reference, name);
}
