import type { Ask, Said } from "./night-messages";
import { nightWork } from "./night-work";

/** Work that goes on beside the page. */
export interface Run {
  /** True once it came to its end, false where it was stopped. */
  finished: Promise<boolean>;
  stop(): void;
}

/** Has it done in a worker of its own, which a stop ends; where there are none, such as in a test, in the page. */
export function nightRun(ask: Ask, hear: (said: Said) => void): Run {
  return typeof Worker === "undefined" ? nearRun(ask, hear) : workerRun(ask, hear);
}

function workerRun(ask: Ask, hear: (said: Said) => void): Run {
  const worker = new Worker(new URL("./night-worker.ts", import.meta.url));
  let stop = () => {};
  const finished = new Promise<boolean>((settle, fail) => {
    const end = (whole: boolean) => {
      worker.terminate();
      settle(whole);
    };
    stop = () => end(false);
    worker.addEventListener("message", ({ data }: MessageEvent<Said>) => {
      if (data.kind === "failed") fail(new Error(data.message));
      else if (data.kind === "done") end(true);
      else hear(data);
    });
    worker.addEventListener("error", ({ message }) => fail(new Error(message)));
    worker.postMessage(ask);
  });
  return { finished, stop: () => stop() };
}

const pause = () => new Promise<void>((go) => setTimeout(go, 0));

function nearRun(ask: Ask, hear: (said: Said) => void): Run {
  let stopped = false;
  const run = async () => {
    for (const said of nightWork(ask)) {
      if (said.kind === "failed") throw new Error(said.message);
      if (said.kind === "done") return true;
      hear(said);
      await pause();
      if (stopped) return false;
    }
    return true;
  };
  return {
    finished: run(),
    stop: () => {
      stopped = true;
    },
  };
}
