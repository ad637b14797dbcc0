import type { Area, Host } from "../hosts/host";
import { type Audit, auditOf } from "./audit";
import { CatchProblem } from "./catches";
import { type Entries, type Entry, type EntryName, prefilled } from "./entries";
import { readSettings, type Settings } from "./settings";

/** What the pane shows for the selection: an audit, or the words that say why there is none. */
export interface Answer {
  area: Area;
  settings: Settings;
  prefilled: Partial<Record<EntryName, Entry>>;
  audit: Audit | null;
  problem: string;
  /** The workbook's own readings, where the selection has none. */
  offer: Area | null;
}

const same = (one: Area, other: Area) => one.sheet === other.sheet && one.address === other.address;

/** Reads the selection and the settings, and works out what the pane shows. */
export async function answerFor(host: Host, typed: Entries): Promise<Answer> {
  const area = await host.selection();
  const found = await prefilled(host, typed);
  const settings = await readSettings(host, { ...typed, ...found });
  const cells = await host.read(area);
  const answer = { area, settings, prefilled: found, audit: null, problem: "", offer: null };
  try {
    return { ...answer, audit: auditOf(area, cells, settings) };
  } catch (error) {
    if (!(error instanceof CatchProblem)) throw error;
    const named = await host.named("Cans_Readings");
    return { ...answer, problem: error.message, offer: named && !same(named, area) ? named : null };
  }
}
