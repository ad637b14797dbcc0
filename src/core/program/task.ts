import { positive, zeroOrMore } from "../checks";
import { type Job, jobs, thousandths } from "./jobs";
import type { Program } from "./program";
import { type Span, spans } from "./spans";

/** What a schedule has to keep. */
export interface Task {
  jobs: readonly Job[];
  line: readonly Span[];
  /** Thousandths of L/h */
  pump: number;
  /** Water in the tank at the start [L] and coming in [L/h]; undefined where none limits */
  tank: { volume: number; refill: number } | undefined;
}

/** What is lacking whatever the order of the blocks. */
export interface Lack {
  /** Water that the day needs over the limit or the tank with what comes in [L] */
  litres: number;
  /** Flow of the largest block over the pump's [L/h] */
  flow: number;
}

/** A checked program, and what it lacks whatever the order; a tank that can never do is left out of the task. */
export function taskOf(program: Program): { task: Task; lack: Lack; litres: number } {
  const line = spans(program.windows);
  const found = jobs(program);
  const pump = thousandths(positive("pump", program.pump, "L/h"));
  const litres = found.reduce((sum, job) => sum + job.litres, 0);
  const limit = program.limit === undefined ? Infinity : positive("limit", program.limit, "L");
  const tank = program.tank && {
    volume: positive("tank", program.tank.volume, "L"),
    refill: zeroOrMore("refill", program.tank.refill, "L/h"),
  };
  const hours = ((line.at(-1)?.end ?? 0) - (line[0]?.start ?? 0)) / 60;
  const there = tank ? tank.volume + tank.refill * hours : Infinity;
  const lack = {
    litres: Math.max(0, litres - Math.min(limit, there)),
    flow: Math.max(0, ...found.map(({ flow }) => flow - pump)) / 1000,
  };
  return { task: { jobs: found, line, pump, tank: litres > there ? undefined : tank }, lack, litres };
}
