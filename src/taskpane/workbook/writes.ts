import type { Area } from "../../cells/area";
import { reference } from "../../cells/box";
import type { Input } from "../../cells/cell";
import type { Host } from "../../hosts/host";
import type { Act } from "./act";

/** What is to be in an area. */
export interface Write {
  area: Area;
  inputs: Input[][];
}

/** What was typed, such that typing it again gives the same: text that a sheet could take for a number or date stays text. */
export async function retypable(host: Host, area: Area): Promise<Input[][]> {
  const [typed, shown] = await Promise.all([host.inputs(area), host.read(area)]);
  return typed.map((line, row) =>
    line.map((input, column) => {
      const isText = typeof input === "string" && input !== "" && input === shown[row]![column];
      return isText ? `'${input}` : input;
    }),
  );
}

async function putBack(host: Host, before: Write[]): Promise<void> {
  for (const { area, inputs } of [...before].reverse()) await host.write(area, inputs);
}

async function typedIn(host: Host, writes: Write[]): Promise<string> {
  const all = [];
  for (const { area } of writes) all.push(await host.inputs(area));
  return JSON.stringify(all);
}

/** Writes into one or several areas, all of them or none; `what` names the act, such as `entry`. */
export async function writeAll(host: Host, writes: Write[], what: string): Promise<Act> {
  const before: Write[] = [];
  try {
    for (const { area, inputs } of writes) {
      before.push({ area, inputs: await retypable(host, area) });
      await host.write(area, inputs);
    }
  } catch (reason) {
    await putBack(host, before);
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
    takeBack: () => putBack(host, before),
  };
}
