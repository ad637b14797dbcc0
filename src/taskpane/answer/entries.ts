import { cellAt, reference } from "../../cells/box";
import type { Snapshot } from "../../hosts/snapshot";

/** What a person typed for one setting, and the sheet that a plain address such as F2 means. */
export interface Entry {
  text: string;
  sheet: string;
  touched: boolean;
}

export type EntryName = "minutes" | "mouth" | "depth" | "share";
export type Unit = "mL" | "mm";
export type Basis = "can" | "quarter" | "share";

/** The test settings as typed. */
export interface Entries {
  minutes: Entry;
  mouth: Entry;
  depth: Entry;
  share: Entry;
  unit: Unit;
  basis: Basis;
  /** True once somebody chose it here; until then the workbook's own is taken. */
  basisTouched: boolean;
}

const NAMES: Record<EntryName, string> = {
  minutes: "Test_Minutes",
  mouth: "Can_Mouth_mm",
  depth: "Net_Depth_mm",
  share: "Share_Wanted",
};

const BASIS = "Multiplier_Basis";
const BASES: Record<string, Basis> = { "driest can": "can", "low quarter": "quarter", "share of pots": "share" };

const BLANK: Entry = { text: "", sheet: "", touched: false };

export const NO_ENTRIES: Entries = {
  minutes: BLANK,
  mouth: BLANK,
  depth: BLANK,
  share: { ...BLANK, text: "0.9" },
  unit: "mL",
  basis: "can",
  basisTouched: false,
};

/** What the settings are read from while nothing was typed here. */
export const PREFILLS: readonly string[] = [...Object.values(NAMES), BASIS];

/** By what the run time is set: as chosen here, else as the workbook says. */
export function basisOf(snapshot: Snapshot, { basis, basisTouched }: Entries): Basis {
  const found = basisTouched ? null : snapshot.named(BASIS);
  return (found && BASES[String(found.cells[0]![0])]) ?? basis;
}

/** Cell references from the workbook's defined names, for the settings where nothing was typed. */
export function prefilled(snapshot: Snapshot, entries: Entries): Partial<Record<EntryName, Entry>> {
  const found: Partial<Record<EntryName, Entry>> = {};
  for (const [key, name] of Object.entries(NAMES) as [EntryName, string][]) {
    const { text, touched } = entries[key];
    if (touched || text !== NO_ENTRIES[key].text) continue;
    const area = snapshot.named(name)?.area;
    if (area) found[key] = { text: reference(cellAt(area, 0, 0)), sheet: area.sheet, touched: false };
  }
  return found;
}
