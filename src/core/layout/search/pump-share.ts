import { positive } from "../../checks";

/**
 * Share of the pump's flow that a layout takes.
 *
 *     s = Q / P        Q: flow of all heads together [L/h]; P: flow of the pump [L/h]
 *
 * @param flow Flow of all heads, Q [L/h], more than 0
 * @param pumpFlow Flow that the pump gives at the heads' pressure, P [L/h], more than 0
 * @returns s, more than 0; above 1 the bed cannot run at once
 * @throws InputError if a flow is not more than 0
 * @source arithmetic
 * @example pumpShare(9000, 12000) // 0.75
 */
export function pumpShare(flow: number, pumpFlow: number): number {
  return positive("flow", flow, "L/h") / positive("pump_flow", pumpFlow, "L/h");
}
