import type { Area } from "../cells/area";
import type { Host } from "../hosts/host";

async function holdsNumbers(host: Host, area: Area): Promise<boolean> {
  return (await host.read(area)).flat().some((cell) => typeof cell === "number");
}

/** The step that a workbook is at: to be set up, to be filled, or to be read. */
export async function firstStep(host: Host): Promise<string> {
  const readings = await host.named("Cans_Readings");
  if (readings) return (await holdsNumbers(host, readings)) ? "results" : "readings";
  const blocks = await host.named("Program_Blocks");
  if (blocks) return (await holdsNumbers(host, blocks)) ? "night" : "demand";
  return "new";
}
