import type { SheetSpec } from "./sheet-spec";
import { DEMAND } from "./sheets/demand";
import { LEACHING_TEST } from "./sheets/leaching-test";
import { NURSERY } from "./sheets/nursery";
import { WEATHER } from "./sheets/weather";
import { WEIGHINGS } from "./sheets/weighings";

/** The sheets of the nursery plan, in the order of the job. */
export const NURSERY_SHEETS: readonly SheetSpec[] = [NURSERY, DEMAND, WEATHER, WEIGHINGS, LEACHING_TEST];
