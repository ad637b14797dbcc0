import { bound } from "./bound";
import { fitNight, type Night } from "./fit-night";
import type { Block, Program } from "./program";
import { MINUTES_A_DAY, spans } from "./spans";
import { taskOf } from "./task";

/** One change that, alone, makes a program fit. */
export type Remedy =
  /** The pump gives at least so many L/h */
  | { change: "pump"; to: number }
  /** The last window ends so many minutes later */
  | { change: "window"; minutes: number }
  /** The limit of the day, or the tank, is at least so many L */
  | { change: "limit" | "tank"; to: number }
  /** The block is more uniform: its multiplier is at most so much */
  | { change: "multiplier"; block: string; to: number }
  /** The block is watered at another time or from elsewhere */
  | { change: "block"; block: string }
  /** The two blocks may run together */
  | { change: "apart"; pair: readonly [string, string] };

/** Pulses that one trial may place. */
const EFFORT = 60_000;
/** So many blocks and pairs are named at most, each. */
const MOST_NAMED = 3;
/** A change of pump, tank or multiplier is found to this share of it. */
const FINENESS = 0.01;

/**
 * The single changes that make a program fit, each found by fitting the changed program.
 *
 * A change that is not named may still do: the search for a schedule is not exhaustive.
 *
 * @param program A program that does not fit as it is
 * @param night What fitting it gave
 * @param effort Pulses that the fitting of one trial may place
 * @returns A generator of the changes, in the order pump, window, limit, tank, multiplier, block, pair
 * @throws InputError if a value of the program is out of its range
 * @source every change is tried
 */
export function* remedies(program: Program, night: Night, effort = EFFORT): Generator<Remedy> {
  const fits = (changed: Partial<Program>) => fitsWithin({ ...program, ...changed }, effort);
  const all = program.blocks.reduce((sum, block) => sum + flowOf(block), 0);
  const pump = least(program.pump, Math.max(all, program.pump), (to) => fits({ pump: to }));
  if (pump !== undefined) yield { change: "pump", to: pump };
  const minutes = longerBy(program, night);
  if (minutes !== undefined) yield { change: "window", minutes };
  const { limit, tank } = program;
  const litres = Math.ceil(night.litres);
  if (limit !== undefined && fits({ limit: Math.max(limit, litres) })) yield { change: "limit", to: litres };
  if (tank) {
    const volume = least(tank.volume, Math.max(tank.volume, litres), (to) => fits({ tank: { ...tank, volume: to } }));
    if (volume !== undefined) yield { change: "tank", to: volume };
  }
  const { blocks } = program;
  const thirstiest = [...blocks].sort((a, b) => gain(b) - gain(a)).filter((block) => gain(block) > 0);
  yield* firstFew(thirstiest, (block) => {
    const moreUniform = (to: number) =>
      fits({ blocks: blocks.map((each) => (each === block ? withMultiplier(each, to) : each)) });
    const to = most(block.multiplier, moreUniform);
    return to === undefined ? undefined : { change: "multiplier", block: block.name, to };
  });
  const smallest = blocks.filter(({ depth }) => depth > 0).sort((a, b) => work(a) - work(b));
  yield* firstFew(smallest, (block) => {
    const dry = (each: Block) => (each === block ? { ...each, depth: 0 } : each);
    return fits({ blocks: blocks.map(dry) }) ? { change: "block", block: block.name } : undefined;
  });
  const apart = program.apart ?? [];
  yield* firstFew(apart, (pair) =>
    fits({ apart: apart.filter((each) => each !== pair) }) ? { change: "apart", pair } : undefined,
  );
}

function* firstFew<Item>(items: readonly Item[], remedy: (item: Item) => Remedy | undefined): Generator<Remedy> {
  let named = 0;
  for (const item of items) {
    const found = remedy(item);
    if (found) yield found;
    if (found) named += 1;
    if (named === MOST_NAMED) return;
  }
}

/** Fits a program, after the bound has been asked whether it can at all. */
function fitsWithin(program: Program, effort: number): boolean {
  const { task, lack } = taskOf(program);
  if (lack.flow > 0 || lack.litres > 0) return false;
  return bound(task) <= (task.line.at(-1)?.end ?? 0) && fitNight(program, effort).fits;
}

/** The schedule that was found fits a last window that ends with it, where the day is long enough. */
function longerBy(program: Program, { short: { minutes, flow, litres } }: Night): number | undefined {
  if (flow > 0 || litres > 0 || minutes === 0) return undefined;
  const line = spans(program.windows);
  const length = (line.at(-1)?.end ?? 0) - (line[0]?.start ?? 0);
  return length + minutes <= MINUTES_A_DAY ? minutes : undefined;
}

/** The least value from low to high that does, to the fineness, rounded up; undefined where even high does not. */
function least(low: number, high: number, does: (value: number) => boolean): number | undefined {
  if (!does(high)) return undefined;
  let [under, enough] = [low, high];
  while (enough - under > FINENESS * low) {
    const middle = (under + enough) / 2;
    if (does(middle)) enough = middle;
    else under = middle;
  }
  return Math.ceil(enough);
}

/** The largest multiplier from 1 that does, in hundredths. */
function most(multiplier: number, does: (value: number) => boolean): number | undefined {
  if (!does(1)) return undefined;
  let [enough, over] = [100, Math.ceil(multiplier * 100)];
  while (over - enough > 1) {
    const middle = Math.floor((enough + over) / 2);
    if (does(middle / 100)) enough = middle;
    else over = middle;
  }
  return enough / 100;
}

function withMultiplier(block: Block, multiplier: number): Block {
  return { ...block, multiplier };
}

function flowOf(block: Block): number {
  return block.flow ?? block.area * block.rate;
}

/** Water of the day in L/h times hours, and what a multiplier of 1 would save of it. */
function work(block: Block): number {
  return (flowOf(block) * block.depth * block.multiplier) / block.rate;
}

function gain(block: Block): number {
  return work(block) - work({ ...block, multiplier: 1 });
}
