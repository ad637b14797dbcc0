import { strFromU8, unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { bytesOf, type Desks, desks } from "./desk-page";

let all: Desks;
beforeAll(async () => {
  all = await desks();
});
afterAll(() => all?.close());

const skips = (query: string) =>
  test(`a blank can is skipped with "${query}"`, async () => {
    const desk = await all.restored(`?example=functions${query}`);
    await desk.write("N1:N4", [[20], [""], [30], [40]]);
    await desk.write("N5", "=CANFALL.SC.CAN(N1:N4)");
    expect(await desk.read("N5")).toEqual([[1.5]]); // (20 + 30 + 40) / 3 / 20
  });

const defaults = (query: string) =>
  test(`an argument left out takes its default with "${query}"`, async () => {
    const desk = await all.restored(`?example=functions${query}`);
    await desk.write("N1:N3", [
      ["=CANFALL.RUNTIME(B2:B26,15,100,9.4)"],
      ['=CANFALL.RUNTIME(B2:B26,15,100,9.4,"can")'],
      ["=CANFALL.WATER.ANNUAL(B2:B26,180,9.4,300,,1)-CANFALL.WATER.ANNUAL(B2:B26,180,9.4,300)"],
    ]);
    const [[short], [long], [difference]] = (await desk.read("N1:N3")) as [[number], [number], [number]];
    expect(short).toBeGreaterThan(0);
    expect(short).toBe(long);
    expect(difference).toBe(0);
  });

describe("calculation at the desk", () => {
  test("sorting a range leaves it as it is for every other formula", async () => {
    const desk = await all.restored();
    const cans = (await desk.read("B2:B26")).flat() as number[];
    await desk.write("N1:Q1", [
      ["=SORT(B2:B26)", "=SUMPRODUCT(A2:A26,B2:B26)", "=INDEX(B2:B26,5)", '=CANFALL.DEPTH.CAUGHT(B2:B26,"mm")'],
    ]);
    const changed = [40, ...cans.slice(1)];
    for (const readings of [cans, changed]) {
      await desk.write("B2", readings[0]!);
      const sum = readings.reduce((total, reading, i) => total + reading * (i + 1), 0);
      expect((await desk.read("N1:N25")).flat()).toEqual([...readings].sort((a, b) => a - b));
      expect(await desk.read("O1:P1")).toEqual([[sum, readings[4]]]);
      expect((await desk.read("Q1:Q25")).flat()).toEqual(readings);
      expect((await desk.read("B2:B26")).flat()).toEqual(readings);
    }
  });

  test("a reading changed to 0 is a dry can in every formula that wraps the range", async () => {
    const desk = await all.restored();
    const wrapped = 'IF(B2:B26="","x",B2:B26)';
    await desk.write("N1:N4", [
      [`=CANFALL.SC.QUARTER(${wrapped})`],
      [`=CANFALL.SC.CAN(${wrapped})`],
      ['=SUM(IF(B2:B26="",1,0))'],
      ['=SUM(--(B2:B26=""))'],
    ]);
    await desk.write("B8", 0);
    const message = "readings must have no dry can (mark a can that was not read with x), got 0 in row 7, column 1";
    expect(await desk.read("N2:N4")).toEqual([[{ error: "#N/A", message }], [0], [0]]);
    expect(await desk.read("E20:E21")).toEqual([[25], [1]]);
    expect(await desk.read("E13:E14")).toEqual([[{ error: "#N/A", message }], [{ error: "#N/A", message }]]);
  });

  test("a function names the error in a cell that it reads, as in Excel", async () => {
    const desk = await all.restored();
    await desk.write("N1:N3", [[20], ["=1/0"], [30]]);
    await desk.write("N4", "=CANFALL.SC.CAN(N1:N3)");
    expect(await desk.read("N4")).toEqual([
      [{ error: "#VALUE!", message: "readings must be numbers, got #DIV/0! in row 2, column 1" }],
    ]);
  });

  test("a table that has no room says so and comes back once there is room", async () => {
    const desk = await all.restored();
    await desk.write("N1:N3", [[20], [25], [30]]);
    await desk.write("P2", "in the way");
    await desk.write("P1", '=CANFALL.DEPTH.CAUGHT(N1:N3,"mm")');
    expect(await desk.read("P1:P3")).toEqual([[{ error: "#SPILL!" }], ["in the way"], [null]]);
    await desk.write("P2", "");
    expect(await desk.read("P1:P3")).toEqual([[20], [25], [30]]);
  });

  test("figures that wait are dimmed after a second; a file saved meanwhile asks to be calculated", async () => {
    const desk = await all.restored();
    const { page } = desk;
    const keys = await page.evaluate(() => {
      const press = () =>
        document.getElementById("grid")!.dispatchEvent(new KeyboardEvent("keydown", { key: "Shift" }));
      press();
      return window.setInterval(press, 50); // a typist who never rests: the grid waits for the keys
    });
    await desk.write("B2", 16);
    await page.locator("#grid.late").waitFor();
    expect(await page.textContent("#figures")).toBe("Calculating …");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save .xlsx" }).click(),
    ]);
    const parts = unzipSync(await bytesOf(download));
    expect(strFromU8(parts["xl/workbook.xml"]!)).toMatch(/<calcPr[^>]* fullCalcOnLoad="1"/);
    await page.getByText("saved while figures are out of date; the next program calculates them").waitFor();
    await page.evaluate((timer) => window.clearInterval(timer), keys);
    expect(await desk.read("H5", "Example")).toEqual([[16]]); // =IF(B2="","x",B2)
    await page.locator("#grid:not(.late)").waitFor();
    expect(await page.textContent("#figures")).toBe("");
  });

  skips("");

  test("a blank can that arrives as 0 is a dry can unless the range is wrapped", async () => {
    const desk = await all.restored("?example=functions&blank=zero");
    await desk.write("N1:N4", [[20], [""], [30], [40]]);
    await desk.write("N5:N6", [["=CANFALL.SC.CAN(N1:N4)"], ['=CANFALL.SC.CAN(IF(N1:N4="","x",N1:N4))']]);
    const [[dry], [wrapped]] = (await desk.read("N5:N6")) as [[{ error: string; message: string }], [number]];
    expect(dry.error).toBe("#N/A");
    expect(dry.message).toMatch(/^readings must have no dry can \(mark a can that was not read with x\), got 0/);
    expect(wrapped).toBe(1.5);
  });

  // Those of one address are beside each other, so that they share its page.
  defaults("&blank=zero");
  for (const query of ["&blank=null", "&blank=empty"]) {
    skips(query);
    defaults(query);
  }

  test("a function that throws shows an error and stops no other formula", async () => {
    const desk = await all.anew("?example=functions", () => {
      let kept: unknown;
      type Work = (...given: unknown[]) => unknown;
      Object.defineProperty(globalThis, "CustomFunctions", {
        get: () => kept,
        set: (theirs: { associate(id: string, work: Work): void }) => {
          const broken = () => {
            throw new TypeError("broken for the test");
          };
          kept = {
            ...theirs,
            associate: (id: string, work: Work) => theirs.associate(id, id === "MAR" ? broken : work),
          };
        },
      });
    });
    await desk.write("N1:N2", [["=CANFALL.MAR(B2:B26,15,100)"], ["=CANFALL.SC.CAN(B2:B4)"]]);
    expect(await desk.read("N1:N2")).toEqual([[{ error: "#VALUE!" }], [50 / 3 / 15]]); // (15 + 17 + 18) / 3 / 15
    await desk.write("B2", 16);
    expect(await desk.read("N1:N2")).toEqual([[{ error: "#VALUE!" }], [51 / 3 / 16]]);
  });
});
