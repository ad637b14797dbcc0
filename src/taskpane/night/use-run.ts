import { useCallback, useEffect, useRef, useState } from "react";
import { words } from "../parts/task/words";
import type { Ask, Said } from "./night-messages";
import { nightRun, type Run } from "./night-run";

/** Work beside the page, one at a time: whether it runs, why it failed, and how it is stopped. */
export function useRun() {
  const [running, setRunning] = useState<Ask["kind"] | "">("");
  const [problem, setProblem] = useState("");
  const current = useRef<Run | null>(null);
  useEffect(() => () => current.current?.stop(), []);

  /** Answers true when it came to its end, false when it was stopped or failed. */
  const start = useCallback(async (ask: Ask, hear: (said: Said) => void): Promise<boolean> => {
    current.current?.stop();
    setProblem("");
    setRunning(ask.kind);
    const run = nightRun(ask, hear);
    current.current = run;
    try {
      return await run.finished;
    } catch (reason) {
      setProblem(words(reason));
      return false;
    } finally {
      if (current.current === run) setRunning("");
    }
  }, []);
  const stop = useCallback(() => current.current?.stop(), []);
  return { running, problem, start, stop };
}
