import { InputError } from "../../../core/errors";
import type { Plan } from "../../../core/layout/coverage";
import type { SearchInput } from "../../../core/layout/search/input";
import { words } from "../../parts/task/words";
import type { Ask, Found, Planned, Said } from "./messages";
import { PlanService } from "./service";

/** What was wrong with an asking; `parameter` names the quantity. */
export class PlanError extends Error {
  constructor(
    message: string,
    readonly parameter: string,
  ) {
    super(message);
  }
}

/** Works layouts out beside the page. */
export interface Planner {
  plan(plan: Plan): Promise<Planned>;
  search(input: SearchInput, progress: (tried: number, total: number) => void): { found: Promise<Found>; stop(): void };
  close(): void;
}

interface Waiting {
  settle(said: Said): void;
  fail(reason: PlanError): void;
  progress?: (tried: number, total: number) => void;
}

/** A planner over whatever carries messages. */
function plannerOver(send: (ask: Ask) => void, close: () => void): Planner & { hear(said: Said): void } {
  const waiting = new Map<number, Waiting>();
  let last = 0;
  const ask = (make: (id: number) => Ask, progress?: Waiting["progress"]) => {
    const id = ++last;
    const said = new Promise<Said>((settle, fail) => waiting.set(id, { settle, fail, ...(progress && { progress }) }));
    send(make(id));
    return { id, said };
  };
  return {
    hear(said) {
      const one = waiting.get(said.id);
      if (said.kind === "progress") {
        one?.progress?.(said.tried, said.total);
        return;
      }
      waiting.delete(said.id);
      if (said.kind === "failed") one?.fail(new PlanError(said.message, said.parameter));
      else one?.settle(said);
    },
    async plan(plan) {
      const said = await ask((id) => ({ id, kind: "plan", plan })).said;
      return (said as Said & { kind: "planned" }).planned;
    },
    search(input, progress) {
      const { id, said } = ask((number) => ({ id: number, kind: "search", input }), progress);
      return {
        found: said.then((one) => (one as Said & { kind: "found" }).found),
        stop: () => send({ id, kind: "stop" }),
      };
    },
    close,
  };
}

/** A planner in a worker thread; where there are none, such as in a test, in the page's own. */
export function planner(): Planner {
  if (typeof Worker === "undefined") {
    const service: PlanService = new PlanService((said) => near.hear(said));
    const near = plannerOver(
      (ask) => void service.answer(ask),
      () => {},
    );
    return near;
  }
  const worker = new Worker(new URL("./worker.ts", import.meta.url));
  const far = plannerOver(
    (ask) => worker.postMessage(ask),
    () => worker.terminate(),
  );
  worker.addEventListener("message", ({ data }: MessageEvent<Said>) => far.hear(data));
  return far;
}

/** The words and the quantity of what is wrong with a layout, wherever it was found. */
export function wrongWith(reason: unknown): { message: string; parameter: string } {
  if (reason instanceof InputError || reason instanceof PlanError) {
    return { message: reason.message, parameter: reason.parameter };
  }
  return { message: words(reason), parameter: "" };
}
