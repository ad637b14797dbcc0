import type { SheetSpec } from "./sheet-spec";
import { ACTIONS } from "./sheets/actions";
import { BLOCK } from "./sheets/block";
import { CANS } from "./sheets/cans";
import { HEADS } from "./sheets/heads";
import { LIMITS } from "./sheets/limits";
import { START } from "./sheets/start";

/** The sheets of the audit workbook, in the order of the job. */
export const AUDIT_SHEETS: readonly SheetSpec[] = [START, BLOCK, CANS, HEADS, ACTIONS, LIMITS];
