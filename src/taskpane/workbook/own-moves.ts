import type { Host } from "../../hosts/host";

/** What the pane itself did last. */
export interface OwnMoves {
  /** The sheet that it went to. */
  sheet: string;
  /** Whether it opened another workbook. */
  opened: boolean;
}

/** The host as the steps use it: notes where the pane itself goes, and that it opens another workbook. */
export function notingMoves(host: Host, moves: OwnMoves): Host {
  const noted: Pick<Host, "select" | "openBook"> = {
    select(area, ...rest) {
      moves.sheet = area.sheet;
      return host.select(area, ...rest);
    },
    async openBook(file, name) {
      moves.opened = true;
      const opened = await host.openBook(file, name).catch((reason) => {
        moves.opened = false;
        throw reason;
      });
      if (!opened) moves.opened = false;
      return opened;
    },
  };
  return new Proxy(host, {
    get(target, key) {
      if (key in noted) return noted[key as keyof typeof noted];
      const part = target[key as keyof Host];
      return typeof part === "function" ? part.bind(target) : part;
    },
  });
}
