import type { Block, Program, Run, Schedule } from "./program";

/** Minutes, litres and L/h by which a rounding may be off. */
const MINUTE = 1e-6;
const LITRE = 0.01;
const FLOW = 0.1;

/** So many parts of a whole are shown, and a value this close to a part is that part. */
const PARTS = 10;
const CLOSE = 1e-6;

/** Rounded such that what is broken still shows: up for what is needed or taken, down for what is there. */
const up = (value: number, parts = PARTS) => Math.ceil(value * parts - CLOSE) / parts;
const down = (value: number, parts = PARTS) => Math.floor(value * parts + CLOSE) / parts;
const MINUTES_AN_HOUR = 60;
const LITRES_A_KL = 1000;

/**
 * Checks a schedule against its program, each rule by itself and without the code that made it.
 *
 * @param program Blocks, pump, windows and limits
 * @param schedule Pulses with their starts, in any order
 * @returns What is broken, in words, one a line, flows in L/min and water in kL; empty where nothing is
 * @source the rules of `fitNight`, written a second time
 */
export function verifyNight(program: Program, schedule: Schedule): string[] {
  const runsOf = (name: string) => schedule.filter((run) => run.block === name).sort((a, b) => a.pulse - b.pulse);
  const strangers = schedule.filter((run) => !program.blocks.some(({ name }) => name === run.block));
  return [
    ...strangers.map(({ block }) => `block "${block}" is not of this program`),
    ...program.blocks.flatMap((block) => brokenPulses(program, block, runsOf(block.name))),
    ...schedule.filter((run) => !insideWindow(program, run)).map((run) => `${named(run)} is not whole in a window`),
    ...program.blocks.flatMap((block) => brokenRests(program, block, runsOf(block.name))),
    ...brokenPump(program, schedule),
    ...brokenPairs(program, schedule),
    ...brokenWater(program, schedule),
  ];
}

function named({ block, pulse, start }: Run): string {
  const two = (number: number) => `${number < 10 ? "0" : ""}${number}`;
  return `block "${block}", pulse ${pulse} at ${two(Math.floor(start / 60) % 24)}:${two(start % 60)}`;
}

function flowOf(program: Program, name: string): number {
  const block = program.blocks.find((each) => each.name === name);
  return block ? (block.flow ?? block.area * block.rate) : 0;
}

/** As many pulses as the mix asks for, each long enough and no longer than one step of the controller over that. */
function brokenPulses({ step = 1 }: Program, block: Block, runs: Run[]): string[] {
  const depth = block.depth * block.multiplier;
  const count = depth === 0 ? 0 : Math.max(1, Math.ceil(depth / (block.takeUp ?? Infinity) - 1e-9));
  if (runs.length !== count) return [`block "${block.name}" has ${runs.length} pulses, needs ${count}`];
  const each = (60 * depth) / block.rate / count;
  const parts = step < 1 / PARTS ? PARTS * PARTS : PARTS;
  return runs.flatMap((run, i) => [
    ...(run.pulse === i + 1 ? [] : [`${named(run)} must be pulse ${i + 1}`]),
    ...(Number.isInteger(run.start) ? [] : [`${named(run)} must start at a whole minute`]),
    ...(run.minutes >= each - MINUTE
      ? []
      : [`${named(run)} runs ${down(run.minutes, parts)} min, needs ${up(each, parts)}`]),
    ...(run.minutes < each + step + MINUTE
      ? []
      : [`${named(run)} runs ${up(run.minutes, parts)} min, ${up(each, parts)} are enough`]),
  ]);
}

function insideWindow({ windows }: Program, { start, minutes }: Run): boolean {
  const first = windows[0]?.start ?? 0;
  if (start < first || start + minutes > first + 1440 + MINUTE) return false;
  return windows.some((window) => {
    const length = (window.end - window.start + 1440) % 1440 || 1440;
    const after = (start - window.start + 2880) % 1440;
    return after + minutes <= length + MINUTE;
  });
}

function brokenRests({ changeOver = 0 }: Program, { rest = 0 }: Block, runs: Run[]): string[] {
  const least = Math.max(rest, changeOver / 60);
  return runs.slice(1).flatMap((run, i) => {
    const before = runs[i] as Run;
    const had = run.start - before.start - before.minutes;
    return had >= least - MINUTE ? [] : [`${named(run)} comes after a rest of ${down(had)} min, needs ${up(least)}`];
  });
}

/** A valve counts until its change-over is over. */
function together({ changeOver = 0 }: Program, a: Run, b: Run): boolean {
  const until = (run: Run) => run.start + run.minutes + changeOver / 60 - MINUTE;
  return a.start < until(b) && b.start < until(a);
}

function brokenPump(program: Program, schedule: Schedule): string[] {
  return schedule.flatMap((run) => {
    const running = schedule.filter((other) => other.start <= run.start && together(program, run, other));
    const flow = running.reduce((sum, { block }) => sum + flowOf(program, block), 0);
    if (flow <= program.pump + FLOW) return [];
    const [made, given] = [up(flow / MINUTES_AN_HOUR), down(program.pump / MINUTES_AN_HOUR)];
    return [`${named(run)} makes ${made} L/min, the pump gives ${given} L/min`];
  });
}

function brokenPairs(program: Program, schedule: Schedule): string[] {
  return (program.apart ?? []).flatMap(([one, other]) =>
    schedule
      .filter(({ block }) => block === one)
      .filter((run) => schedule.some((second) => second.block === other && together(program, run, second)))
      .map((run) => `${named(run)} runs together with block "${other}"`),
  );
}

function brokenWater(program: Program, schedule: Schedule): string[] {
  const { limit = Infinity, tank, windows } = program;
  const usedBy = (minute: number) =>
    schedule.reduce((sum, { block, start, minutes }) => {
      const ran = Math.min(minutes, Math.max(0, minute - start));
      return sum + (flowOf(program, block) * ran) / 60;
    }, 0);
  const total = usedBy(Infinity);
  const taken = up(total / LITRES_A_KL);
  const over = total > limit + LITRE ? [`the day takes ${taken} kL, the limit is ${limit / LITRES_A_KL} kL`] : [];
  if (!tank) return over;
  const begin = windows[0]?.start ?? 0;
  const ends = schedule.filter(({ start, minutes }) => {
    const end = start + minutes;
    return usedBy(end) > tank.volume + (tank.refill * (end - begin)) / 60 + LITRE;
  });
  return [...over, ...ends.map((run) => `the tank is empty before ${named(run)} ends`)];
}
