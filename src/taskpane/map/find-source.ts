import type { Area } from "../../cells/area";
import { boxOf, reference } from "../../cells/box";
import type { Host } from "../../hosts/host";
import type { Answer } from "../answer/answer";
import { numberIn, readNamed } from "../workbook/named";
import { gridSource, listSource, type Source, type Test } from "./source";

/** Where the cans of a map come from: the workbook's own, or what is selected. */
export type Way = "audit" | "grid" | "list";

/** Distances between cans that are in the selected range [m]. */
export interface Spacings {
  across: number;
  along: number;
}

const AUDIT_NAMES = ["Test_Minutes", "Can_Mouth_mm"] as const;

async function area(host: Host, name: string): Promise<Area> {
  const found = await host.named(name);
  if (!found)
    throw new Error(`This workbook has no cells named ${name}: add the audit sheets, or choose selected cells`);
  return found;
}

async function auditSource(host: Host): Promise<Source> {
  const [readings, across, along] = await Promise.all(
    ["Cans_Readings", "Cans_Across_m", "Cans_Along_m"].map((name) => area(host, name)),
  );
  const test = await readNamed(host, AUDIT_NAMES);
  const [minutes, mouth] = [numberIn(test.Test_Minutes), numberIn(test.Can_Mouth_mm)];
  if (minutes === undefined || mouth === undefined)
    throw new Error("The map needs the minutes of the test and the can's mouth");
  const [cells, columns, rows] = await Promise.all([host.read(readings!), host.read(across!), host.read(along!)]);
  return gridSource(cells, readings!, { minutes, mouth }, columns.flat(), rows.flat());
}

function testOf({ settings }: Answer): Test {
  const { minutes, mouth } = settings;
  if (minutes.value === undefined || mouth.value === undefined) {
    throw new Error("The map needs the minutes of the test and the can's mouth: give them under Readings");
  }
  return { minutes: minutes.value, mouth: mouth.value };
}

/** Reads the cans that a map is to show; throws what is missing, in words. */
export async function findSource(host: Host, way: Way, answer: Answer, spacings: Spacings | null): Promise<Source> {
  if (way === "audit") return auditSource(host);
  const { selected } = answer;
  const test = testOf(answer);
  if (boxOf(selected).rows * boxOf(selected).columns === 1) {
    throw new Error(`${reference(selected)} is one cell: select the readings of the cans`);
  }
  const cells = await host.read(selected);
  if (way === "list") return listSource(cells, selected, test);
  if (!spacings) throw new Error("The map needs the distances between the cans");
  const { rows, columns } = boxOf(selected);
  const places = (count: number, gap: number) => Array.from({ length: count }, (_, index) => index * gap);
  return gridSource(cells, selected, test, places(columns, spacings.across), places(rows, spacings.along));
}
