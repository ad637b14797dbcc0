import type { Area } from "../../src/cells/area";
import type { Input } from "../../src/cells/cell";
import { columnLetters } from "../../src/cells/letters";
import { areaOf } from "../../src/cells/sheet-area";
import type { Stated } from "../../src/cells/stated";
import type { FileBook } from "../../src/xlsx/parts/workbook-file";
import { memoryHost } from "./memory-host";

/** The file's cells as values, so that the pane sees what a spreadsheet program calculated. */
export function hostOfFile(open: FileBook) {
  const shown = (stated: Stated): Input => (typeof stated === "string" ? `'${stated}` : (stated ?? ""));
  const sheets = Object.fromEntries(
    open.sheets.map(({ name, cells }) => [
      name,
      Object.fromEntries([...cells].map(([address, cell]) => [address, shown(cell.value)])),
    ]),
  );
  const names: Record<string, Area> = {};
  for (const [name, text] of open.names) {
    const area = areaOf(text, "");
    if (!area) continue;
    const corner = (row: number, column: number) => `${columnLetters(column)}${row}`;
    const [first, last] = [corner(area.top, area.left), corner(area.bottom, area.right)];
    names[name] = { sheet: area.sheet, address: first === last ? first : `${first}:${last}` };
  }
  return memoryHost(sheets, names);
}
