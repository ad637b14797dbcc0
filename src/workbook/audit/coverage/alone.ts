import type { CellSpec, SheetSpec } from "../../form/sheet-spec";
import { COVERAGE } from "./coverage";
import { sourceCells } from "./source";

const SOURCES = new Set(sourceCells().map(({ at }) => at));

/** A cell of the source block that waits for what is painted. */
const blank = ({ formula: _, ...cell }: CellSpec): CellSpec => cell;

/** The coverage sheet without what it shows of other sheets. */
export const COVERAGE_PART: SheetSpec = {
  ...COVERAGE,
  cells: COVERAGE.cells.filter(({ formula }) => formula !== "Cause_Sentence"),
};

/** The coverage sheet for a workbook without the audit's sheets: its source block is blank until it is painted. */
export const COVERAGE_ALONE: SheetSpec = {
  ...COVERAGE_PART,
  cells: COVERAGE_PART.cells.map((cell) => (SOURCES.has(cell.at) ? blank(cell) : cell)),
};
