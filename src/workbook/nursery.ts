import type { SheetSpec } from "./sheet-spec";
import { NURSERY } from "./sheets/nursery";

/** The sheets of the nursery plan, in the order of the job. */
export const NURSERY_SHEETS: readonly SheetSpec[] = [NURSERY];
