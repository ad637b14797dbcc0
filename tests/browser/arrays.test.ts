import { Workbook } from "@cj-tech-master/excelts";
import { strFromU8, unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { type Desk, type Desks, desks, openFile, savedFile } from "./desk-page";

let all: Desks;
beforeAll(async () => {
  all = await desks();
});
afterAll(() => all?.close());

let count = 0;

/** Two sheets of A1:C1 = 1, 2, 3 with the formula A1 + B1 in D1. */
async function opened(): Promise<Desk> {
  const book = new Workbook();
  for (const name of ["Bed 7", "Bed 8"]) book.addWorksheet(name).addRow([1, 2, 3, { formula: "A1+B1", result: 3 }]);
  const desk = await all.open();
  await openFile(desk, new Uint8Array(await book.xlsx.writeBuffer()), `arrays ${++count}.xlsx`);
  return desk;
}

/** What the saved file holds in cells: formula, value and the cells that the formula fills, as far as there are any. */
async function saved(desk: Desk, cells: string, sheet = "Bed 7") {
  const found = openBook(await savedFile(desk)).sheets.find(({ name }) => name === sheet)!;
  return cells.split(" ").map((address) => {
    const { formula, value, error, fills } = found.cells.get(address) ?? { value: null };
    return [formula && `=${formula}`, error ?? value, fills].filter((one) => one != null).join(" ");
  });
}

const undone = (desk: Desk) =>
  desk.page.evaluate(async () => {
    await window.desk.grid.api.undo();
    await window.desk.settled();
  });

const SPILL = [{ error: "#SPILL!" }];

// a file holds an error that its own list does not know, such as #SPILL!, as #VALUE!
describe("an array formula that has no room is saved in its own cell", { timeout: 120_000 }, () => {
  test("formulas in its way stay, and it fills its cells once they are gone", async () => {
    const desk = await opened();
    for (const sheet of ["Bed 7", "Bed 8"]) {
      await desk.write("F3:F4", [["=A1*10"], ["=B1*10"]], sheet);
      await desk.write("F1", "=SEQUENCE(5)", sheet);
      expect(await desk.read("F1:F4", sheet)).toEqual([SPILL, [null], [10], [20]]);
    }
    const blocked = ["=_xlfn.SEQUENCE(5) #VALUE! F1", "", "=A1*10 10", "=B1*10 20", ""];
    expect(await saved(desk, "F1 F2 F3 F4 F5")).toEqual(blocked);
    await desk.write("F3:F4", [[""], [""]], "Bed 7");
    expect((await desk.read("F1:F5", "Bed 7")).flat()).toEqual([1, 2, 3, 4, 5]);
    expect(await saved(desk, "F1 F2 F3 F4 F5")).toEqual(["=_xlfn.SEQUENCE(5) 1 F1:F5", "2", "3", "4", "5"]);
    expect(await saved(desk, "F1 F2 F3 F4 F5", "Bed 8")).toEqual(blocked);
    await desk.write("F4", "=A1+B1", "Bed 7");
    expect((await desk.read("F1:F5", "Bed 7")).slice(0, 1)).toEqual([SPILL]);
    expect(await saved(desk, "F1 F2 F3 F4 F5")).toEqual(["=_xlfn.SEQUENCE(5) #VALUE! F1", "", "", "=A1+B1 3", ""]);
  });

  test("a formula of the file in its way stays when a value takes its place, and when that is undone", async () => {
    const desk = await opened();
    await desk.write("C1", "=A1:B1*2", "Bed 7");
    expect(await desk.read("C1:D1", "Bed 7")).toEqual([[...SPILL, 3]]);
    expect(await saved(desk, "C1 D1 E1")).toEqual(["=A1:B1*2 #VALUE! C1", "=A1+B1 3", ""]);
    await desk.write("C1", 7, "Bed 7");
    expect(await saved(desk, "C1 D1 E1")).toEqual(["7", "=A1+B1 3", ""]);
    await undone(desk);
    expect(await saved(desk, "C1 D1 E1")).toEqual(["=A1:B1*2 #VALUE! C1", "=A1+B1 3", ""]);
    await undone(desk);
    expect(await saved(desk, "C1 D1 E1")).toEqual(["3", "=A1+B1 3", ""]);
  });

  test("a formula of the file that went for it comes back when both are undone", async () => {
    const desk = await opened();
    await desk.write("D1", "", "Bed 7");
    await desk.write("C1", "=A1:B1*2", "Bed 7");
    expect(await desk.read("C1:D1", "Bed 7")).toEqual([[2, 4]]);
    expect(await saved(desk, "C1 D1 E1")).toEqual(["=A1:B1*2 2 C1:D1", "4", ""]);
    await undone(desk);
    await undone(desk);
    expect(await saved(desk, "C1 D1 E1")).toEqual(["3", "=A1+B1 3", ""]);
  });

  test("so it is beside cells that another one fills, and past the end of its sheet; the file asks to be calculated", async () => {
    const desk = await opened();
    await desk.write("F1", "=SEQUENCE(3)", "Bed 7");
    expect(await saved(desk, "F1 F2 F3")).toEqual(["=_xlfn.SEQUENCE(3) 1 F1:F3", "2", "3"]);
    await desk.write("G3", "in the way", "Bed 7");
    await desk.write("E3", "=SEQUENCE(1,3)", "Bed 7");
    await desk.write("B9", "=A:A", "Bed 7");
    const file = await savedFile(desk);
    expect(await desk.read("E3", "Bed 7")).toEqual([SPILL]);
    expect(await desk.read("B9", "Bed 7")).toEqual([SPILL]);
    expect(strFromU8(unzipSync(file)["xl/workbook.xml"]!)).toMatch(/<calcPr[^>]* fullCalcOnLoad="1"/);
    expect(await saved(desk, "B9 B10 E3 F1 F2 F3 G3")).toEqual([
      "=A:A #VALUE! B9",
      "",
      "=_xlfn.SEQUENCE(1,3) #VALUE! E3",
      "=_xlfn.SEQUENCE(3) 1 F1:F3",
      "2",
      "3",
      "in the way",
    ]);
  });

  test("a formula typed among its cells is saved before all is calculated", async () => {
    const desk = await opened();
    await desk.write("F1", "=SEQUENCE(3)", "Bed 7");
    expect(await saved(desk, "F1 F2 F3")).toEqual(["=_xlfn.SEQUENCE(3) 1 F1:F3", "2", "3"]);
    const keys = await desk.page.evaluate(() => {
      const grid = document.getElementById("grid")!;
      const press = () => grid.dispatchEvent(new KeyboardEvent("keydown", { key: "Shift" }));
      press();
      return window.setInterval(press, 50); // the grid waits for a typist who never rests
    });
    await desk.write("F2", "=A1+1", "Bed 7");
    expect((await saved(desk, "F1 F2 F3")).map((cell) => cell.split(" ")[0])).toEqual([
      "=_xlfn.SEQUENCE(3)",
      "=A1+1",
      "",
    ]);
    await desk.page.evaluate((timer) => window.clearInterval(timer), keys);
    await desk.read("F1", "Bed 7");
    expect(await saved(desk, "F1 F2 F3")).toEqual(["=_xlfn.SEQUENCE(3) #VALUE! F1", "=A1+1 2", ""]);
  });
});
