import type {} from "@univerjs/preset-sheets-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startAt } from "./by-hand";
import { type Desk, type Desks, desks } from "./desk-page";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.open();
}, 300_000);
afterAll(() => all?.close());

const cell = async (formula: string) => {
  await desk.write("N5", formula);
  return (await desk.read("N5"))[0]![0];
};
const said = () => desk.page.textContent("#figures");

describe("fixes of the grid", { timeout: 120_000 }, () => {
  test("every part of the grid that a fix needs is there", async () => {
    expect(await desk.page.textContent("#unmended")).toBe("");
  });

  test("failures: a formula that can't be read is an error in its cell, and calculation goes on", async () => {
    const message = "the formula could not be read: look at its names, commas and brackets";
    expect(await cell("=LET(f,LAMBDA(f,f(f)),f(f))")).toEqual({ error: "#VALUE!", message });
    expect(await cell("=1+1")).toBe(2);
  });

  test("endless: a formula that asks for too many cells says so", async () => {
    const message = "the formula asks for 9,000,000 cells, at most 2,000,000 are calculated";
    expect(await cell("=MAKEARRAY(3000,3000,LAMBDA(r,c,r))")).toEqual({ error: "#VALUE!", message });
    const letters = "REPT asks for 1,000,000,000 repeats, a cell holds at most 32,767 letters";
    expect(await cell('=REPT("x",1000000000)')).toEqual({ error: "#VALUE!", message: letters });
    const pairs = /^COUNTIF would compare [\d,]+ pairs of cells, at most 5,000,000 are compared$/;
    expect(await cell("=COUNTIF(A:XFD,A:XFD)")).toEqual({ error: "#VALUE!", message: expect.stringMatching(pairs) });
    const loops = "BINOM.INV would count to 1,000,000,000, at most to 10,000,000 is counted";
    expect(await cell("=BINOM.INV(1000000000,0.5,0.3)")).toEqual({ error: "#VALUE!", message: loops });
    const text = "the formula makes a text of 262,136 letters, a cell holds at most 32,767"; // 8 · 32,767
    const doubled = '=LET(a,REPT("x",32767),b,CONCATENATE(a,a,a,a,a,a,a,a),LEN(b&b))';
    expect(await cell(doubled)).toEqual({ error: "#VALUE!", message: text });
  });

  test("whole-ranges: a range past the sheet's end is read as far as the sheet goes", async () => {
    const readings = (await desk.read("B2:B26")).flat() as number[];
    const sum = readings.reduce((total, one) => total + one, 0);
    expect(await cell("=SUM(B2:B100000)")).toBe(sum);
    expect(await cell("=SUM(OFFSET(B2,0,0,1048575,1))")).toBe(sum);
    const counting = "ROWS can count cells only as far as the sheet goes here";
    expect(await cell("=ROWS(A1:A100000)")).toEqual({ error: "#VALUE!", message: counting });
  });

  test("circles: formulas in a circle are named until one of them is changed", async () => {
    await desk.write("P1:P2", [["=P2+1"], ["=P1+1"]]);
    await expect.poll(said).toMatch(/^Formulas refer to each other in a circle: Example!P[12], Example!P[12]\./);
    await desk.write("P1", 5);
    expect(await desk.read("P2")).toEqual([[6]]);
    await expect.poll(said).toBe("");
    await desk.write("P1", "=P1");
    await expect.poll(said).toMatch(/^Example!P1 refers to itself/);
    await desk.write("P1", "");
    await expect.poll(said).toBe("");
  });

  test("whole-ranges: a range over the whole sheet answers at once", async () => {
    await desk.write("P1:P3", [["=SUM(OFFSET(R1,0,0,1048576,16367))"], ["=CANFALL.SC.CAN(A1:ZZ100000)"], ["=1+1"]]);
    const before = Date.now();
    const [sum, coefficient, two] = (await desk.read("P1:P3")).flat();
    const time = Date.now() - before;
    expect([sum, coefficient, two]).toEqual([0, { error: "#VALUE!", message: expect.any(String) }, 2]);
    expect(time).toBeLessThan(2000);
    await desk.write("P1:P3", [[""], [""], [""]]);
  });

  test("range-ends: a formula whose range ends where another cell says sees that cell as it is now", async () => {
    const readings = (await desk.read("B2:B26")).flat() as number[];
    const sum = (count: number) => readings.slice(0, count).reduce((total, one) => total + one, 0);
    await desk.write("P1:P4", [[1], ["=P1+1"], ["=SUM(B2:INDEX(B2:B26,P2))"], ["=P2*10"]]);
    for (const count of [2, 3, 7, 4, 20, 5]) {
      await desk.write("P1", count - 1);
      expect(await desk.read("P3:P4")).toEqual([[sum(count)], [10 * count]]);
    }
    await desk.write("P1:P4", [[""], [""], [""], [""]]);
  });

  test("empty-texts: a text without letters is a text in the formulas that follow it", async () => {
    await desk.write("P1:P3", [['=IF(B2>0,"","x")'], ["=ISTEXT(P1)"], ["=COUNTA(P1)"]]);
    expect((await desk.read("P2:P3")).flat()).toEqual([true, 1]);
  });

  test("shown-numbers: the text of a number is its digits, whatever its cell shows", async () => {
    await desk.page.evaluate(async () => {
      await window.desk.write("Example", "P1:P2", [[5], [46024]]);
      const sheet = window.desk.grid.api.getActiveWorkbook()!.getSheetByName("Example")!;
      sheet.getRange("P1").setNumberFormat("0.00");
      sheet.getRange("P2").setNumberFormat("yyyy-mm-dd");
    });
    await desk.write("Q1:Q4", [["=LEN(P1)"], ["=LEFT(P2,2)"], ['=FIND("6",P2)'], ["=SUM(LEN(P1:P2))"]]);
    expect((await desk.read("Q1:Q4")).flat()).toEqual([1, "46", 2, 6]); // 5 and 46024: one digit and five
  });

  test("plain-paste: plain text of several cells leaves fill and format of the cells", async () => {
    const look = () =>
      desk.page.evaluate(() => {
        const range = window.desk.grid.api.getActiveWorkbook()!.getSheetByName("Example")!.getRange("B24:B25");
        return range
          .getCellDatas()
          .flat()
          .map((cell) => JSON.stringify(cell?.s));
      });
    const before = await look();
    await startAt(desk, "Example", "B24");
    await desk.page.evaluate(() => {
      const clipboardData = new DataTransfer();
      clipboardData.setData("text/plain", "21\n22");
      document.activeElement!.dispatchEvent(
        new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }),
      );
    });
    await expect.poll(() => desk.read("B24:B25")).toEqual([[21], [22]]);
    expect(await look()).toEqual(before);
  });

  test("names-list: the list of names goes with a click on a cell, with Escape and with a name that is chosen", async () => {
    const { page } = desk;
    const opener = page.locator('[data-u-comp="defined-name"] a');
    const list = page.getByText("Test_Minutes", { exact: true });
    for (const close of [
      () => startAt(desk, "Example", "H15"),
      () => page.keyboard.press("Escape"),
      () => list.click(),
    ]) {
      await opener.click();
      await list.waitFor();
      await close();
      await list.waitFor({ state: "hidden" });
    }
    expect((await page.evaluate(() => window.desk.host.selection())).address).toBe("E5");
  });
});
