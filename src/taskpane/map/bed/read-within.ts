import type { ReadOfBed } from "../../../workbook/answer/kept-answer";
import { workRun } from "../../parts/task/work-run";
import type { Ask, Said } from "./bed-messages";
import { BED_WORK } from "./bed-run";

/** Cause and figures of a bed by fit, read beside the page; what cannot be read within `limit` [ms] is left out. */
export async function readWithin(limit: number, ask: Omit<Ask, "slow">): Promise<ReadOfBed> {
  const read: ReadOfBed = {};
  const run = workRun<Ask, Said>(BED_WORK, { ...ask, slow: true }, (said) => {
    if (said.kind === "cause") read.verdict = said.verdict;
    if (said.kind === "interval") read.whole = said.whole;
    if (said.kind === "interval" || said.kind === "no interval") run.stop();
  });
  const waiting = setTimeout(() => run.stop(), limit);
  await run.finished.catch(() => false);
  clearTimeout(waiting);
  return read;
}
