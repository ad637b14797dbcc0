import { useCallback, useEffect, useRef, useState } from "react";
import { words } from "../../parts/task/words";
import { type Run, workRun } from "../../parts/task/work-run";
import type { Ask, Said } from "./bed-messages";
import { BED_WORK } from "./bed-run";

type Heard<K extends Said["kind"]> = Extract<Said, { kind: K }>;

/** What was read from a bed so far. */
export interface BedReading {
  cause?: Heard<"cause">;
  interval?: Heard<"interval"> | Heard<"no interval">;
  redrawn?: Heard<"redrawn">;
  problem: string;
  running: boolean;
  /** The bed that it was read from, as text; null: none. */
  of: string | null;
}

/** A bed that somebody is typing into is not read yet: the fits would take the machine from the typist. */
const STILL_MS = 1000;

const NOTHING: BedReading = { problem: "", running: false, of: null };

function heard(before: BedReading, said: Said): BedReading {
  if (said.kind === "cause") return { ...before, cause: said };
  if (said.kind === "redrawn") return { ...before, redrawn: said };
  if (said.kind === "interval" || said.kind === "no interval") return { ...before, interval: said };
  return before;
}

/**
 * Reads a bed beside the page whenever it is another one; `ask` null: there is none to read. `settled`: cause and interval of
 * this very bed were read, or cannot be.
 */
export function useBedReading(ask: Ask | null): { reading: BedReading; settled: boolean; stop: () => void } {
  const [reading, setReading] = useState(NOTHING);
  const current = useRef<Run | null>(null);
  const key = ask && JSON.stringify(ask);
  useEffect(() => {
    if (key === null) {
      setReading(NOTHING);
      return;
    }
    setReading({ problem: "", running: true, of: key });
    const start = () => {
      const run = workRun<Ask, Said>(BED_WORK, JSON.parse(key) as Ask, (said) =>
        setReading((before) => heard(before, said)),
      );
      current.current = run;
      const end = (problem: string) => {
        if (current.current === run) setReading((before) => ({ ...before, running: false, problem }));
      };
      run.finished.then(
        () => end(""),
        (reason) => end(words(reason)),
      );
    };
    const waiting = setTimeout(start, STILL_MS);
    return () => {
      clearTimeout(waiting);
      current.current?.stop();
      current.current = null;
    };
  }, [key]);
  const stop = useCallback(() => current.current?.stop(), []);
  const settled = reading.of === key && (key === null || reading.interval !== undefined || !reading.running);
  return { reading, settled, stop };
}
