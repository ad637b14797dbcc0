import type { Area, Host } from "../hosts/host";
import { numberIn } from "./named";
import { useNamed } from "./use-named";

const USED = [
  ["Mean application rate", "Used_MAR"],
  ["CU", "Used_CU"],
  ["DU", "Used_DU"],
  ["SC (driest", "Used_SC_Can"],
  ["SC (low quarter)", "Used_SC_Quarter"],
] as const;
const NAMES = ["Cans_Readings", "Positions_Uneven", ...USED.map(([, name]) => name)];

/** The workbook's figure by area for a measure, where it puts those first. */
export type ByArea = (measure: string) => number | undefined;

/** The figures by area for the workbook's own cans, where they stand unevenly; null for others. */
export function useByArea(host: Host, area: Area | undefined): ByArea | null {
  const { found } = useNamed(host, NAMES);
  const cans = found?.Cans_Readings?.area;
  if (!area || cans?.sheet !== area.sheet || cans.address !== area.address) return null;
  if (found?.Positions_Uneven?.value !== true) return null;
  return (measure) => {
    const name = USED.find(([start]) => measure.startsWith(start))?.[1];
    return name && numberIn(found[name]);
  };
}
