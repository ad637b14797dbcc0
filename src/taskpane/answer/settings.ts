import { positive, within } from "../../core/checks";
import { mouth as depthBy } from "../../functions/arguments";
import type { Host } from "../../hosts/host";
import type { Basis, Entries, Unit } from "./entries";
import { resolve, type Setting } from "./resolve";

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

export async function readSettings(host: Host, entries: Entries): Promise<Settings> {
  const { unit, basis } = entries;
  const quantity = (name: "minutes" | "depth", of: string) =>
    resolve(host, name, entries[name], (value) => positive(name, value, of));
  const [minutes, mouth, depth, share] = await Promise.all([
    quantity("minutes", "min"),
    unit === "mm" ? { value: "mm" as const } : resolve(host, "mouth", entries.mouth, mouthOf),
    quantity("depth", "mm"),
    resolve(host, "share", entries.share, (value) => within("share", value, 0.5, 1)),
  ]);
  return { minutes, mouth, depth, share, basis };
}

export function readingUnit({ mouth }: Settings): Unit {
  return mouth.value === "mm" ? "mm" : "mL";
}
