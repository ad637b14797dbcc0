import { same, type TrialSheet } from "./trial-sheet";

export const FORMULA_CHECKS = {
  "formulas come back as typed": async ({ write, read, host, at }: TrialSheet) => {
    const typed = [[4], ["=A1*2"], ["=SUM(A1:A2)"], ["x"]];
    await write("A1:A4", typed);
    same(await read("A1:A4"), [[4], [8], [12], ["x"]]);
    same(await host.inputs(at("A1:A4")), typed);
  },
  "our own formulas come back as typed": async ({ write, read, host, at }: TrialSheet) => {
    await write("A1:A4", [[20], [30], [40], ["=CANFALL.SC.CAN(A1:A3)"]]);
    same(await read("A4"), [[1.5]]); // (20 + 30 + 40) / 3 / 20
    same(await host.inputs(at("A4")), [["=CANFALL.SC.CAN(A1:A3)"]]);
  },
  "a spilled function fills its cells exactly": async ({ write, read }: TrialSheet) => {
    await write("A1:A3", [[20], [25], [30]]);
    await write("B1", [["=CANFALL.DEPTH.CAUGHT(A1:A3,100)"]]);
    const mouthArea = Math.PI * 2500; // mm2: pi 100^2 / 4
    const depths = (await read("B1:B3")).flat();
    [20_000, 25_000, 30_000].forEach((volume, i) => {
      const depth = depths[i];
      const wanted = volume / mouthArea;
      if (typeof depth !== "number" || !(Math.abs(depth / wanted - 1) < 1e-15)) same(depth, wanted);
    });
  },
  "only the first cell of a spill holds an input": async ({ write, read, host, at }: TrialSheet) => {
    await write("A1:A3", [[20], [25], [30]]);
    await write("B1", [["=CANFALL.DEPTH.CAUGHT(A1:A3,100)"]]);
    await read("B1:B3");
    same(await host.inputs(at("A1:B3")), [
      [20, "=CANFALL.DEPTH.CAUGHT(A1:A3,100)"],
      [25, ""],
      [30, ""],
    ]);
  },
  "a blank can in a wrapped range is skipped": async ({ write, read }: TrialSheet) => {
    await write("A1:A5", [[20], [30], [""], [40], [30]]);
    await write("B1", [['=CANFALL.SC.CAN(IF(A1:A5="","x",A1:A5))']]);
    same(await read("B1"), [[1.5]]); // (20 + 30 + 40 + 30) / 4 / 20
  },
  "a wrong reading gives #VALUE! and says where": async ({ write, read }: TrialSheet) => {
    await write("A1:A4", [[20], [30], [40], ["12 ml"]]);
    await write("B1", [["=CANFALL.SC.CAN(A1:A4)"]]);
    const [[cell]] = (await read("B1")) as [[{ error: string; message?: string }]];
    same(cell.error, "#VALUE!");
    if (cell.message !== undefined) {
      same(cell.message, 'readings must be numbers, got "12 ml" in row 4, column 1');
    }
  },
  "an error among the readings gives #VALUE! and says where": async ({ write, read }: TrialSheet) => {
    await write("A1:A4", [[20], [30], [40], ["=NA()"]]);
    await write("B1", [["=CANFALL.SC.CAN(A1:A4)"]]);
    const [[cell]] = (await read("B1")) as [[{ error: string; message?: string }]];
    same(cell.error, "#VALUE!");
    if (cell.message !== undefined) same(cell.message, "readings must be numbers, got #N/A in row 4, column 1");
  },
  "a formula follows the cells that it reads": async ({ write, read }: TrialSheet) => {
    await write("A1:A4", [[20], [30], [40], ["=CANFALL.SC.CAN(A1:A3)"]]);
    await read("A4");
    await write("A1", [[10]]);
    await write("A2:A3", [[20], [30]]);
    same(await read("A4"), [[2]]); // (10 + 20 + 30) / 3 / 10
  },
};
