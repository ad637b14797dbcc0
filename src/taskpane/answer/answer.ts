import type { Area } from "../../cells/area";
import { boxOf, reference } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import type { Host } from "../../hosts/host";
import { type Audit, auditOf } from "./audit";
import { areasFor } from "./can-areas";
import { CatchProblem } from "./catches";
import { basisOf, type Entries, type Entry, type EntryName, prefilled } from "./entries";
import { limitsIn } from "./limits-in";
import { readSettings, type Settings } from "./settings";

/** What the pane shows: an audit of an area, or the words that say why there is none. */
export interface Answer {
  selected: Area;
  /** The area shown: the selection, or the readings that are kept while one cell is selected. */
  area: Area;
  settings: Settings;
  prefilled: Partial<Record<EntryName, Entry>>;
  audit: Audit | null;
  problem: string;
  /** Whether that is only a part of the audit's cans. */
  part: boolean;
  /** The workbook's own readings, where the selection has none. */
  offer: Area | null;
}

const same = (one: Area, other: Area) => one.sheet === other.sheet && one.address === other.address;

const isCell = (area: Area) => {
  const { rows, columns } = boxOf(area);
  return rows * columns === 1;
};

const holdsNumbers = (cells: Cell[][]) => cells.flat().some((cell) => typeof cell === "number");

/** Whether a selection lies within an area and is not all of it. */
function isPart(selected: Area, whole: Area): boolean {
  const [a, b] = [boxOf(selected), boxOf(whole)];
  return (
    a.row >= b.row &&
    a.column >= b.column &&
    a.row + a.rows <= b.row + b.rows &&
    a.column + a.columns <= b.column + b.columns &&
    a.rows * a.columns < b.rows * b.columns
  );
}

/** The audit's own cans, where the selection is on their sheet: it holds positions and figures beside them. */
async function auditCans(host: Host, { sheet }: Area): Promise<Area | null> {
  const [cans, across] = await Promise.all([host.named("Cans_Readings"), host.named("Cans_Across_m")]);
  return cans?.sheet === sheet && across?.sheet === sheet ? cans : null;
}

/** One cell, or words, are where somebody works, not a bed: the last readings stay, or else the workbook's own. */
async function areaShown(host: Host, selected: Area, last: Area | null): Promise<Area> {
  const cans = await auditCans(host, selected);
  if (cans && !isPart(selected, cans)) return cans;
  if (!isCell(selected) && holdsNumbers(await host.read(selected))) return selected;
  if (cans) return cans;
  if (last && (await host.sheets()).includes(last.sheet)) return last;
  return (await host.named("Cans_Readings")) ?? selected;
}

/** Reads the area to show and the settings, and calculates what the pane shows; `last` is the last area of readings. */
export async function answerFor(host: Host, typed: Entries, last: Area | null): Promise<Answer> {
  const selected = await host.selection();
  const area = await areaShown(host, selected, last);
  const found = await prefilled(host, typed);
  const settings = await readSettings(host, { ...typed, ...found, basis: await basisOf(host, typed) });
  const cells = await host.read(area);
  const cans = await auditCans(host, area);
  const part = cans !== null && isPart(area, cans);
  const answer = { selected, area, settings, prefilled: found, audit: null, problem: "", offer: null, part };
  if (isCell(area)) return { ...answer, problem: `${reference(area)} is one cell` };
  try {
    return { ...answer, audit: auditOf(area, cells, settings, await limitsIn(host), await areasFor(host, area)) };
  } catch (error) {
    if (!(error instanceof CatchProblem)) throw error;
    const named = await host.named("Cans_Readings");
    return { ...answer, problem: error.message, offer: named && !same(named, area) ? named : null };
  }
}
