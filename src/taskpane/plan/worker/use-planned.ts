import { useEffect, useRef, useState } from "react";
import type { LayoutEntries } from "../layout-entries";
import { planOf } from "../layout-plan";
import type { Planned } from "./messages";
import { type Planner, planner, wrongWith } from "./planner";

/** What is shown of the layout that is typed: the newest that could be calculated, and what is wrong with the newest. */
export interface PlannedState {
  planned: Planned | null;
  problem: { message: string; parameter: string } | null;
}

/** One planner for as long as the step is there. */
export function usePlanner(): Planner | null {
  const [made, setMade] = useState<Planner | null>(null);
  useEffect(() => {
    const one = planner();
    setMade(one);
    return () => one.close();
  }, []);
  return made;
}

/** Works the typed layout out at each change; while one is at work only the newest waits. */
export function usePlanned(plans: Planner | null, entries: LayoutEntries): PlannedState {
  const [state, setState] = useState<PlannedState>({ planned: null, problem: null });
  const next = useRef<LayoutEntries | null>(null);
  const busy = useRef(false);
  useEffect(() => {
    if (!plans) return;
    next.current = entries;
    const work = async () => {
      busy.current = true;
      while (next.current) {
        const asked = next.current;
        next.current = null;
        try {
          const planned = await plans.plan(planOf(asked));
          setState({ planned, problem: null });
        } catch (reason) {
          setState((before) => ({ ...before, problem: wrongWith(reason) }));
        }
      }
      busy.current = false;
    };
    if (!busy.current) void work();
  }, [plans, entries]);
  return state;
}
