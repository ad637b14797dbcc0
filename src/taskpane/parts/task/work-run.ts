/** What ends a run of work, among what it says. */
type End = { kind: "done" } | { kind: "failed"; message: string };

/** Work that goes on beside the page. */
export interface Run {
  /** True once it came to its end, false where it was stopped. */
  finished: Promise<boolean>;
  stop(): void;
}

/** How work is done: in a worker of its own, or step by step in the page. */
export interface Work<Ask, Said> {
  worker: () => Worker;
  near: (ask: Ask) => Iterable<Said | End>;
}

/** Has work done in a worker, which a stop ends; where there are none, such as in a test, in the page. */
export function workRun<Ask, Said extends { kind: string }>(
  work: Work<Ask, Said>,
  ask: Ask,
  hear: (said: Said) => void,
): Run {
  return typeof Worker === "undefined" ? nearRun(work, ask, hear) : workerRun(work, ask, hear);
}

const isEnd = (said: { kind: string }): said is End => said.kind === "done" || said.kind === "failed";

function workerRun<Ask, Said extends { kind: string }>(
  work: Work<Ask, Said>,
  ask: Ask,
  hear: (said: Said) => void,
): Run {
  const worker = work.worker();
  let stop = () => {};
  const finished = new Promise<boolean>((settle, fail) => {
    const end = (whole: boolean) => {
      worker.terminate();
      settle(whole);
    };
    stop = () => end(false);
    worker.addEventListener("message", ({ data }: MessageEvent<Said | End>) => {
      if (!isEnd(data)) hear(data);
      else if (data.kind === "done") end(true);
      else fail(new Error(data.message));
    });
    worker.addEventListener("error", ({ message }) => fail(new Error(message)));
    worker.postMessage(ask);
  });
  return { finished, stop: () => stop() };
}

const pause = () => new Promise<void>((go) => setTimeout(go, 0));

function nearRun<Ask, Said extends { kind: string }>(work: Work<Ask, Said>, ask: Ask, hear: (said: Said) => void): Run {
  let stopped = false;
  const run = async () => {
    for (const said of work.near(ask)) {
      if (stopped) return false;
      if (!isEnd(said)) hear(said);
      else if (said.kind === "failed") throw new Error(said.message);
      else return true;
      await pause();
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
