import type { Area, Host } from "../hosts/host";
import { cellAt, reference } from "./address";

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
}

const NAMES: Partial<Record<EntryName, string>> = {
  minutes: "Test_Minutes",
  mouth: "Can_Mouth_mm",
  depth: "Net_Depth_mm",
};

const BLANK: Entry = { text: "", sheet: "", touched: false };

export const NO_ENTRIES: Entries = {
  minutes: BLANK,
  mouth: BLANK,
  depth: BLANK,
  share: { ...BLANK, text: "0.9" },
  unit: "mL",
  basis: "can",
};

/** Cell references from the workbook's defined names, for the settings where nothing was typed. */
export async function prefilled(host: Host, entries: Entries): Promise<Partial<Record<EntryName, Entry>>> {
  const found: Partial<Record<EntryName, Entry>> = {};
  for (const [key, name] of Object.entries(NAMES) as [EntryName, string][]) {
    const { text, touched } = entries[key];
    if (touched || text !== "") continue;
    const area: Area | null = await host.named(name);
    if (area) found[key] = { text: reference(cellAt(area, 0, 0)), sheet: area.sheet, touched: false };
  }
  return found;
}
