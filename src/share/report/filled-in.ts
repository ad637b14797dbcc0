import type { CellSpec, SheetSpec } from "../../workbook/form/sheet-spec";
import { AGAINST_PLACE, FILE_PLACE, NOTHING_FOUND, SIGNED } from "./own-report";

const LINE = "_".repeat(30);

interface Filled {
  /** The file's name. */
  file: string;
  /** The day of the check, `2026-11-29`. */
  day: string;
  /** What speaks of another code than the first of the same site, block and date; "" where nothing does. */
  other: string;
}

/** An authority's own report with what only the place of the check knows: the file's name, the day, and earlier codes. */
export function filledIn(report: SheetSpec, { file, day, other }: Filled): SheetSpec {
  const filled = (cell: CellSpec): CellSpec => {
    if (cell.at === FILE_PLACE) return { ...cell, value: `File: ${file}. Checked on ${day}. ${cell.value}` };
    if (cell.at === AGAINST_PLACE && other !== "") {
      return { ...cell, value: `✗ ${other} ${String(cell.value).replace(NOTHING_FOUND, "").trim()}` };
    }
    if (cell.value === SIGNED) {
      return { ...cell, value: `Checked on ${day} for: ${LINE}   by: ${LINE}   ${SIGNED}${LINE}` };
    }
    return cell;
  };
  return { ...report, cells: report.cells.map(filled) };
}
