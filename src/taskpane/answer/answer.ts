import type { Area } from "../../cells/area";
import { boxOf, reference } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import { allWanted, type Filled, type Snapshot, type Wanted } from "../../hosts/snapshot";
import { type Audit, auditOf } from "./audit";
import { AREA_NAMES, areasFor } from "./can-areas";
import { CatchProblem } from "./catches";
import { basisOf, type Entries, type Entry, type EntryName, PREFILLS, prefilled } from "./entries";
import { LIMITS } from "./limits-in";
import { readSettings, type Settings, settingsWants } from "./settings";

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
function auditCans(snapshot: Snapshot, { sheet }: Area): Area | null {
  const [cans, across] = [snapshot.named("Cans_Readings"), snapshot.named("Cans_Across_m")];
  return cans?.area.sheet === sheet && across?.area.sheet === sheet ? cans.area : null;
}

/** One cell, or words, are where somebody works, not a bed: the last readings stay, or else the workbook's own. */
function areaShown(snapshot: Snapshot, { area: selected, cells }: Filled, last: Area | null): Area {
  const cans = auditCans(snapshot, selected);
  if (cans && !isPart(selected, cans)) return cans;
  if (!isCell(selected) && holdsNumbers(cells)) return selected;
  if (cans) return cans;
  if (last && snapshot.sheet(last.sheet) !== null) return last;
  return snapshot.named("Cans_Readings")?.area ?? selected;
}

/** What must be read for the answer. */
export const answerWants = (typed: Entries, last: Area | null): Wanted =>
  allWanted([
    { names: [...AREA_NAMES, ...PREFILLS], areas: last ? [last] : [] },
    LIMITS.wants,
    ...settingsWants(typed),
  ]);

/** What the pane shows of the area to show and the settings; `last` is the last area of readings. */
export function answerFor(snapshot: Snapshot, typed: Entries, last: Area | null): Answer {
  const { selection } = snapshot.seen;
  if (!selection) throw new Error("Select cells of a sheet: a picture, or several ranges at once, hold no readings");
  const selected = selection.area;
  const area = areaShown(snapshot, selection, last);
  const found = prefilled(snapshot, typed);
  const settings = readSettings(snapshot, { ...typed, ...found, basis: basisOf(snapshot, typed) });
  const { cells } = snapshot.at(area)!;
  const cans = auditCans(snapshot, area);
  const part = cans !== null && isPart(area, cans);
  const answer = { selected, area, settings, prefilled: found, audit: null, problem: "", offer: null, part };
  if (isCell(area)) return { ...answer, problem: `${reference(area)} is one cell` };
  try {
    return { ...answer, audit: auditOf(area, cells, settings, LIMITS.read(snapshot), areasFor(snapshot, area)) };
  } catch (error) {
    if (!(error instanceof CatchProblem)) throw error;
    const named = snapshot.named("Cans_Readings")?.area;
    return { ...answer, problem: error.message, offer: named && !same(named, area) ? named : null };
  }
}
