import { useEffect, useState } from "react";
import type { Host } from "../hosts/host";
import { latest } from "./latest";
import { words } from "./words";

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
    const line = latest(() => read(host), show, fail);
    const watching = host.watch(line.ask);
    watching.catch(fail);
    line.ask();
    return () => {
      line.stop();
      watching.then(
        (stop) => stop(),
        () => {},
      );
    };
  }, [host, read]);
  return { found, failure };
}
