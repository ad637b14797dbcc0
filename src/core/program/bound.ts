import { heaviestClique } from "./clique";
import { dualFeasible } from "./dual-feasible";
import type { Job } from "./jobs";
import { minuteAfter, type Span } from "./spans";
import type { Task } from "./task";

/** Work in minutes that rounding may add up to. */
const ROUNDING = 1e-6;

/**
 * A minute before which no schedule can finish, the last window taken as if it had no end.
 *
 * The largest of: the longest block with its rests, alone; the minutes of blocks that exclude each other, by a pair
 * kept apart or because two flows are more than the pump's; the work over the pump's flow, for several dual feasible
 * functions of the flows; the water that still has to come into the tank.
 *
 * @param task What the schedule must keep; every flow is at most the pump's
 * @returns Minutes after the midnight before the first window; its start where there is nothing to water
 * @source each bound is a relaxation: all rules but one are dropped
 */
export function bound(task: Task): number {
  const { jobs, line, pump } = task;
  const bonus = jobs.reduce((most, { hold, run }) => Math.max(most, hold - run), 0);
  const exclude = (a: number, b: number) => {
    const [one, other] = [jobs[a] as Job, jobs[b] as Job];
    return one.apart.includes(b) || one.flow + other.flow > pump;
  };
  const clique = heaviestClique(
    jobs.map(({ number, hold }) => number * hold),
    exclude,
  );
  const energies = dualFeasible(
    jobs.map(({ flow }) => flow),
    pump,
  ).map((weight) => jobs.reduce((sum, { flow, number, hold }) => sum + weight(flow) * number * hold, 0));
  const work = Math.max(clique, Math.ceil(Math.max(0, ...energies) - ROUNDING));
  return Math.max(
    jobs.length === 0 ? (line[0] as Span).start : minuteAfter(line, work, bonus),
    ...jobs.map((job) => alone(job, line)),
    watered(task),
  );
}

/** The minute at which a job ends that has everything to itself. */
function alone({ number, run, lag }: Job, line: readonly Span[]): number {
  let start = (line[0] as Span).start;
  for (let pulse = 0; pulse < number; pulse += 1) {
    const from = pulse === 0 ? start : start + lag;
    const span = line.find(
      ({ end }, i) => i === line.length - 1 || Math.max(from, (line[i] as Span).start) + run <= end,
    );
    start = Math.max(from, (span as Span).start);
  }
  return start + run;
}

function watered({ jobs, line, tank }: Task): number {
  const litres = jobs.reduce((sum, job) => sum + job.litres, 0);
  const start = (line[0] as Span).start;
  if (!tank || litres <= tank.volume) return start;
  return start + Math.ceil(((litres - tank.volume) * 60) / tank.refill - ROUNDING);
}
