import { bound } from "./bound";
import { type Found, orderSearch } from "./order-search";
import type { Program, Schedule } from "./program";
import { openMinutes, type Span } from "./spans";
import type { Task } from "./task";
import { type Lack, taskOf } from "./task";

/** Start times, how good they are, and what is lacking. */
export interface Night {
  /** In the order of their starts; empty where a block needs more flow than the pump gives */
  schedule: Schedule;
  /** Whether everything is inside the windows and the limits */
  fits: boolean;
  /** What is over: minutes after the last window's end, and whatever the order L and L/h; all 0 where it fits */
  short: Lack & { minutes: number };
  /** True where it fits, or where no order of the blocks could; false where only none was found */
  proven: boolean;
  /** End of the last pulse, and the minute before which none can end [minutes after the first midnight] */
  finish: number;
  bound: number;
  /** How much later than the bound it finishes [min inside the windows], and as a share of the bound's minutes */
  gap: number;
  gapShare: number;
  /** Water of the day [L] */
  litres: number;
  /** Pulses that the search has placed so far */
  placed: number;
}

/** Pulses that the search places unless the caller says otherwise. */
export const EFFORT = 400_000;

/**
 * Start times of all pulses, the last one ending as early as the search can make it.
 *
 * Starts are whole minutes. No more flow at once than the pump gives; each rest is at least the one asked for, longer
 * where the pump or a window asks for it, since a mix that rests longer takes up no less; each pulse lies whole in a
 * window; a valve's place is free again only after the change-over. What does not fit runs on after the last window.
 *
 * @param program Blocks, pump, windows and limits
 * @param effort Pulses that the search may place over all orders that it tries, a whole number from 1
 * @returns The schedule with its bound; the same for the same program and effort
 * @throws InputError if a value is out of its range
 * @source serial schedule generation with random moves in the order (resource-constrained scheduling), from memory
 */
export function fitNight(program: Program, effort = EFFORT): Night {
  const steps = nightSteps(program, effort);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** The same in steps, so that a caller can show progress and stop: yields the night so far. */
export function* nightSteps(program: Program, effort = EFFORT): Generator<Night, Night> {
  const { task, lack, litres } = taskOf(program);
  const start = (task.line[0] as Span).start;
  if (lack.flow > 0 || task.jobs.length === 0) {
    return nightOf(task, { starts: task.jobs.map(() => []), finish: start, placed: 0 }, lack, start, litres);
  }
  const least = bound(task);
  const steps = orderSearch(task, least, effort);
  for (;;) {
    const { done, value } = steps.next();
    const night = nightOf(task, value, lack, least, litres);
    if (done) return night;
    yield night;
  }
}

function nightOf({ jobs, line }: Task, found: Found, lack: Lack, least: number, litres: number): Night {
  const end = (line.at(-1) as Span).end;
  const schedule = found.starts
    .flatMap((starts, i) => starts.map((start, pulse) => ({ job: jobs[i], start, pulse: pulse + 1 })))
    .map(({ job, start, pulse }) => ({ block: job?.name ?? "", pulse, start, minutes: job?.minutes ?? 0 }))
    .sort((a, b) => a.start - b.start);
  const minutes = Math.max(0, found.finish - end);
  const impossible = lack.litres > 0 || lack.flow > 0;
  const open = openMinutes(line, least);
  const gap = openMinutes(line, found.finish) - open;
  return {
    schedule,
    fits: minutes === 0 && !impossible,
    short: { ...lack, minutes },
    proven: minutes === 0 || impossible || least > end,
    finish: found.finish,
    bound: least,
    gap,
    gapShare: open > 0 ? gap / open : 0,
    litres,
    placed: found.placed,
  };
}
