import type { Host } from "../../hosts/host";
import type { Act } from "../workbook/act";

async function typedOn(host: Host, sheets: string[]): Promise<string> {
  const all: unknown[] = [];
  for (const sheet of sheets) {
    const area = await host.used(sheet);
    all.push(area, area && (await host.inputs(area)));
  }
  return JSON.stringify(all);
}

/** Sheets that were added, and in a sentence what of them did not come, or "". */
export interface AddedSheets {
  done: Act;
  leftOut: string;
}

/** Adds the sheets of a file to the workbook, and lets `fill` type into them; taken back by removing them. */
export async function addSheets(
  host: Host,
  file: Uint8Array,
  fill: () => Promise<void> = async () => {},
): Promise<AddedSheets> {
  const before = await host.sheets();
  const leftOut = await host.insertSheets(file);
  await fill();
  const added = (await host.sheets()).filter((name) => !before.includes(name));
  const after = await typedOn(host, added);
  const done: Act = {
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
  return { done, leftOut };
}
