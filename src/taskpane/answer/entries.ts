import type { Area } from "../../cells/area";
import { cellAt, reference } from "../../cells/box";
import type { Host } from "../../hosts/host";

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

const NAMES: Partial<Record<EntryName, string>> = {
  minutes: "Test_Minutes",
  mouth: "Can_Mouth_mm",
  depth: "Net_Depth_mm",
  share: "Share_Wanted",
};

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

/** By what the run time is set: as chosen here, else as the workbook says. */
export async function basisOf(host: Host, { basis, basisTouched }: Entries): Promise<Basis> {
  const area = basisTouched ? null : await host.named("Multiplier_Basis");
  if (!area) return basis;
  const [[word = null] = []] = await host.read(area);
  return BASES[String(word)] ?? basis;
}

/** Cell references from the workbook's defined names, for the settings where nothing was typed. */
export async function prefilled(host: Host, entries: Entries): Promise<Partial<Record<EntryName, Entry>>> {
  const found: Partial<Record<EntryName, Entry>> = {};
  for (const [key, name] of Object.entries(NAMES) as [EntryName, string][]) {
    const { text, touched } = entries[key];
    if (touched || text !== NO_ENTRIES[key].text) continue;
    const area: Area | null = await host.named(name);
    if (area) found[key] = { text: reference(cellAt(area, 0, 0)), sheet: area.sheet, touched: false };
  }
  return found;
}
