import type { Host } from "../hosts/host";
import type { Done } from "./done";

async function typedOn(host: Host, sheets: string[]): Promise<string> {
  const all: unknown[] = [];
  for (const sheet of sheets) {
    const area = await host.used(sheet);
    all.push(area, area && (await host.inputs(area)));
  }
  return JSON.stringify(all);
}

/** Adds the sheets of a file to the workbook; taken back by removing them. */
export async function addSheets(host: Host, file: Uint8Array): Promise<Done> {
  const before = await host.sheets();
  await host.insertSheets(file);
  const added = (await host.sheets()).filter((name) => !before.includes(name));
  const after = await typedOn(host, added);
  return {
    label: `${added.length} new sheets, ${added[0]} to ${added.at(-1)}`,
    taken: `The ${added.length} new sheets are gone; the others are as they were`,
    doubt: `Something was typed on the ${added.length} new sheets since. Remove them all the same?`,
    yes: "Remove",
    untouched: async () => (await typedOn(host, added)) === after,
    takeBack: async () => {
      const there = await host.sheets();
      for (const sheet of added.filter((name) => there.includes(name))) await host.removeSheet(sheet);
    },
  };
}
