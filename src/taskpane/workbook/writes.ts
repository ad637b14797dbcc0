import { reference } from "../../cells/box";
import type { Input } from "../../cells/cell";
import type { Host, Write } from "../../hosts/host";
import type { Filled } from "../../hosts/snapshot";
import type { Act } from "./act";

export type { Write };

/** What was typed, such that typing it again gives the same: text that a sheet could take for a number or date stays text. */
export const retypable = ({ cells, inputs }: Filled): Input[][] =>
  inputs!.map((line, row) =>
    line.map((input, column) => {
      const isText = typeof input === "string" && input !== "" && input === cells[row]![column];
      return isText ? `'${input}` : input;
    }),
  );

const areasOf = (writes: readonly Write[]) => writes.map(({ area }) => area);

async function typedIn(host: Host, writes: readonly Write[]): Promise<string> {
  const snapshot = await host.snapshot({ inputs: areasOf(writes) });
  return JSON.stringify(areasOf(writes).map((area) => snapshot.at(area)?.inputs));
}

/** Writes into one or several areas, all of them or none; `what` names the act, such as `entry`. */
export async function writeAll(host: Host, writes: readonly Write[], what: string): Promise<Act> {
  const snapshot = await host.snapshot({ inputs: areasOf(writes) });
  const before = areasOf(writes)
    .flatMap((area) => snapshot.at(area) ?? [])
    .map((filled): Write => ({ area: filled.area, inputs: retypable(filled) }))
    .reverse();
  const putBack = () => host.writeTogether(before);
  try {
    await host.writeTogether(writes);
  } catch (reason) {
    await putBack();
    throw reason;
  }
  const after = await typedIn(host, writes);
  const others = writes.length - 1;
  const ranges = others === 1 ? "1 other range" : `${others} other ranges`;
  const where = reference(writes[0]!.area) + (others > 0 ? ` and ${ranges}` : "");
  const [is, was] = writes.length > 1 ? ["are", "were"] : ["is", "was"];
  return {
    label: `${what} in ${where}`,
    taken: `${where} ${is} as before the ${what}`,
    doubt: `${where} ${was} changed after the ${what}. Put back what was there before it?`,
    untouched: async () => (await typedIn(host, writes)) === after,
    takeBack: putBack,
  };
}
