import { positive, within } from "../core/checks";
import { mouth as depthBy } from "../functions/arguments";
import type { Host } from "../hosts/host";
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
  const { minutes, mouth, depth, share, unit, basis } = entries;
  return {
    minutes: await resolve(host, "minutes", minutes, (value) => positive("minutes", value, "min")),
    mouth: unit === "mm" ? { value: "mm" } : await resolve(host, "mouth", mouth, mouthOf),
    depth: await resolve(host, "depth", depth, (value) => positive("depth", value, "mm")),
    share: await resolve(host, "share", share, (value) => within("share", value, 0.5, 1)),
    basis,
  };
}

export function readingUnit({ mouth }: Settings): Unit {
  return mouth.value === "mm" ? "mm" : "mL";
}
