import { type Run, workRun } from "../parts/task/work-run";
import type { Ask, Said } from "./night-messages";
import { nightWork } from "./night-work";

export type { Run };

const WORK = {
  worker: () => new Worker(new URL("./night-worker.ts", import.meta.url)),
  near: nightWork,
};

/** Plans a night beside the page. */
export function nightRun(ask: Ask, hear: (said: Said) => void): Run {
  return workRun(WORK, ask, hear);
}
