import type { ICellData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { entered } from "../../hosts/desk/cells";
import { bookOf, type Grid } from "../../hosts/desk/grid";
import type { Book, BookCell, BookSheet } from "../../xlsx/desk-file/book";
import { definedNames } from "./defined-names";
import { drawingsOf } from "./drawings";
import { styleOf } from "./looks";
import { fittedHeights } from "./row-heights";
import { sheetParts } from "./sheet-parts";

const SPARE = { rows: 100, columns: 10 };

const TEXT = 1;

/** What a cell of a file holds; its texts stay texts, also those that would be numbers if they were typed. */
function contentOf({ input, cached }: BookCell): ICellData {
  const isText = typeof input === "string" && input !== "" && cached === undefined && !input.startsWith("=");
  return isText ? { v: input, t: TEXT } : entered(input);
}

function cellData(sheet: BookSheet): Record<number, Record<number, ICellData>> {
  const cells: Record<number, Record<number, ICellData>> = {};
  for (const cell of sheet.cells) {
    const { row, column, cached, look } = cell;
    const content = Object.fromEntries(Object.entries(contentOf(cell)).filter(([, part]) => part !== null));
    const known = typeof cached === "object" ? undefined : cached;
    cells[row] ??= {};
    cells[row][column] = {
      ...content,
      ...(content.f !== undefined && known !== undefined && { v: known }),
      ...(look && { s: styleOf(look) }),
    };
  }
  return cells;
}

const sized = (sizes: Record<number, number>, size: "w" | "h", hidden: number[]): Record<number, object> => {
  const all: Record<number, object> = {};
  for (const [place, value] of Object.entries(sizes)) all[Number(place)] = { [size]: value };
  for (const place of hidden) all[place] = { ...all[place], hd: 1 };
  return all;
};

function worksheet(sheet: BookSheet): Partial<IWorksheetData> {
  const { rows, columns } = sheet.frozen;
  return {
    id: sheet.key,
    name: sheet.name,
    hidden: sheet.hidden ? 1 : 0,
    ...(sheet.tab && { tabColor: sheet.tab }),
    rowCount: sheet.rows + SPARE.rows,
    columnCount: Math.max(sheet.columns + SPARE.columns, 26),
    defaultColumnWidth: sheet.usual.width,
    defaultRowHeight: sheet.usual.height,
    columnData: sized(sheet.widths, "w", sheet.hiddenColumns),
    rowData: sized({ ...fittedHeights(sheet), ...sheet.heights }, "h", sheet.hiddenRows),
    showGridlines: sheet.gridLines ? 1 : 0,
    mergeData: sheet.merges,
    freeze: {
      ySplit: rows,
      xSplit: columns,
      startRow: rows > 0 ? rows : -1,
      startColumn: columns > 0 ? columns : -1,
    },
    cellData: cellData(sheet),
  };
}

/** A file's book as the grid opens it. */
export function gridWorkbook({ sheets, names }: Book, id: string, name: string): Partial<IWorkbookData> {
  return {
    id,
    name,
    sheetOrder: sheets.map(({ key }) => key),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.key, worksheet(sheet)])),
    resources: [definedNames(names, sheets), ...sheetParts(sheets), drawingsOf(sheets, id)],
  };
}

/** Puts a workbook in the place of the open one. */
export function showBook(grid: Grid, workbook: Partial<IWorkbookData>): void {
  grid.api.disposeUnit(bookOf(grid).getId());
  grid.api.createWorkbook(workbook);
  // merged cells grow with rows in them from when their sheet came to the front, says the grid
  bookOf(grid).setActiveSheet(bookOf(grid).getActiveSheet());
}
