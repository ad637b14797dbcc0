import type { IRange } from "@univerjs/core";
import { spills } from "./cells";
import type { Grid, Range, Sheet } from "./grid";

/** The smallest rectangle around everything on a sheet, or null where it is empty. */
function used(grid: Grid, sheet: Sheet): IRange | null {
  let box: IRange | null = null;
  const include = (row: number, column: number) => {
    box = {
      startRow: Math.min(row, box?.startRow ?? row),
      endRow: Math.max(row, box?.endRow ?? row),
      startColumn: Math.min(column, box?.startColumn ?? column),
      endColumn: Math.max(column, box?.endColumn ?? column),
    };
  };
  sheet
    .getSheet()
    .getCellMatrix()
    .forValue((row, column, cell) => {
      if (cell && (cell.v != null || cell.f || cell.si || cell.p)) include(row, column);
    });
  for (const [row, line] of Object.entries(spills(grid, sheet))) {
    for (const column of Object.keys(line)) include(Number(row), Number(column));
  }
  return box;
}

/** All that is used of a sheet, or null where it is empty. */
export function usedRange(grid: Grid, sheet: Sheet): Range | null {
  const box = used(grid, sheet);
  if (!box) return null;
  return sheet.getRange(
    box.startRow,
    box.startColumn,
    box.endRow - box.startRow + 1,
    box.endColumn - box.startColumn + 1,
  );
}

/** The part of a range that is used; its first cell where none of it is. */
export function usedPart(grid: Grid, sheet: Sheet, range: Range): Range {
  const asked = range.getRange();
  const box = used(grid, sheet);
  const startRow = Math.max(asked.startRow || 0, box?.startRow ?? 0);
  const endRow = Math.min(Number.isNaN(asked.endRow) ? Infinity : asked.endRow, box?.endRow ?? -1);
  const startColumn = Math.max(asked.startColumn || 0, box?.startColumn ?? 0);
  const endColumn = Math.min(Number.isNaN(asked.endColumn) ? Infinity : asked.endColumn, box?.endColumn ?? -1);
  if (!(endRow >= startRow && endColumn >= startColumn)) {
    return sheet.getRange(asked.startRow || 0, asked.startColumn || 0);
  }
  return sheet.getRange(startRow, startColumn, endRow - startRow + 1, endColumn - startColumn + 1);
}
