import { useEffect, useState } from "react";
import type { Host } from "../../hosts/host";
import { words } from "../parts/words";
import { follow } from "./follow";

/** Follows what `read` finds in the workbook; null until it was read once. `read` must be one function that stays. */
export function useWatched<T>(host: Host, read: (host: Host) => Promise<T>): { found: T | null; failure: string } {
  const [found, setFound] = useState<T | null>(null);
  const [failure, setFailure] = useState("");
  useEffect(() => {
    const show = (next: T) => {
      setFound(next);
      setFailure("");
    };
    const fail = (reason: unknown) => setFailure(words(reason));
    return follow(host, () => read(host), show, fail);
  }, [host, read]);
  return { found, failure };
}
