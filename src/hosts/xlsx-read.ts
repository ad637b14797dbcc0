import type { Cell as FileCell, Workbook, Worksheet } from "@cj-tech-master/excelts";
import { columnLetters, columnNumber } from "./address";
import type { Cell, Input } from "./host";
import type { Book, BookCell, BookSheet } from "./xlsx-book";
import { typedFormula } from "./xlsx-formula";
import { lookOf } from "./xlsx-look";

const DAY_MS = 86_400_000;
const DAY_0 = Date.UTC(1899, 11, 30);
const PIXELS_A_CHARACTER = 7;
const CELL_PADDING_PX = 5;

/** What a file's cell shows. */
export function shown(value: unknown): Cell {
  if (value === null || value === undefined) return null;
  if (value instanceof Date) return (value.getTime() - DAY_0) / DAY_MS;
  if (typeof value !== "object") return value as Cell;
  const rich = value as { error?: string; richText?: { text: string }[]; text?: unknown; checkbox?: boolean };
  if (rich.error !== undefined) return { error: rich.error };
  if (rich.checkbox !== undefined) return rich.checkbox;
  if (rich.richText) return rich.richText.map(({ text }) => text).join("");
  return shown(rich.text);
}

function inputOf(cell: FileCell): { input: Input; cached?: Cell } {
  if (cell.formula) return { input: typedFormula(cell.formula), cached: shown(cell.result) };
  const value = shown(cell.value);
  if (value !== null && typeof value === "object") return { input: value.error };
  return { input: value ?? "" };
}

/** The rectangle that an array formula fills, as the file says. */
export function filled(cell: FileCell): string | undefined {
  const value = cell.value as { shareType?: string; ref?: string } | null;
  return value?.shareType === "array" ? value.ref : undefined;
}

export const sheetKey = (id: number): string => `file-${id}`;

function sheetOf(sheet: Worksheet): BookSheet {
  const cells: BookCell[] = [];
  const bodies = new Set<string>();
  const widths: Record<number, number> = {};
  sheet.eachRow({ includeEmpty: false }, (row) => {
    row.eachCell({ includeEmpty: true }, (cell) => {
      const ref = filled(cell);
      if (ref?.includes(":")) for (const address of addresses(ref)) bodies.add(address);
      if (ref) bodies.delete(cell.address);
      const look = lookOf(cell);
      const content: ReturnType<typeof inputOf> = bodies.has(cell.address) ? { input: "" } : inputOf(cell);
      if (content.input === "" && !look) return;
      cells.push({ row: Number(cell.row) - 1, column: Number(cell.col) - 1, ...content, ...(look && { look }) });
    });
  });
  for (let column = 0; column < sheet.columnCount; column++) {
    const width = sheet.getColumn(column + 1).width;
    if (width) widths[column] = Math.round(width * PIXELS_A_CHARACTER + CELL_PADDING_PX);
  }
  const view = sheet.views?.[0];
  const frozen = view?.state === "frozen" ? { rows: view.ySplit ?? 0, columns: view.xSplit ?? 0 } : undefined;
  return {
    key: sheetKey(sheet.id),
    name: sheet.name,
    rows: sheet.rowCount,
    columns: sheet.columnCount,
    widths,
    frozen: frozen ?? { rows: 0, columns: 0 },
    cells,
  };
}

/** Every address of a rectangle such as `A1:B2`. */
export function addresses(ref: string): string[] {
  const parts = /^\$?([A-Z]+)\$?(\d+):\$?([A-Z]+)\$?(\d+)$/i.exec(ref);
  if (!parts) return [ref];
  const [left, right] = [columnNumber(parts[1]!), columnNumber(parts[3]!)];
  const all: string[] = [];
  for (let row = Number(parts[2]); row <= Number(parts[4]); row++) {
    for (let column = left; column <= right; column++) all.push(`${columnLetters(column)}${row}`);
  }
  return all;
}

/** What the desk shows of a file. */
export function bookOf(workbook: Workbook): Book {
  const names = workbook.definedNames
    .getAllEntries()
    .filter(({ ranges, localSheetId }) => ranges?.length === 1 && localSheetId === undefined)
    .map(({ name, ranges }) => ({ name, reference: ranges[0]! }))
    .filter(({ name }) => !name.startsWith("_xlnm."));
  return { sheets: workbook.worksheets.map(sheetOf), names };
}
