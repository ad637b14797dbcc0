/** How long a person waits before being told why [ms]. */
const SLOW_MS = 5000;

/** Refusals whose own words say nothing to a person, by Excel's code. */
const WORDS: Record<string, string> = {
  InvalidOperationInCellEditMode: "A cell of the workbook is being typed in: press Enter there, then do this again",
  RequestPayloadSizeLimitExceeded: "Excel takes at most 5 MB at once, and this is more",
  ResponsePayloadSizeLimitExceeded: "Excel hands over at most 5 MB at once: select fewer cells, the readings only",
};

/** A refusal in words that say what to do. */
export function inWords(reason: unknown): unknown {
  if (!(reason instanceof OfficeExtension.Error)) return reason;
  const words = WORDS[reason.code];
  return words ? new Error(words, { cause: reason }) : reason;
}

/** What is asked of Excel, and who is told when it does not answer. */
export function requests(slowAfter = SLOW_MS) {
  const listeners = new Set<(waiting: boolean) => void>();
  let late = 0;
  const tell = (change: 1 | -1) => {
    late += change;
    for (const listener of listeners) listener(late > 0);
  };
  return {
    /** Waits while a person is typing in a cell, where Excel would refuse. */
    async run<T>(batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
      let isLate = false;
      const timer = setTimeout(() => {
        isLate = true;
        tell(1);
      }, slowAfter);
      try {
        return await Excel.run({ delayForCellEdit: true }, batch);
      } catch (reason) {
        throw inWords(reason);
      } finally {
        clearTimeout(timer);
        if (isLate) tell(-1);
      }
    },
    slow(listener: (waiting: boolean) => void): () => void {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
