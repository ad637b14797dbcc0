import type { ICellData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { entered } from "../hosts/desk-cells";
import type { Book, BookSheet } from "../hosts/xlsx-book";
import { definedNames } from "./defined-names";
import { styleOf } from "./looks";

const SPARE = { rows: 100, columns: 10 };

function worksheet(sheet: BookSheet): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  for (const { row, column, input, cached, look } of sheet.cells) {
    const content = Object.fromEntries(Object.entries(entered(input)).filter(([, part]) => part !== null));
    const known = typeof cached === "object" ? undefined : cached;
    cellData[row] ??= {};
    cellData[row][column] = {
      ...content,
      ...(content.f !== undefined && known !== undefined && { v: known }),
      ...(look && { s: styleOf(look) }),
    };
  }
  const { rows, columns } = sheet.frozen;
  return {
    id: sheet.key,
    name: sheet.name,
    rowCount: sheet.rows + SPARE.rows,
    columnCount: Math.max(sheet.columns + SPARE.columns, 26),
    columnData: Object.fromEntries(Object.entries(sheet.widths).map(([column, w]) => [column, { w }])),
    freeze: {
      ySplit: rows,
      xSplit: columns,
      startRow: rows > 0 ? rows : -1,
      startColumn: columns > 0 ? columns : -1,
    },
    cellData,
  };
}

/** A file's book as the grid opens it. */
export function gridWorkbook(book: Book, id: string, name: string): Partial<IWorkbookData> {
  return {
    id,
    name,
    sheetOrder: book.sheets.map(({ key }) => key),
    sheets: Object.fromEntries(book.sheets.map((sheet) => [sheet.key, worksheet(sheet)])),
    resources: [definedNames(book.names)],
  };
}
