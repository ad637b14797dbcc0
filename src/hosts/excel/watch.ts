const GATHER_MS = 150;

/** Tells of changes once for all that come within 150 ms; while the pane is hidden not before it is seen again. */
export function gathered(changed: () => void): { tell(): void; stop(): void } {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let missed = false;
  const seen = () => {
    if (document.hidden || !missed) return;
    missed = false;
    changed();
  };
  document.addEventListener("visibilitychange", seen);
  return {
    tell() {
      waiting ??= setTimeout(() => {
        waiting = undefined;
        missed = true;
        seen();
      }, GATHER_MS);
    },
    stop() {
      clearTimeout(waiting);
      document.removeEventListener("visibilitychange", seen);
    },
  };
}

/** Calls back when the selection moves, a cell changes or a calculation ends; the answer stops that. */
export async function watch(context: Excel.RequestContext, changed: () => void): Promise<() => Promise<void>> {
  const { workbook } = context;
  const { tell, stop } = gathered(changed);
  const handler = async () => tell();
  const handlers = [
    workbook.onSelectionChanged.add(handler),
    workbook.worksheets.onChanged.add(handler),
    workbook.worksheets.onCalculated.add(handler),
  ];
  await context.sync();
  return async () => {
    stop();
    for (const one of handlers) one.remove();
    await context.sync();
  };
}
