import type { SheetSpec } from "./sheet-spec";
import { DEMAND } from "./sheets/demand";
import { LEACHING_TEST } from "./sheets/leaching-test";
import { NURSERY } from "./sheets/nursery";
import { PROGRAM } from "./sheets/program";
import { REGISTER } from "./sheets/register";
import { START_TIMES } from "./sheets/start-times";
import { WEATHER } from "./sheets/weather";
import { WEIGHINGS } from "./sheets/weighings";

/** The sheets of the nursery plan, in the order of the job. */
export const NURSERY_SHEETS: readonly SheetSpec[] = [
  NURSERY,
  DEMAND,
  WEATHER,
  WEIGHINGS,
  LEACHING_TEST,
  REGISTER,
  PROGRAM,
  START_TIMES,
];
