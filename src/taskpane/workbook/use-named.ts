import { useMemo } from "react";
import type { Host } from "../../hosts/host";
import { type NamedCells, namedReading } from "./named";
import { useWatched } from "./use-watched";

/** Follows the cells behind these names; null until they were read once. `names` must be one list that stays. */
export function useNamed(host: Host, names: readonly string[]): { found: NamedCells | null; failure: string } {
  return useWatched(
    host,
    useMemo(() => namedReading(names), [names]),
  );
}
