import type { Job } from "./jobs";
import type { Span } from "./spans";
import { Supply } from "./supply";
import type { Task } from "./task";

/** Minutes of a day with the pulses placed so far; each pulse goes to the earliest minute that keeps everything. */
export class Board {
  /** Start of each pulse of each job */
  readonly starts: number[][];
  readonly #task: Task;
  readonly #first: number;
  readonly #load: Float64Array;
  readonly #supply: Supply | undefined;
  #used = 0;

  constructor(task: Task) {
    this.#task = task;
    this.#first = (task.line[0] as Span).start;
    this.starts = task.jobs.map(() => []);
    const all = task.jobs.reduce((sum, { number, lag, hold }) => sum + number * (lag + hold), 0);
    const end = (task.line.at(-1) as Span).end + all + (task.tank ? Supply.longestWait(task) : 0);
    this.#load = new Float64Array(end + 1 - this.#first);
    this.#supply = task.tank && new Supply(task.tank, this.#load.length);
  }

  clear(): void {
    this.#load.fill(0, 0, this.#used);
    this.#used = 0;
    for (const starts of this.starts) starts.length = 0;
    this.#supply?.clear();
  }

  /** Places the next pulse of a job; gives the minute at which it ends. */
  place(index: number): number {
    const job = this.#task.jobs[index] as Job;
    const starts = this.starts[index] as number[];
    const before = starts.at(-1);
    const start = this.#earliest(job, before === undefined ? this.#first : before + job.lag);
    starts.push(start);
    const from = start - this.#first;
    this.#load.subarray(from, from + job.hold).forEach((flow, i, load) => {
      load[i] = flow + job.flow;
    });
    this.#used = Math.max(this.#used, from + job.hold);
    this.#supply?.take(job, from);
    return start + job.run;
  }

  #earliest(job: Job, notBefore: number): number {
    let start = notBefore;
    for (;;) {
      const tried = start;
      start = this.#inWindow(job, start);
      start = this.#underPump(job, start);
      start = this.#apart(job, start);
      if (this.#supply && start === tried) start = this.#supply.earliest(job, start - this.#first) + this.#first;
      if (start === tried) return start;
    }
  }

  #inWindow({ run }: Job, start: number): number {
    const { line } = this.#task;
    for (let i = 0; i < line.length - 1; i += 1) {
      const span = line[i] as Span;
      const inside = Math.max(start, span.start);
      if (inside + run <= span.end) return inside;
    }
    return Math.max(start, (line.at(-1) as Span).start);
  }

  #underPump({ hold, flow }: Job, start: number): number {
    const room = this.#task.pump - flow;
    let from = start - this.#first;
    for (let i = from + hold - 1; i >= from; i -= 1) {
      if ((this.#load[i] as number) <= room) continue;
      from = i + 1;
      i = from + hold;
    }
    return from + this.#first;
  }

  #apart(job: Job, start: number): number {
    let from = start;
    for (const other of job.apart) {
      const { hold } = this.#task.jobs[other] as Job;
      for (const taken of this.starts[other] as number[]) {
        if (from < taken + hold && taken < from + job.hold) from = taken + hold;
      }
    }
    return from;
  }
}
