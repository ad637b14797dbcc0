import { same, type TrialSheet } from "./trial-sheet";

const NUMBERS = [0.1 + 0.2, 1 / 3, -1234567.890123456, 1e-9, 123456789012345, 0];

export const VALUE_CHECKS = {
  "numbers come back to the last digit": async ({ write, read }: TrialSheet) => {
    await write("A1:F1", [NUMBERS]);
    same(await read("A1:F1"), [NUMBERS]);
  },
  "text comes back as text": async ({ write, read }: TrialSheet) => {
    await write("A1:B1", [["x", "12 ml"]]);
    same(await read("A1:B1"), [["x", "12 ml"]]);
  },
  "TRUE and FALSE come back as such": async ({ write, read }: TrialSheet) => {
    await write("A1:B1", [[true, false]]);
    same(await read("A1:B1"), [[true, false]]);
  },
  "a cell that was never filled is null": async ({ write, read }: TrialSheet) => {
    await write("A1", [[1]]);
    same(await read("A1:B2"), [
      [1, null],
      [null, null],
    ]);
  },
  "an empty text empties a cell": async ({ write, read, host, at }: TrialSheet) => {
    await write("A1:B1", [[1, 2]]);
    await write("A1", [[""]]);
    same(await read("A1:B1"), [[null, 2]]);
    same(await host.inputs(at("A1:B1")), [["", 2]]);
  },
  "several areas are written in one go": async ({ read, host, at }: TrialSheet) => {
    await host.writeTogether([
      { area: at("A1:B1"), inputs: [[1, 2]] },
      { area: at("C3"), inputs: [["x"]] },
    ]);
    same(await read("A1:C1"), [[1, 2, null]]);
    same(await read("C3"), [["x"]]);
  },
  "what the pane keeps is written as values": async ({ read, host, at }: TrialSheet) => {
    await host.writeKept([{ area: at("B2:C2"), inputs: [["kept", 3]] }]);
    same(await read("B2:C2"), [["kept", 3]]);
  },
  "a formula may give an empty text": async ({ write, read }: TrialSheet) => {
    await write("A1", [['=""']]);
    same(await read("A1"), [[""]]);
  },
  "an error in a cell comes back by its name": async ({ write, read }: TrialSheet) => {
    await write("A1", [["=1/0"]]);
    const [[cell]] = (await read("A1")) as [[{ error: string }]];
    same(cell.error, "#DIV/0!");
  },
};
