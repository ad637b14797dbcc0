import type { Host } from "../hosts/host";
import type { ProtectedCells } from "./protected-cells";

const READING = new Set<keyof Host>([
  "snapshot",
  "selection",
  "select",
  "watch",
  "read",
  "inputs",
  "named",
  "sheets",
  "settled",
  "slow",
  "openPage",
  "separators",
]);

/** The host as our own code uses it: its changes reach protected cells too. */
export function freeHost(host: Host, cells: ProtectedCells): Host {
  return new Proxy(host, {
    get(target, key) {
      const part = target[key as keyof Host];
      if (typeof part !== "function" || READING.has(key as keyof Host)) return part;
      const work = part as (...given: unknown[]) => Promise<unknown>;
      return (...given: unknown[]) => cells.freely(() => work(...given));
    },
  });
}
