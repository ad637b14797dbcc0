import { same, type TrialSheet } from "./trial-sheet";

const NOWHERE = { sheet: "Canfall no such sheet", address: "A1" };

export const SNAPSHOT_CHECKS = {
  "a snapshot holds values and what was typed": async ({ write, read, host, at }: TrialSheet) => {
    await write("A1:B2", [
      [21, "x"],
      ["=A1*2", ""],
    ]);
    await read("A2");
    const [whole, one] = [at("A1:B2"), at("A2")];
    const snapshot = await host.snapshot({ areas: [one], inputs: [whole] });
    same(snapshot.at(one), { area: one, cells: [[42]], inputs: null });
    same(snapshot.at(whole), {
      area: whole,
      cells: [
        [21, "x"],
        [42, null],
      ],
      inputs: [
        [21, "x"],
        ["=A1*2", ""],
      ],
    });
  },
  "a snapshot holds the selection, cut to the used part": async ({ write, host, at }: TrialSheet) => {
    await write("A1:A3", [[1], [2], [3]]);
    await host.select(at("A:A"));
    same((await host.snapshot({})).seen.selection, { area: at("A1:A3"), cells: [[1], [2], [3]], inputs: null });
    await host.select(at("C9"));
    same((await host.snapshot({})).seen.selection, { area: at("C9"), cells: [[null]], inputs: null });
  },
  "in a snapshot only the first cell of a spill holds an input": async ({ write, read, host, at }: TrialSheet) => {
    await write("A1:A3", [[20], [25], [30]]);
    await write("B1", [["=CANFALL.DEPTH.CAUGHT(A1:A3,100)"]]);
    await read("B1:B3");
    const snapshot = await host.snapshot({ inputs: [at("A1:B3")] });
    same(snapshot.at(at("A1:B3"))!.inputs, [
      [20, "=CANFALL.DEPTH.CAUGHT(A1:A3,100)"],
      [25, ""],
      [30, ""],
    ]);
  },
  "a snapshot knows the sheets, and what is not there": async ({ host, sheet }: TrialSheet) => {
    const snapshot = await host.snapshot({ names: ["Canfall_no_such_name"], areas: [NOWHERE] });
    same(snapshot.seen.sheets, await host.sheets());
    same(snapshot.sheet(sheet.toUpperCase()), sheet);
    same(snapshot.named("Canfall_no_such_name"), null);
    same(snapshot.at(NOWHERE), null);
  },
  "a snapshot says that nothing is calculating once all is calculated": async ({ write, read, host }: TrialSheet) => {
    await write("A1:A3", [[20], [30], ["=CANFALL.SC.CAN(A1:A2)"]]);
    await read("A3");
    same((await host.snapshot({})).seen.calculating, false);
  },
  "a snapshot goes past the edge of what is filled": async ({ host, at }: TrialSheet) => {
    const far = at("C70000:D70000");
    const filled = { area: far, cells: [[null, null]], inputs: [["", ""]] };
    same((await host.snapshot({ inputs: [far] })).at(far), filled);
  },
};
