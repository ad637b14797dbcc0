import { useCallback, useEffect, useRef, useState } from "react";
import type { Area } from "../../cells/area";
import type { Host } from "../../hosts/host";
import { words } from "../parts/task/words";
import { refreshOf } from "../workbook/refresh";
import { type Answer, answerFor, answerWants } from "./answer";
import { type Entries, NO_ENTRIES } from "./entries";

/** So that a half-typed address is not called wrong. */
const TYPING_PAUSE_MS = 400;

/** Follows the selection and the cells: the newest answer, the settings as typed, and the last range that held readings. */
export function useAnswer(host: Host) {
  const [entries, setEntries] = useState<Entries>(NO_ENTRIES);
  const [answer, setAnswer] = useState<Answer | null>(null);
  const [failure, setFailure] = useState("");
  const [readings, setReadings] = useState<Area | null>(null);
  const last = useRef<Area | null>(null);
  const typed = useRef(entries);
  const ask = useRef<() => void>(() => {});
  const pause = useRef<ReturnType<typeof setTimeout>>(undefined);

  const change = useCallback((changed: Partial<Entries>) => {
    typed.current = { ...typed.current, ...changed };
    setEntries(typed.current);
    clearTimeout(pause.current);
    pause.current = setTimeout(() => ask.current(), TYPING_PAUSE_MS);
  }, []);

  useEffect(() => {
    const show = (next: Answer) => {
      const untouched = Object.entries(next.prefilled).filter(([name]) => !typed.current[name as "minutes"].touched);
      const { basis } = typed.current.basisTouched ? typed.current : next.settings;
      if (untouched.length > 0 || basis !== typed.current.basis) {
        typed.current = { ...typed.current, ...Object.fromEntries(untouched), basis };
        setEntries(typed.current);
      }
      setAnswer(next);
      setFailure("");
      if (next.audit && next.audit.catches.values.length > 1) {
        last.current = next.area;
        setReadings(next.area);
      }
    };
    const refresh = refreshOf(host);
    let asked: [Entries, Area | null] = [typed.current, last.current];
    ask.current = () => refresh.ask();
    const stop = refresh.follow({
      wants: () => {
        asked = [typed.current, last.current];
        return answerWants(...asked);
      },
      show: (snapshot) => show(answerFor(snapshot, ...asked)),
      fail: (reason) => {
        setFailure(words(reason));
        setAnswer((before) => before && { ...before, audit: null, problem: "", offer: null });
      },
    });
    return () => {
      stop();
      clearTimeout(pause.current);
    };
  }, [host]);

  return { answer, entries, change, failure, readings };
}
