import type { Host } from "../../hosts/host";

/** The host as the steps use it: tells the sheet of each cell that the pane itself goes to. */
export const tellingMoves = (host: Host, tell: (sheet: string) => void): Host =>
  new Proxy(host, {
    get(target, key) {
      const part = target[key as keyof Host];
      if (typeof part !== "function") return part;
      const work = part.bind(target) as (...given: unknown[]) => unknown;
      if (key !== "select") return work;
      return (...given: Parameters<Host["select"]>) => {
        tell(given[0].sheet);
        return work(...given);
      };
    },
  });
