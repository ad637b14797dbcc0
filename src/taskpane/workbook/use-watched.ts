import { useEffect, useState } from "react";
import type { Host } from "../../hosts/host";
import { words } from "../parts/task/words";
import type { Reading } from "./reading";
import { refreshOf } from "./refresh";

/** Follows what a reading finds in the workbook; null until it was read once. `reading` must be one that stays. */
export function useWatched<T>(host: Host, reading: Reading<T>): { found: T | null; failure: string } {
  const [found, setFound] = useState<T | null>(null);
  const [failure, setFailure] = useState("");
  useEffect(
    () =>
      refreshOf(host).follow({
        wants: () => reading.wants,
        show: (snapshot) => {
          setFound(reading.read(snapshot));
          setFailure("");
        },
        fail: (reason) => setFailure(words(reason)),
      }),
    [host, reading],
  );
  return { found, failure };
}
