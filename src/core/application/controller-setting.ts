import { aboveZero } from "../checks";

/** Minutes of rounding error that do not call for one step more. */
const ROUNDING = 1e-9;

/** What is set at the controller. */
export interface ControllerSetting {
  pulses: number;
  /** Minutes of one pulse. */
  each: number;
  /** Minutes of all pulses. */
  total: number;
}

/**
 * A run time as a controller takes it: whole steps, each pulse rounded up, so that no pot gets less than calculated.
 *
 *     each = step ceil(t / (n step))        t: run time, n: pulses
 *
 * @param minutes Run time of all pulses [min], more than 0
 * @param pulses How many pulses, 1 or more
 * @param step Smallest step of the controller [min], more than 0
 * @returns Pulses, minutes of each and of all
 * @throws InputError if one of them is not more than 0
 * @source arithmetic
 * @example controllerSetting(67, 2, 1) // { pulses: 2, each: 34, total: 68 }
 */
export function controllerSetting(minutes: number, pulses: number, step: number): ControllerSetting {
  aboveZero("run time", minutes, "min");
  aboveZero("pulses", pulses, "");
  aboveZero("step", step, "min");
  const each = step * Math.ceil(minutes / pulses / step - ROUNDING);
  return { pulses, each, total: pulses * each };
}
