import type { Program } from "../../../src/core/program/program";

export interface Valve {
  flow: number;
  number: number;
  run: number;
  hold: number;
  lag: number;
  apart: boolean[];
}

export interface Span {
  start: number;
  end: number;
}

/** The blocks in whole minutes; the arithmetic is here once more so that the oracle does not lean on the search. */
export function valves({ blocks, changeOver = 0, step = 1, apart = [] }: Program): Valve[] {
  const whole = (length: number) => Math.ceil(length - 1e-9);
  const watered = blocks.filter(({ depth }) => depth > 0);
  return watered.map((block) => {
    const depth = block.depth * block.multiplier;
    const number = whole(depth / (block.takeUp ?? depth));
    const each = whole((60 * depth) / block.rate / number / step) * step;
    return {
      flow: Math.round(1000 * (block.flow ?? block.area * block.rate)),
      number,
      run: whole(each),
      hold: whole(each + changeOver / 60),
      lag: whole(each + Math.max(block.rest ?? 0, changeOver / 60)),
      apart: watered.map(
        ({ name }) => name !== block.name && apart.some((pair) => pair.includes(name) && pair.includes(block.name)),
      ),
    };
  });
}

/**
 * Whether any schedule ends by a minute: walks through time from event to event (an end, a rest that is over, a window
 * that opens) and tries every set of pulses that may start there. States that failed once are not walked again.
 *
 * A state is given up when a block alone, or the minutes that are left times a weight, cannot end in time.
 *
 * @returns The end of a schedule that does, "none", or "unknown" after so many states
 */
export function endsBy(program: Program, spans: Span[], latest: number, states: number): number | "none" | "unknown" {
  const all = valves(program);
  const pump = Math.round(1000 * program.pump);
  const bonus = Math.max(0, ...all.map(({ hold, run }) => hold - run));
  const weights = weightings(all, pump);
  const failed = new Set<string>();
  const left = all.map(({ number }) => number);
  const ready = all.map(() => 0);
  const held = all.map(() => 0);
  const ends = all.map(() => 0);
  /** Until when another start must have kept a pulse from a start that it passed by: else it should have taken it */
  const debts = all.map(() => 0);
  let walked = 0;

  const room = (t: number) =>
    spans.reduce((sum, { start, end }) => {
      const [from, to] = [Math.max(start, t), Math.min(end, latest)];
      return from < to ? sum + to - from + bonus : sum + (start <= t && t < to + bonus ? bonus : 0);
    }, 0);
  const aloneInTime = (t: number) =>
    all.every(({ run, lag }, j) => {
      let from = Math.max(t, ready[j]!);
      for (let k = left[j]!; k > 0; k -= 1) {
        const span = spans.find(({ start, end }) => Math.max(from, start) + run <= Math.min(end, latest));
        if (!span) return false;
        from = Math.max(from, span.start) + lag;
      }
      return true;
    });
  const workInTime = (t: number) => {
    const open = room(t);
    return weights.every((weight) => {
      const work = all.reduce(
        (sum, { hold }, j) => sum + weight[j]! * (left[j]! * hold + Math.max(0, held[j]! - t)),
        0,
      );
      return work <= open + 1e-6;
    });
  };
  const mayStart = (j: number, t: number) => {
    const valve = all[j]!;
    if (left[j] === 0 || ready[j]! > t) return false;
    if (!spans.some(({ start, end }) => t >= start && t + valve.run <= Math.min(end, latest))) return false;
    return mayRun(j, t);
  };
  const mayRun = (j: number, t: number) => {
    const valve = all[j]!;
    let flow = valve.flow;
    for (const [other, { flow: more }] of all.entries()) {
      if (held[other]! <= t) continue;
      if (valve.apart[other]) return false;
      flow += more;
    }
    return flow <= pump;
  };

  const walk = (t: number): boolean => {
    if (!aloneInTime(t) || !workInTime(t)) return false;
    const key = [t, ...left, ...[ready, held, debts].flatMap((times) => times.map((at) => Math.max(0, at - t)))].join();
    if (failed.has(key)) return false;
    walked += 1;
    if (walked > states) throw new Error("too many states");
    if (choose(t, 0)) return true;
    failed.add(key);
    return false;
  };
  const choose = (t: number, from: number): boolean => {
    for (let j = from; j < all.length; j += 1) {
      if (!mayStart(j, t)) continue;
      const before = [left[j]!, ready[j]!, held[j]!, ends[j]!] as const;
      const { run, hold, lag } = all[j]!;
      [left[j], ready[j], held[j], ends[j]] = [left[j]! - 1, t + lag, t + hold, t + run];
      if (choose(t, j + 1)) return true;
      [left[j], ready[j], held[j], ends[j]] = before;
    }
    const before = [...debts];
    if (settled(t) && onward(t)) return true;
    debts.splice(0, debts.length, ...before);
    return false;
  };
  const settled = (t: number) =>
    all.every((valve, j) => {
      const owes = debts[j]! > 0;
      if (owes && held[j] === t + valve.hold) return false;
      const fits = mayRun(j, t);
      if (owes && !fits) debts[j] = 0;
      if (!owes && fits && mayStart(j, t)) debts[j] = t + valve.hold;
      return true;
    });
  const onward = (t: number): boolean => {
    if (left.every((count) => count === 0)) return true;
    const later = [...held, ...ready.filter((_, j) => left[j]! > 0), ...spans.map(({ start }) => start)];
    const next = Math.min(...later.filter((at) => at > t));
    return next < latest && debts.every((debt) => debt === 0 || debt > next) && walk(next);
  };
  try {
    return left.every((count) => count === 0) || walk(spans[0]!.start) ? Math.max(...ends) : "none";
  } catch (error) {
    if ((error as Error).message === "too many states") return "unknown";
    throw error;
  }
}

/**
 * Weights of which no set of blocks that can run at once has more than 1: shares of the pump, and all in halves and in
 * thirds that cannot be raised any more.
 */
function weightings(all: Valve[], pump: number): number[][] {
  const sets = Array.from({ length: 2 ** all.length }, (_, bits) => all.filter((_, j) => bits & (1 << j))).filter(
    (set) =>
      set.reduce((sum, { flow }) => sum + flow, 0) <= pump &&
      set.every(({ apart }) => set.every((other) => !apart[all.indexOf(other)])),
  );
  const members = sets.map((set) => set.map((valve) => all.indexOf(valve)));
  const shares = all.map(({ flow }) => flow / pump);
  const cuts = shares
    .filter((cut) => cut <= 1 / 2)
    .map((cut) => shares.map((share) => (share > 1 - cut ? 1 : share < cut ? 0 : share)));
  return [shares, ...cuts, ...inParts(members, all.length, 2), ...inParts(members, all.length, 3)];
}

function inParts(sets: number[][], count: number, parts: number): number[][] {
  const found: number[][] = [];
  const weight = Array.from({ length: count }, () => 0);
  const allowed = () => sets.every((set) => set.reduce((sum, j) => sum + weight[j]!, 0) <= parts);
  const raised = (j: number) => {
    weight[j]! += 1;
    const still = allowed();
    weight[j]! -= 1;
    return still;
  };
  const fill = (j: number): void => {
    if (j === count) {
      if (!weight.some((_, i) => raised(i))) found.push(weight.map((part) => part / parts));
      return;
    }
    for (weight[j] = 0; weight[j]! <= parts && allowed(); weight[j]! += 1) fill(j + 1);
    weight[j] = 0;
  };
  fill(0);
  return found;
}
