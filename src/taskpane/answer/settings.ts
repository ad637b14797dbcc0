import { positive, within } from "../../core/checks";
import { mouth as depthBy } from "../../functions/arguments";
import type { Snapshot, Wanted } from "../../hosts/snapshot";
import type { Basis, Entries, Unit } from "./entries";
import { entryWants, resolve, type Setting } from "./resolve";

/** The test settings after reading. `mouth` is "mm" where readings are depths already. */
export interface Settings {
  minutes: Setting<number>;
  mouth: Setting<number | "mm">;
  depth: Setting<number>;
  share: Setting<number>;
  basis: Basis;
}

function mouthOf(value: unknown): number | "mm" {
  depthBy(value);
  return typeof value === "number" ? value : "mm";
}

/** What must be read for the settings as typed. */
export const settingsWants = ({ minutes, mouth, depth, share }: Entries): Wanted[] =>
  [minutes, mouth, depth, share].map(entryWants);

export function readSettings(snapshot: Snapshot, entries: Entries): Settings {
  const { unit, basis } = entries;
  const quantity = (name: "minutes" | "depth", of: string) =>
    resolve(snapshot, name, entries[name], (value) => positive(name, value, of));
  return {
    minutes: quantity("minutes", "min"),
    mouth: unit === "mm" ? { value: "mm" } : resolve(snapshot, "mouth", entries.mouth, mouthOf),
    depth: quantity("depth", "mm"),
    share: resolve(snapshot, "share", entries.share, (value) => within("share", value, 0.5, 1)),
    basis,
  };
}

export function readingUnit({ mouth }: Settings): Unit {
  return mouth.value === "mm" ? "mm" : "mL";
}
