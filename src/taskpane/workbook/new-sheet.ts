import type { Host } from "../../hosts/host";
import type { Act } from "./act";

/** A sheet that was added and filled, as an act that can be taken back. */
export function newSheet(host: Host, sheet: string, address: string, filled: string): Act {
  const now = async () => JSON.stringify(await host.inputs({ sheet, address }));
  return {
    label: `new sheet ${sheet}`,
    taken: `The sheet ${sheet} is taken out`,
    doubt: `The sheet ${sheet} was changed since. Take it out all the same?`,
    untouched: async () => (await host.sheets()).includes(sheet) && (await now()) === filled,
    takeBack: () => host.removeSheet(sheet),
  };
}
