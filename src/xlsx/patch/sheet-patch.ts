import type { SheetChange } from "../desk-file/book";
import { type Edit, edited } from "../parts/edits";
import { textOf } from "../parts/relations";
import { sheetContent } from "../parts/sheet-cells";
import { xmlTree } from "../parts/xml-tree";
import { CellEdits } from "./cell-edits";
import { withRows } from "./row-shape";
import { columnEdits, columnStyle, dimensionEdits, frozenEdits, mergeEdits } from "./sheet-shape";
import type { Styles } from "./styles";
import { type Parts, writePart } from "./write-part";

/** What the sheets of a file share. */
export interface SheetTools {
  texts: readonly string[];
  styles: Styles | null;
  dynamic(): number;
}

/** Changes a sheet's part where the desk changed it; answers whether formulas came, went or changed. */
export function patchSheet(parts: Parts, part: string, change: SheetChange, tools: SheetTools): boolean {
  const source = textOf(parts, part);
  const xml = withRows(source, tools.texts, change.heights, change.rowsHidden, change.fitted);
  const edits: Edit[] = [];
  let formulas = false;
  const { widths, columnsHidden = {}, frozen, merges } = change;
  const columns = Object.keys({ ...widths, ...columnsHidden }).length > 0;
  const shaped = columns || frozen !== undefined || merges !== undefined || xml !== source;
  if (change.cells.length === 0 && !shaped) return false;
  const root = xmlTree(xml, (name) => name === "sheetData");
  if (change.cells.length > 0) {
    const cells = new CellEdits(xml, sheetContent(xml, tools.texts), root.prefix, {
      inherited: (row, column) => row?.style ?? columnStyle(root, column),
      styled: (base, { was = {}, look = {} }) => tools.styles?.styled(base, was, look) ?? base,
      dynamic: tools.dynamic,
    });
    cells.take(change.cells);
    edits.push(...cells.edits, ...dimensionEdits(root, cells.added));
    formulas = cells.formulas;
  }
  edits.push(...columnEdits(root, widths, columnsHidden));
  if (frozen) edits.push(...frozenEdits(xml, root, frozen));
  if (merges) edits.push(...mergeEdits(root, merges));
  if (edits.length > 0 || xml !== source) writePart(parts, part, edited(xml, edits));
  return formulas;
}
