const MOST_STEPS = 12;

/** Weighs a flow so that flows which fit the pump together weigh 1 at most together. */
export type Weight = (flow: number) => number;

/**
 * Dual feasible functions of flows under a pump: each gives an energy bound, and some see that large flows cannot share.
 *
 *     e: 1 where q > Q - e, 0 where q < e, q / Q between;  then floor((k + 1) x) / k where (k + 1) x is not whole
 *
 * @param flows Flows, whole numbers from 1 to the pump's
 * @param pump Flow of the pump, a whole number
 * @returns Functions of the flow, each from 0 to 1; the first is q / Q
 * @source Fekete and Schepers, New classes of fast lower bounds for bin packing problems (2001), from memory
 */
export function dualFeasible(flows: readonly number[], pump: number): Weight[] {
  const cuts = [0, ...new Set(flows.filter((flow) => flow * 2 <= pump))];
  return cuts.flatMap((cut) =>
    Array.from(
      { length: MOST_STEPS },
      (_, k): Weight =>
        (flow) =>
          stepped(trimmed(flow, cut, pump), pump, k),
    ),
  );
}

function trimmed(flow: number, cut: number, pump: number): number {
  if (flow > pump - cut) return pump;
  return flow < cut ? 0 : flow;
}

function stepped(flow: number, pump: number, k: number): number {
  if (k === 0 || ((k + 1) * flow) % pump === 0) return flow / pump;
  return Math.floor(((k + 1) * flow) / pump) / k;
}
