import { boxOf, reference } from "../../cells/box";
import type { Filled, Snapshot } from "../../hosts/snapshot";
import type { Answer } from "../answer/answer";
import { namedCells, numberIn } from "../workbook/named";
import { gridSource, listSource, type Source, type Test } from "./source";

/** Where the cans of a map come from: the workbook's own, or what is selected. */
export type Way = "audit" | "grid" | "list";

/** Distances between cans that are in the selected range [m]. */
export interface Spacings {
  across: number;
  along: number;
}

const CANS = ["Cans_Readings", "Cans_Across_m", "Cans_Along_m"] as const;
const TEST = ["Test_Minutes", "Can_Mouth_mm"] as const;
/** The cells of the workbook's own audit. */
export const AUDIT_NAMES: readonly string[] = [...CANS, ...TEST];

/** The cans of the workbook's own audit. */
export function auditSource(snapshot: Snapshot): Source {
  const [readings, across, along] = CANS.map((name) => {
    const found = snapshot.named(name);
    if (found) return found;
    throw new Error(`This workbook has no cells named ${name}: add the audit sheets, or choose selected cells`);
  }) as [Filled, Filled, Filled];
  const test = namedCells(snapshot, TEST);
  const [minutes, mouth] = [numberIn(test.Test_Minutes), numberIn(test.Can_Mouth_mm)];
  if (minutes === undefined || mouth === undefined)
    throw new Error("The map needs the minutes of the test and the can's mouth");
  return gridSource(readings.cells, readings.area, { minutes, mouth }, across.cells.flat(), along.cells.flat());
}

function testOf({ settings }: Answer): Test {
  const { minutes, mouth } = settings;
  if (minutes.value === undefined || mouth.value === undefined) {
    throw new Error("The map needs the minutes of the test and the can's mouth: give them under Readings");
  }
  return { minutes: minutes.value, mouth: mouth.value };
}

/** The cans that a map is to show; throws what is missing, in words. */
export function findSource(snapshot: Snapshot, way: Way, answer: Answer, spacings: Spacings | null): Source {
  if (way === "audit") return auditSource(snapshot);
  const { area, cells } = snapshot.seen.selection!;
  const test = testOf(answer);
  const { rows, columns } = boxOf(area);
  if (rows * columns === 1) throw new Error(`${reference(area)} is one cell: select the readings of the cans`);
  if (way === "list") return listSource(cells, area, test);
  if (!spacings) throw new Error("The map needs the distances between the cans");
  const places = (count: number, gap: number) => Array.from({ length: count }, (_, index) => index * gap);
  return gridSource(cells, area, test, places(columns, spacings.across), places(rows, spacings.along));
}
