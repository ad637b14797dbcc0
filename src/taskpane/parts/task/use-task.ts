import { useCallback, useState } from "react";
import type { Question } from "./question";
import { words } from "./words";

const NOTHING = { busy: "", message: "", problem: "", question: null as Question | null };

/** Work that a person started: what is being done, what came of it, or what it asks first. */
export function useTask() {
  const [state, setState] = useState(NOTHING);
  const clear = useCallback(() => setState(NOTHING), []);
  const attempt = useCallback(async (doing: string, work: () => Promise<string | Question>): Promise<void> => {
    setState({ ...NOTHING, busy: doing });
    try {
      const said = await work();
      setState(typeof said === "string" ? { ...NOTHING, message: said } : { ...NOTHING, question: said });
    } catch (reason) {
      setState({ ...NOTHING, problem: words(reason) });
    }
  }, []);
  return { ...state, attempt, clear };
}

export type Task = ReturnType<typeof useTask>;
