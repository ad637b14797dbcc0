import type { SheetSpec } from "./sheet-spec";
import { ACTIONS } from "./sheets/actions";
import { BLOCK } from "./sheets/block";
import { CANS } from "./sheets/cans";
import { COST } from "./sheets/cost";
import { COVERAGE } from "./sheets/coverage";
import { HEADS } from "./sheets/heads";
import { LIMITS } from "./sheets/limits";
import { REPORT } from "./sheets/report";
import { RESULTS } from "./sheets/results";
import { RUN_TIME } from "./sheets/run-time";
import { START } from "./sheets/start";
import { WATER_COST } from "./sheets/water-cost";
import { WORKING } from "./sheets/working";

/** The sheets of the audit workbook, in the order of the job. */
export const AUDIT_SHEETS: readonly SheetSpec[] = [
  START,
  BLOCK,
  CANS,
  HEADS,
  RESULTS,
  COVERAGE,
  RUN_TIME,
  WATER_COST,
  COST,
  ACTIONS,
  REPORT,
  LIMITS,
  WORKING,
];
