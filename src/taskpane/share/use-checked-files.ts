import { useEffect, useRef, useState } from "react";
import type { CheckedFile } from "../../share/copy-report";
import { workbooksAmong } from "../parts/files/dropped-files";
import { words } from "../parts/task/words";
import { checkFiles } from "./check-files";
import { makeReady } from "./copy-tools";

/** Checks the workbooks among files one after the other, tells how far it is, and can be stopped. */
export function useCheckedFiles() {
  const [progress, setProgress] = useState("");
  const [problem, setProblem] = useState("");
  const stopped = useRef(false);

  useEffect(() => {
    let gone = false;
    makeReady(() => gone).catch(() => {}); // what did not load now is loaded when it is needed
    return () => {
      gone = true;
    };
  }, []);

  /** The files that were checked; null where there was none or reading failed. */
  async function check(given: readonly File[]): Promise<CheckedFile[] | null> {
    const files = workbooksAmong(given);
    setProblem(files.length === 0 ? "There is no .xlsx file among what was chosen" : "");
    if (files.length === 0) return null;
    stopped.current = false;
    try {
      const told = (done: number, name: string) => setProgress(`Checking ${done + 1} of ${files.length}: ${name} …`);
      return await checkFiles(files, told, () => stopped.current);
    } catch (reason) {
      setProblem(words(reason));
      return null;
    } finally {
      setProgress("");
    }
  }

  const stop = () => {
    stopped.current = true;
  };
  return { progress, problem, fail: setProblem, check, stop };
}
