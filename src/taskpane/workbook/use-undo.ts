import { useCallback, useEffect, useState } from "react";
import type { Host } from "../../hosts/host";
import { useTask } from "../parts/task/use-task";
import type { Act } from "./act";
import { refreshOf } from "./refresh";

/** Everything that the pane did to the open workbook, and the way back, last first; another workbook begins anew. */
export function useUndo(host: Host) {
  const [done, setDone] = useState<Act[]>([]);
  const task = useTask();
  const { clear, attempt } = task;
  const last = done.at(-1) ?? null;

  useEffect(() => {
    let book = "";
    const show = (now: string) => {
      if (book && now !== book) {
        clear();
        setDone([]);
      }
      book = now;
    };
    return refreshOf(host).follow({ wants: () => ({}), show: ({ seen }) => show(seen.book), fail: () => {} });
  }, [host, clear]);

  const keep = useCallback(
    (one: Act) => {
      clear();
      setDone((all) => [...all, one]);
    },
    [clear],
  );

  const undo = () =>
    attempt("Taking it back", async () => {
      if (!last) return "There is nothing to take back";
      const act = async () => {
        await last.takeBack();
        setDone((all) => all.filter((one) => one !== last));
        return last.taken;
      };
      if (await last.untouched()) return act();
      return { text: last.doubt, yes: last.yes ?? "Put back", no: "Leave it", doing: "Taking it back", act };
    });

  return { last, keep, undo, task };
}

export type Undo = ReturnType<typeof useUndo>;
