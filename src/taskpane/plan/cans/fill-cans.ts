import type { Area } from "../../../cells/area";
import { boxOf } from "../../../cells/box";
import type { Input } from "../../../cells/cell";
import type { CanPlan } from "../../../core/layout/cans/plan";
import type { Host } from "../../../hosts/host";
import type { Act } from "../../workbook/act";
import { writeAll } from "../../workbook/writes";

async function named(host: Host, name: string): Promise<Area> {
  const area = await host.named(name);
  if (!area) throw new Error(`This workbook has no cells named ${name}: add the audit sheets first`);
  return area;
}

const line = (places: readonly number[], count: number): Input[] =>
  Array.from({ length: count }, (_, index) => (index < places.length ? Number(places[index]!.toFixed(3)) : ""));

/** How many cans of the Cans sheet hold a number. */
export async function readingsThere(host: Host): Promise<number> {
  const cells = await host.read(await named(host, "Cans_Readings"));
  return cells.flat().filter((cell) => typeof cell === "number").length;
}

/** Writes the places of the cans [m] into the Cans sheet, to the millimetre; readings stay. */
export async function fillCans(host: Host, plan: CanPlan): Promise<Act> {
  const [across, along] = [await named(host, "Cans_Across_m"), await named(host, "Cans_Along_m")];
  const columns = line(plan.across, boxOf(across).columns);
  const rows = line(plan.along, boxOf(along).rows);
  return writeAll(
    host,
    [
      { area: across, inputs: [columns] },
      { area: along, inputs: rows.map((place) => [place]) },
    ],
    "can places",
  );
}
