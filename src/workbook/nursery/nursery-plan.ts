import type { SheetSpec } from "../form/sheet-spec";
import { DEMAND } from "./demand/demand";
import { LEACHING_TEST } from "./leaching-test/leaching-test";
import { PROGRAM } from "./program/program";
import { REGISTER } from "./register/register";
import { NURSERY } from "./start/start";
import { START_TIMES } from "./start-times/start-times";
import { WEATHER } from "./weather/weather";
import { WEIGHINGS } from "./weighings/weighings";

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
