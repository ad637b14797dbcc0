import { pulses } from "../application/pulses";
import { runTime } from "../application/run-time";
import { positive, within, zeroOrMore } from "../checks";
import { InputError } from "../errors";
import type { Block, Program } from "./program";

/** A block as the search sees it: whole minutes, and flow in thousandths of L/h so that sums are exact. */
export interface Job {
  name: string;
  /** Pulses, and the minutes that each really runs */
  number: number;
  minutes: number;
  /** Whole minutes of one pulse, and with the change-over after it */
  run: number;
  hold: number;
  /** Least whole minutes from the start of one pulse to the start of the next */
  lag: number;
  flow: number;
  /** Water of all pulses [L] */
  litres: number;
  /** Places of the jobs that may not run together with this one */
  apart: number[];
}

const SECONDS_A_MINUTE = 60;
const MOST_BLOCKS = 500;
const LONGEST_RUN_MIN = 1440;
/** A length over a whole number by no more than this is that number. */
const ROUNDING = 1e-9;

/** A flow in thousandths of L/h. */
export function thousandths(flow: number): number {
  return Math.round(flow * 1000);
}

/** What has to be watered, checked: one job for each block whose depth is more than 0. */
export function jobs(program: Program): Job[] {
  const { blocks } = program;
  if (blocks.length > MOST_BLOCKS) throw new InputError("blocks", `be at most ${MOST_BLOCKS}`, blocks.length);
  const changeOver = within("change_over", program.changeOver ?? 0, 0, 3600, "s") / SECONDS_A_MINUTE;
  const step = within("step", program.step ?? 1, 1 / SECONDS_A_MINUTE, 5, "min");
  const names = new Set<string>();
  const found = blocks.flatMap((block, i) => {
    const place = `block ${i + 1}`;
    if (typeof block.name !== "string" || block.name.trim() === "" || names.has(block.name)) {
      throw new InputError("name", "be a text that no other block has", block.name, { place });
    }
    names.add(block.name);
    return placed(`block "${block.name}"`, () => jobOf(block, changeOver, step));
  });
  for (const pair of program.apart ?? []) keepApart(pair, names, found);
  return found;
}

function jobOf(block: Block, changeOver: number, step: number): Job[] {
  const { rate, multiplier } = block;
  const flow = block.flow ?? positive("area", block.area, "m²") * positive("rate", rate, "mm/h");
  positive("flow", flow, "L/h");
  const rest = zeroOrMore("rest", block.rest ?? 0, "min");
  if (zeroOrMore("depth", block.depth, "mm") === 0) return [];
  const total = runTime(block.depth, positive("rate", rate, "mm/h"), positive("multiplier", multiplier, ""));
  const cut = block.takeUp === undefined ? { number: 1, minutes: total } : pulses(total, rate, block.takeUp, rest);
  const minutes = up(cut.minutes / step) * step;
  if (!(minutes <= LONGEST_RUN_MIN)) {
    throw new InputError("depth", `need at most ${LONGEST_RUN_MIN} min a pulse, not ${minutes}`, block.depth);
  }
  const { number } = cut;
  const litres = (flow * number * minutes) / 60;
  const [run, hold, lag] = [up(minutes), up(minutes + changeOver), up(minutes + Math.max(rest, changeOver))];
  return [{ name: block.name, number, minutes, run, hold, lag, flow: thousandths(flow), litres, apart: [] }];
}

function up(length: number): number {
  return Math.ceil(length - ROUNDING);
}

function keepApart(pair: readonly [string, string], names: Set<string>, found: Job[]): void {
  const place = `pair ${pair.join(", ")}`;
  for (const name of pair) if (!names.has(name)) throw new InputError("apart", "name two blocks", name, { place });
  if (pair[0] === pair[1]) throw new InputError("apart", "name two different blocks", pair[0], { place });
  const [a, b] = pair.map((name) => found.findIndex((job) => job.name === name)) as [number, number];
  const [one, other] = [found[a], found[b]];
  if (!one || !other || one.apart.includes(b)) return;
  one.apart.push(b);
  other.apart.push(a);
}

function placed<Result>(place: string, work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    throw error instanceof InputError ? error.at(place) : error;
  }
}
