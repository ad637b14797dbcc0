import { useCallback } from "react";
import type { Host } from "../../hosts/host";
import { type NamedCells, readNamed } from "./named";
import { useWatched } from "./use-watched";

/** Follows the cells behind these names; null until they were read once. `names` must be one list that stays. */
export function useNamed(host: Host, names: readonly string[]): { found: NamedCells | null; failure: string } {
  const read = useCallback((from: Host) => readNamed(from, names), [names]);
  return useWatched(host, read);
}
