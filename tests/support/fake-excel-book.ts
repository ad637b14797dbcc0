import type { Cell } from "../../src/cells/cell";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { Fault, type Value } from "./fake-excel-formula";
import type { Workbook } from "./fake-excel-workbook";

const shownValue = (cell: Cell | undefined): Value =>
  cell !== null && typeof cell === "object" ? new Fault(cell.error) : (cell ?? null);

/** Opens a file in place of the workbook: formulas show what the file says that they gave, and are not calculated again. */
export async function openInFake(workbook: Workbook, file: Uint8Array): Promise<void> {
  const { sheets, names } = (await XlsxFile.open(file)).book();
  const before = workbook.sheets;
  workbook.calculates = false;
  workbook.names.clear();
  for (const sheet of before) workbook.remove(sheet);
  for (const { name, cells, unlocked } of sheets) {
    const sheet = workbook.add(name);
    for (const { row, column, input, cached } of cells) {
      if (input === "") continue;
      const formula = typeof input === "string" && input.startsWith("=");
      sheet.cells.set(`${row},${column}`, { input, value: formula ? shownValue(cached) : input });
    }
    if (unlocked) sheet.protection = { options: { allowFormatCells: false } };
    for (const place of unlocked ?? []) sheet.unlocked.add(place.replace(" ", ","));
  }
  for (const { name, reference } of names) workbook.names.set(name, `=${reference}`);
  workbook.selection = { sheet: workbook.sheets[0]!, area: { row: 0, column: 0, rows: 1, columns: 1 } };
}
