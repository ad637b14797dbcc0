import { boxOf } from "../../../cells/box";
import type { Input } from "../../../cells/cell";
import type { CanPlan } from "../../../core/layout/cans/plan";
import type { Host } from "../../../hosts/host";
import type { Filled } from "../../../hosts/snapshot";
import type { Act } from "../../workbook/act";
import { writeAll } from "../../workbook/writes";

async function filled<Name extends string>(host: Host, names: readonly Name[]): Promise<Record<Name, Filled>> {
  const snapshot = await host.snapshot({ names });
  const missing = names.find((name) => !snapshot.named(name));
  if (missing) throw new Error(`This workbook has no cells named ${missing}: add the audit sheets first`);
  return Object.fromEntries(names.map((name) => [name, snapshot.named(name)!])) as Record<Name, Filled>;
}

const line = (places: readonly number[], count: number): Input[] =>
  Array.from({ length: count }, (_, index) => (index < places.length ? Number(places[index]!.toFixed(3)) : ""));

/** How many cans of the Cans sheet hold a number. */
export async function readingsThere(host: Host): Promise<number> {
  const { Cans_Readings: readings } = await filled(host, ["Cans_Readings"]);
  return readings.cells.flat().filter((cell) => typeof cell === "number").length;
}

/** Writes the places of the cans [m] into the Cans sheet, to the millimetre; readings stay. */
export async function fillCans(host: Host, plan: CanPlan): Promise<Act> {
  const { Cans_Across_m, Cans_Along_m } = await filled(host, ["Cans_Across_m", "Cans_Along_m"]);
  const [across, along] = [Cans_Across_m.area, Cans_Along_m.area];
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
