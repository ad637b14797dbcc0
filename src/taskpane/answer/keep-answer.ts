import { cellAt } from "../../cells/box";
import type { Host } from "../../hosts/host";
import type { Snapshot } from "../../hosts/snapshot";
import type { CanCell } from "../../workbook/answer/answer-facts";
import { KEEP_NAMES, keptAnswer, type ReadOfBed, STAMPS } from "../../workbook/answer/kept-answer";
import { ratedBed } from "../../workbook/answer/test-summary";
import { KEPT } from "../../workbook/audit/working/kept";
import { BED_CELLS } from "../../workbook/bed/bed-of-workbook";
import { readWithin } from "../map/bed/read-within";
import { keepInWorkbook } from "../workbook/kept";
import { cellsOf } from "../workbook/named";

/** What a snapshot must hold for the answer to be kept. */
export const KEEPING_NAMES: readonly string[] = [...KEEP_NAMES, ...KEPT.map(([name]) => name)];
/** Longer than a large bed takes to be read; a save does not wait longer. */
const READ_MS = 8000;

/** The address of a can in the workbook. */
export const canCellOf = (snapshot: Snapshot): CanCell => {
  const { area } = snapshot.named("Cans_Readings")!;
  return (row, column) => cellAt(area, row, column).address;
};

const text = (snapshot: Snapshot, name: string) => String(snapshot.named(name)?.cells[0]?.[0] ?? "");

/** Whether there is an answer to keep: an audit of this version with readings, which is not being calculated. */
function canBeKept(snapshot: Snapshot): boolean {
  if (snapshot.seen.calculating || STAMPS.some((name) => text(snapshot, name) === "")) return false;
  return (snapshot.named("Cans_Readings")?.cells ?? []).flat().some((cell) => typeof cell === "number");
}

/** Keeps intervals, answer and cause in the workbook, with the stamps of what they are true of. */
export async function keepAnswer(host: Host, snapshot: Snapshot, read: ReadOfBed): Promise<void> {
  if (!canBeKept(snapshot)) return;
  await keepInWorkbook(host, snapshot, keptAnswer(cellsOf(snapshot), read, canCellOf(snapshot)));
}

/** Brings what is kept up to date where something that it is made of was changed. */
export async function keepNewest(host: Host): Promise<void> {
  const snapshot = await host.snapshot({ names: [...KEEPING_NAMES, ...BED_CELLS] });
  const fresh = [
    ["Answer_Stamp", "Answer_Inputs"],
    ["Ends_Stamp", "Inputs_Stamp"],
  ].every(([kept, now]) => text(snapshot, kept!) === text(snapshot, now!));
  if (fresh || !canBeKept(snapshot)) return;
  const bed = ratedBed(cellsOf(snapshot));
  await keepAnswer(host, snapshot, bed ? await readWithin(READ_MS, bed) : {});
}
