import { useEffect, useState } from "react";
import type { Host } from "../hosts/host";
import { latest } from "./latest";
import { type NamedCells, readNamed } from "./named";
import { words } from "./words";

/** Follows the cells behind these names; null until they were read once. `names` must be one list that stays. */
export function useNamed(host: Host, names: readonly string[]): { found: NamedCells | null; failure: string } {
  const [found, setFound] = useState<NamedCells | null>(null);
  const [failure, setFailure] = useState("");
  useEffect(() => {
    const show = (next: NamedCells) => {
      setFound(next);
      setFailure("");
    };
    const fail = (reason: unknown) => setFailure(words(reason));
    const line = latest(() => readNamed(host, names), show, fail);
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
  }, [host, names]);
  return { found, failure };
}
