import { expect, it } from "vitest";
import { latest } from "../../src/taskpane/workbook/latest";

const turn = () => new Promise((resolve) => setTimeout(resolve));

it("shows only the newest answer, and asks once for what changed meanwhile", async () => {
  const waiting: (() => void)[] = [];
  const shown: number[] = [];
  let runs = 0;
  const line = latest(
    () =>
      new Promise<number>((resolve) =>
        waiting.push(
          (
            (run) => () =>
              resolve(run)
          )(++runs),
        ),
      ),
    (answer) => shown.push(answer),
    () => {},
  );
  line.ask();
  line.ask();
  line.ask();
  waiting[0]!();
  await turn();
  expect(shown).toEqual([]);
  waiting[1]!();
  await turn();
  expect(shown).toEqual([2]);
  expect(runs).toBe(2);
});

it("shows nothing after the end", async () => {
  const shown: string[] = [];
  const line = latest(
    async () => "late",
    (answer) => shown.push(answer),
    () => {},
  );
  line.ask();
  line.stop();
  await turn();
  expect(shown).toEqual([]);
});

it("goes on after a failure", async () => {
  const told: unknown[] = [];
  let fails = true;
  const line = latest(
    async () => {
      if (fails) throw new Error("no sheet");
      return "well";
    },
    (answer) => told.push(answer),
    (reason) => told.push((reason as Error).message),
  );
  line.ask();
  await turn();
  fails = false;
  line.ask();
  await turn();
  expect(told).toEqual(["no sheet", "well"]);
});
