import { BOOK_KINDS } from "./book-kinds";
import { CELL_KINDS } from "./cell-kinds";
import { CHART_KINDS } from "./chart-kinds";
import { DRAWING_KINDS } from "./drawing-kinds";
import { EVIDENCE_KINDS } from "./evidence-kinds";
import { FIFTH_CHART_KINDS } from "./fifth-chart-kinds";
import { FIFTH_KINDS } from "./fifth-kinds";
import { FILE_KINDS } from "./file-kinds";
import { FOURTH_KINDS } from "./fourth-kinds";
import { FURTHER_KINDS } from "./further-kinds";
import { LOOK_KINDS } from "./kinds";
import { PACKED_KINDS } from "./packed-kinds";
import { SEVENTH_KINDS } from "./seventh-kinds";
import { SHEET_KINDS } from "./sheet-kinds";
import { SIXTH_FILE_KINDS } from "./sixth-file-kinds";
import { SIXTH_KINDS } from "./sixth-kinds";
import { SIXTH_SHEET_KINDS } from "./sixth-sheet-kinds";

/** Every kind of forged audit; `npm run proof:forged` tries all of them, and those that openpyxl makes. */
export const AUDIT_KINDS = [
  ...LOOK_KINDS,
  ...BOOK_KINDS,
  ...EVIDENCE_KINDS,
  ...CELL_KINDS,
  ...SHEET_KINDS,
  ...DRAWING_KINDS,
  ...FILE_KINDS,
  ...FURTHER_KINDS,
  ...PACKED_KINDS,
  ...FOURTH_KINDS,
  ...CHART_KINDS,
  ...FIFTH_KINDS,
  ...FIFTH_CHART_KINDS,
  ...SIXTH_KINDS,
  ...SIXTH_SHEET_KINDS,
  ...SIXTH_FILE_KINDS,
  ...SEVENTH_KINDS,
];
