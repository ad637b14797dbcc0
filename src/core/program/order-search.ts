import { Board } from "./board";
import type { Job } from "./jobs";
import { randomBelow } from "./random";
import type { Task } from "./task";

/** The best schedule so far. */
export interface Found {
  /** Start of each pulse of each job */
  starts: number[][];
  /** The minute at which the last pulse ends */
  finish: number;
  /** How many pulses were placed in all orders that were tried */
  placed: number;
}

const REPORT_EVERY_PULSES = 20_000;
const SEED = 20_260_701;
/** So many orders without a better one, and the search starts again from the best. */
const STUCK = 400;

/**
 * Looks for the order of the pulses that finishes first; each order is laid out with every pulse at its earliest.
 *
 * Starts from several rules of priority, then moves pulses in the order and keeps what is no worse.
 *
 * @param task What the schedule must keep
 * @param bound A minute before which no schedule can finish: the search ends there
 * @param effort Pulses to place in all: more orders where there are few blocks
 * @returns A generator that yields the best so far now and then, and returns the best
 */
export function* orderSearch(task: Task, bound: number, effort: number): Generator<Found, Found> {
  const { jobs } = task;
  const board = new Board(task);
  const below = randomBelow(SEED);
  const best: Found = { starts: [], finish: Infinity, placed: 0 };
  let bestOrder: number[] = [];
  let reported = 0;

  const tryOrder = (order: number[], limit: number): number => {
    best.placed += order.length;
    const finish = layOut(board, order, limit);
    if (finish < best.finish) {
      best.finish = finish;
      best.starts = board.starts.map((starts) => [...starts]);
      bestOrder = [...order];
    }
    return finish;
  };

  for (const weight of RULES) {
    tryOrder(ordered(jobs, weight), Infinity);
    if (best.finish <= bound) return best;
  }
  let order = [...bestOrder];
  let finish = best.finish;
  let since = 0;
  while (best.placed < effort && best.finish > bound && order.length > 1) {
    if (best.placed - reported >= REPORT_EVERY_PULSES) {
      reported = best.placed;
      yield best;
    }
    const next = moved(order, below);
    const reached = tryOrder(next, finish);
    since = reached < finish ? 0 : since + 1;
    if (reached <= finish) [order, finish] = [next, reached];
    if (since > STUCK) {
      order = Array.from({ length: 4 }).reduce<number[]>((from) => moved(from, below), bestOrder);
      finish = tryOrder(order, Infinity);
      since = 0;
    }
  }
  return best;
}

/** Lays the pulses out in an order; Infinity as soon as one ends after the limit. */
function layOut(board: Board, order: readonly number[], limit: number): number {
  board.clear();
  let finish = 0;
  for (const job of order) {
    finish = Math.max(finish, board.place(job));
    if (finish > limit) return Infinity;
  }
  return finish;
}

/** Rules of priority: the larger comes first; `left` counts the pulses of the job that are still to come. */
const RULES: ((job: Job, left: number) => number)[] = [
  ({ lag, hold }, left) => (left - 1) * lag + hold,
  ({ flow, hold }, left) => left * flow * hold,
  ({ flow }) => flow,
  ({ lag, hold, flow, number }, left) => ((left - 1) * lag + hold) * flow + number,
  ({ hold, apart }, left) => left * hold * (1 + apart.length),
];

function ordered(jobs: readonly Job[], weight: (job: Job, left: number) => number): number[] {
  const pulses = jobs.flatMap((job, index) =>
    Array.from({ length: job.number }, (_, i) => ({ index, weight: weight(job, job.number - i) })),
  );
  return pulses.sort((a, b) => b.weight - a.weight || a.index - b.index).map(({ index }) => index);
}

/** The order with one pulse taken to another place. */
function moved(order: readonly number[], below: (size: number) => number): number[] {
  const next = [...order];
  const [pulse] = next.splice(below(order.length), 1);
  next.splice(below(order.length), 0, pulse as number);
  return next;
}
