import { InputError } from "../errors";
import type { Program, Schedule } from "./program";

/** Flow from a minute until the next point. */
export interface FlowPoint {
  minute: number;
  /** [L/h] */
  flow: number;
}

/**
 * Flow of a schedule over time.
 *
 *     Q(t) = sum of the flows of the pulses that run at t
 *
 * @param program The blocks with their flow, or area and rate
 * @param schedule Pulses of these blocks
 * @returns Points in order of time, each the flow [L/h] from then on; the last is 0; empty without a pulse
 * @throws InputError if a pulse is of no block of the program
 * @source own reasoning: flows add up
 */
export function flowCurve(program: Program, schedule: Schedule): FlowPoint[] {
  const flows = new Map(program.blocks.map((block) => [block.name, block.flow ?? block.area * block.rate]));
  const runs = schedule.map(({ block, start, minutes }) => {
    const flow = flows.get(block);
    if (flow === undefined) throw new InputError("block", "be one of the program", block);
    return { flow, start, end: start + minutes };
  });
  const changes = [...new Set(runs.flatMap(({ start, end }) => [start, end]))].sort((a, b) => a - b);
  return changes.map((minute) => ({
    minute,
    flow: runs.reduce((sum, { flow, start, end }) => sum + (start <= minute && minute < end ? flow : 0), 0),
  }));
}
