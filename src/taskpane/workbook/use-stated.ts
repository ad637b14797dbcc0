import type { Area } from "../../cells/area";
import type { Host } from "../../hosts/host";
import { type NamedCells, numberIn, textIn } from "./named";
import { useNamed } from "./use-named";

const NAMES = ["Cans_Readings", "Result_Run_Time_min", "Valve_Run_min", "Multiplier_Basis"];

/** A run time [min] as the workbook states it, and what sets it. */
export interface StatedRunTime {
  minutes: number;
  basis: string;
  /** The longer run that another bed on the valve asks for; undefined where there is none. */
  valve?: number;
}

/** Whether readings are the workbook's own cans, all of them. */
export const areCans = (found: NamedCells | null, area: Area | undefined): boolean => {
  const cans = found?.Cans_Readings?.area;
  return area !== undefined && cans?.sheet === area.sheet && cans.address === area.address;
};

/** The run time that the workbook states for its own cans. */
export function useStatedRunTime(host: Host, area: Area | undefined): StatedRunTime | undefined {
  const { found } = useNamed(host, NAMES);
  const minutes = areCans(found, area) ? numberIn(found?.Result_Run_Time_min) : undefined;
  if (minutes === undefined) return undefined;
  const valve = numberIn(found?.Valve_Run_min) ?? minutes;
  return { minutes, basis: textIn(found?.Multiplier_Basis), ...(valve > minutes && { valve }) };
}
