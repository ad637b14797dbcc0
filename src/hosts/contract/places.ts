import { pause } from "../pause";
import { onTrialSheet, same, type TrialSheet } from "./trial-sheet";

const QUOTED_SHEET = "Canfall's self-test";

async function within(milliseconds: number, done: () => boolean, otherwise: string): Promise<void> {
  const end = Date.now() + milliseconds;
  while (!done()) {
    if (Date.now() > end) throw new Error(otherwise);
    await pause(20);
  }
}

export const PLACE_CHECKS = {
  "the selection is what was selected": async ({ write, host, at }: TrialSheet) => {
    await write("A1:B3", [
      [1, 2],
      [3, 4],
      [5, 6],
    ]);
    await host.select(at("A2:B3"));
    same(await host.selection(), at("A2:B3"));
    await host.select(at("B1"));
    same(await host.selection(), at("B1"));
  },
  "a selected column is cut to the used part": async ({ write, host, at }: TrialSheet) => {
    await write("A1:A3", [[1], [2], [3]]);
    await host.select(at("A:A"));
    same(await host.selection(), at("A1:A3"));
  },
  "a change is told, and no longer after the end": async ({ write, read, host }: TrialSheet) => {
    let calls = 0;
    const stop = await host.watch(() => {
      calls += 1;
    });
    await write("A1", [[1]]);
    await within(5000, () => calls > 0, "no call within 5 s of a change");
    await stop();
    const before = calls;
    await write("A1", [[2]]);
    await read("A1");
    await pause(300);
    same(calls, before);
  },
  "a moved selection is told": async ({ host, at }: TrialSheet) => {
    await host.select(at("A1"));
    let calls = 0;
    const stop = await host.watch(() => {
      calls += 1;
    });
    try {
      await host.select(at("B2"));
      await within(5000, () => calls > 0, "no call within 5 s of a new selection");
    } finally {
      await stop();
    }
  },
  "the used part of a sheet is what is around all that it holds": async ({ write, host, sheet, at }: TrialSheet) => {
    same(await host.used(sheet), null);
    await write("B3", [["x"]]);
    await write("D2", [[1]]);
    same(await host.used(sheet), at("B2:D3"));
  },
  "a name that nobody defined is null": async ({ host }: TrialSheet) => {
    same(await host.named("Canfall_no_such_name"), null);
  },
  "a defined name leads to a sheet that exists": async ({ host }: TrialSheet) => {
    const area = await host.named("Cans_Readings");
    if (area) same((await host.sheets()).includes(area.sheet), true);
  },
  "a sheet's name may hold quotes and spaces": ({ host }: TrialSheet) =>
    onTrialSheet(host, QUOTED_SHEET, async ({ sheet, write, read, at }) => {
      same((await host.sheets()).includes(sheet), true);
      await write("A1:A2", [[21], ["='Canfall''s self-test'!A1*2"]]);
      same(await read("A1:A2"), [[21], [42]]);
      await host.select(at("A1:A2"));
      same(await host.selection(), at("A1:A2"));
    }),
};
