import type { Area } from "../../cells/area";
import type { Host } from "../../hosts/host";
import {
  type PlacedCell,
  type ProgramSheet,
  SETTINGS,
  stated,
  TABLES,
} from "../../workbook/nursery/program/stated-program";

/** Reads the sheets Program and Demand; null where the workbook has no Program. */
export async function readProgramSheet(host: Host): Promise<ProgramSheet | null> {
  const areas = new Map<string, Area>();
  for (const name of [...Object.values(SETTINGS), ...Object.values(TABLES)]) {
    const area = await host.named(name);
    if (!area) return null;
    areas.set(name, area);
  }
  const read = async (name: string) => {
    const area = areas.get(name)!;
    return stated(area, await host.read(area));
  };
  const found: Record<string, PlacedCell | PlacedCell[][]> = {};
  for (const [key, name] of Object.entries(SETTINGS)) found[key] = (await read(name))[0]![0]!;
  for (const [key, name] of Object.entries(TABLES)) found[key] = await read(name);
  return found as ProgramSheet;
}
