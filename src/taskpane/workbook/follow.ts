import type { Host } from "../../hosts/host";
import { latest } from "./latest";

/** Shows what `read` finds now, and anew after every change of the workbook; `fail` is told why not. Answers what stops it. */
export function follow<T>(
  host: Host,
  read: () => Promise<T>,
  show: (found: T) => void,
  fail: (reason: unknown) => void,
): () => void {
  const line = latest(read, show, fail);
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
}
