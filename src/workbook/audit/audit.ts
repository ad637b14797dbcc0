import type { SheetSpec } from "../form/sheet-spec";
import { ACTIONS } from "./actions/actions";
import { BLOCK } from "./block/block";
import { CANS } from "./cans/cans";
import { COST } from "./cost/cost";
import { COVERAGE } from "./coverage/coverage";
import { HEADS } from "./heads/heads";
import { LIMITS } from "./limits/limits";
import { POTS } from "./pots/pots";
import { REPORT } from "./report/report";
import { RESULTS } from "./results/results";
import { RUN_TIME } from "./run-time/run-time";
import { START } from "./start/start";
import { WATER_COST } from "./water-cost/water-cost";
import { WORKING } from "./working/working";

/** The sheets of the audit workbook, in the order of the job. */
export const AUDIT_SHEETS: readonly SheetSpec[] = [
  START,
  BLOCK,
  CANS,
  HEADS,
  RESULTS,
  COVERAGE,
  RUN_TIME,
  POTS,
  WATER_COST,
  COST,
  ACTIONS,
  REPORT,
  LIMITS,
  WORKING,
];
