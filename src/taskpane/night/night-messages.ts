import type { Night } from "../../core/program/fit-night";
import type { Program } from "../../core/program/program";
import type { Remedy } from "../../core/program/remedies";
import type { Month } from "../../core/program/twelve-months";

/** What is asked of the worker; a stop ends the worker. */
export type Ask =
  | { kind: "fit"; program: Program }
  | { kind: "months"; programs: (Program | string)[] }
  | { kind: "remedies"; program: Program; night: Night };

/** What the worker says, several times: the best night so far, a month, a change that helps, then the end. */
export type Said =
  | { kind: "night"; night: Night }
  | { kind: "month"; month: Month }
  | { kind: "remedy"; remedy: Remedy }
  | { kind: "done" }
  | { kind: "failed"; message: string };
