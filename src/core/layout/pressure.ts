import { positive } from "../checks";

/**
 * Flow of a head at another pressure.
 *
 *     q2 = q1 sqrt(p2 / p1)        q1: flow at p1; q2: flow at p2
 *
 * @param flow Flow at the stated pressure [L/h], more than 0
 * @param pressure Stated pressure [kPa], more than 0
 * @param otherPressure Pressure that the head gets [kPa], more than 0
 * @returns Flow [L/h], more than 0
 * @throws InputError if a value is not more than 0
 * @source Hydraulic Institute, Engineering Data Library, eq. 3.D.1: flow of a nozzle
 * @example flowAtPressure(500, 100, 400) // 1000
 */
export function flowAtPressure(flow: number, pressure: number, otherPressure: number): number {
  const ratio = positive("other_pressure", otherPressure, "kPa") / positive("pressure", pressure, "kPa");
  return positive("flow", flow, "L/h") * Math.sqrt(ratio);
}
