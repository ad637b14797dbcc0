/**
 * Runs `work` one at a time; what is asked for during a run is done once, after it.
 * An answer reaches `show` only when nothing newer was asked for meanwhile.
 */
export function latest<T>(work: () => Promise<T>, show: (answer: T) => void, fail: (reason: unknown) => void) {
  let running = false;
  let again = false;
  let stopped = false;
  async function run(): Promise<void> {
    running = true;
    do {
      again = false;
      try {
        const answer = await work();
        if (!again && !stopped) show(answer);
      } catch (reason) {
        if (!again && !stopped) fail(reason);
      }
    } while (again && !stopped);
    running = false;
  }
  return {
    ask(): void {
      if (running) again = true;
      else void run();
    },
    stop(): void {
      stopped = true;
    },
  };
}
