import type { Area } from "../../cells/area";
import { MEASURES } from "../../core/figures/measures";
import type { Host } from "../../hosts/host";
import { type NamedCells, numberIn } from "./named";
import { useNamed } from "./use-named";

const USED = [
  [MEASURES.MAR.name, "Used_MAR"],
  [MEASURES.CU.short, "Used_CU"],
  [MEASURES.DU.short, "Used_DU"],
  ["SC (driest", "Used_SC_Can"],
  [MEASURES.SC_QUARTER.name, "Used_SC_Quarter"],
] as const;
const RUN_TIME = ["Cans_Readings", "Result_Run_Time_min"];
const NAMES = ["Cans_Readings", "Positions_Uneven", ...USED.map(([, name]) => name)];

/** Whether readings are the workbook's own cans, all of them. */
const areCans = (found: NamedCells | null, area: Area | undefined): boolean => {
  const cans = found?.Cans_Readings?.area;
  return area !== undefined && cans?.sheet === area.sheet && cans.address === area.address;
};

/** The run time [min] that the workbook states for its own cans. */
export function useStatedRunTime(host: Host, area: Area | undefined): number | undefined {
  const { found } = useNamed(host, RUN_TIME);
  return areCans(found, area) ? numberIn(found?.Result_Run_Time_min) : undefined;
}

/** The workbook's figure by area for a measure, where it puts those first. */
export type ByArea = (measure: string) => number | undefined;

/** The figures by area for the workbook's own cans, where they stand unevenly; null for others. */
export function useByArea(host: Host, area: Area | undefined): ByArea | null {
  const { found } = useNamed(host, NAMES);
  if (!areCans(found, area)) return null;
  if (found?.Positions_Uneven?.value !== true) return null;
  return (measure) => {
    const name = USED.find(([start]) => measure.startsWith(start))?.[1];
    return name && numberIn(found[name]);
  };
}
