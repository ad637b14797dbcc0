import type { Host } from "../hosts/host";

/** The step that a workbook is at: to be set up, to be filled, or to be read. */
export async function firstStep(host: Host): Promise<string> {
  const area = await host.named("Cans_Readings");
  if (!area) return "new";
  const cells = await host.read(area);
  return cells.flat().some((cell) => typeof cell === "number") ? "results" : "readings";
}
