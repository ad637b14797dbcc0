import type {} from "@univerjs/preset-sheets-conditional-formatting";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Desk, type Desks, desks } from "./desk-page";
import { offerServices } from "./grid-services";

declare global {
  interface Window {
    /** The grid's own service that has a member of this name. */
    service: <T>(member: string) => T;
  }
}

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.open();
  await offerServices(desk);
}, 300_000);
afterAll(() => all?.close());

describe("fixes of the grid that spare it work", { timeout: 120_000 }, () => {
  test("formula-cache: two formulas of one sum over their letters have their own values", async () => {
    const same = (word: string) => `="${"a can that was not read, ".repeat(3)}"&"${word}"`;
    const words = ["wflhdqb", "oximobj"]; // found by trying: the grid's sum is one for both
    await desk.write(
      "P1:P2",
      words.map((word) => [same(word)]),
    );
    const texts = (await desk.read("P1:P2")).flat() as string[];
    expect(texts.map((text) => text.slice(-7))).toEqual(words);
    await desk.write("P1:P2", [[""], [""]]);
  });

  test("dependencies: what a formula reads is noted once, however often it is calculated", async () => {
    const noted = () =>
      desk.page.evaluate(() => {
        type Tree = Map<string, Map<string, { all(): unknown[] }>>;
        const { _dependencyRTreeCache } = window.service<{ _dependencyRTreeCache: { _tree: Tree } }>(
          "_dependencyRTreeCache",
        );
        const trees = [..._dependencyRTreeCache._tree.values()].flatMap((sheets) => [...sheets.values()]);
        return trees.reduce((sum, tree) => sum + tree.all().length, 0);
      });
    const [[reading]] = (await desk.read("B2")) as [[number]];
    const before = await noted();
    expect(before).toBeGreaterThan(0);
    for (const more of [1, 2, 0]) {
      await desk.write("B2", reading + more);
      await desk.read("B2");
    }
    expect(await noted()).toBe(before);
  });

  test("parsed-formulas: which cells a formula reads is looked for once, not with each entry", async () => {
    const [[reading]] = (await desk.read("B2")) as [[number]];
    await desk.page.evaluate(() => {
      type Looking = { _nodeTraversalRef(...given: unknown[]): void };
      const looking = window.service<Looking>("_nodeTraversalRef");
      const { _nodeTraversalRef } = looking;
      Object.assign(window, { looks: 0 });
      looking._nodeTraversalRef = function (...given) {
        (window as unknown as { looks: number }).looks += 1;
        _nodeTraversalRef.apply(this, given);
      };
    });
    const looks = async (value: number) => {
      const before = await desk.page.evaluate(() => (window as unknown as { looks: number }).looks);
      await desk.write("B2", value);
      await desk.read("B2");
      return (await desk.page.evaluate(() => (window as unknown as { looks: number }).looks)) - before;
    };
    await looks(reading + 1);
    expect(await looks(reading)).toBe(0);
  });

  test("shades: a conditional format adds no formula to those that follow a changed cell", async () => {
    const [before, after] = await desk.page.evaluate(async () => {
      const { api } = window.desk.grid;
      const sheet = api.getActiveWorkbook()!.getSheetByName("Example")!;
      const at = { sheet: "Example", address: "B2" };
      const [[reading]] = (await window.desk.host.read(at)) as [[number]];
      async function followers(): Promise<number> {
        let least = Number.POSITIVE_INFINITY;
        let most = 0;
        const listening = api.onCommandExecuted(({ id, params }) => {
          if (id !== "formula.mutation.set-formula-calculation-notification") return;
          const { stageInfo } = params as { stageInfo?: { totalFormulasToCalculate: number } };
          most = Math.max(most, stageInfo?.totalFormulasToCalculate ?? 0);
        });
        for (const value of [reading + 1, reading + 2, reading + 3, reading]) {
          most = 0;
          await window.desk.host.write(at, [[value]]);
          await window.desk.settled();
          least = Math.min(least, most);
        }
        listening.dispose();
        return least;
      }
      const bare = await followers();
      const rule = sheet.newConditionalFormattingRule().whenFormulaSatisfied("=$B2>99");
      sheet.addConditionalFormattingRule(
        rule
          .setRanges([sheet.getRange("Q1:X50").getRange()])
          .setBackground("#ffff00")
          .build(),
      );
      await window.desk.settled();
      const shaded = await followers();
      sheet.clearConditionalFormatRules();
      return [bare, shaded];
    });
    expect(before).toBeGreaterThan(0);
    expect(after).toBe(before);
  });

  test("drawing: a cell is made ready once to be drawn", async () => {
    const times = await desk.page.evaluate(async () => {
      const sheet = window.desk.grid.api.getActiveWorkbook()!.getActiveSheet();
      type View = { getCell(row: number, column: number, ...more: unknown[]): unknown };
      const { _viewModel: view } = sheet.getSheet() as unknown as { _viewModel: View };
      const { getCell } = view;
      const ofFrames = [0];
      view.getCell = function (row, column, ...more) {
        if (row === 4 && column === 1) ofFrames[ofFrames.length - 1]! += 1;
        return getCell.call(this, row, column, ...more);
      };
      // on a busy machine a frame may come before the grid knows that it is to draw
      while (ofFrames.filter((times) => times > 0).length < 5) {
        ofFrames.push(0);
        sheet.refreshCanvas();
        await new Promise(requestAnimationFrame);
      }
      view.getCell = getCell;
      return Math.max(...ofFrames);
    });
    expect(times).toBeGreaterThan(0);
    expect(times).toBeLessThan(4); // the others of a frame only measure
  });

  test("closed-books: cells of a workbook that was closed are not checked", async () => {
    const found = await desk.page.evaluate(() => {
      type Checks = { validatorRanges(unit: string, sheet: string, ranges: object[]): Promise<unknown[]> };
      const range = { startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 };
      return window.service<Checks>("validatorRanges").validatorRanges("closed", "sheet", [range]);
    });
    expect(found).toEqual([]);
  });
});
