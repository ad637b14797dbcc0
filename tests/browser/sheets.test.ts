import type {} from "@univerjs/preset-sheets-core";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { foreignParts } from "../foreign/foreign-parts";
import { type Desk, type Desks, desks, openFile, savedFile } from "./desk-page";

let all: Desks;
beforeAll(async () => {
  all = await desks();
});
afterAll(() => all?.close());

const sheets = (desk: Desk) => desk.page.evaluate(() => window.desk.host.sheets());

/** Chooses what the tab of a sheet offers. */
async function choose({ page }: Desk, sheet: string, act: string): Promise<void> {
  const tab = page.locator('[data-u-comp="slide-tab-item"]', { hasText: sheet }).first();
  await tab.click();
  await tab.click({ button: "right" });
  await page.getByText(act, { exact: true }).first().click();
}

describe("whole sheets", { timeout: 120_000 }, () => {
  test("deleted-sheets: what reads one is said before it is deleted, and Undo brings all of it back", async () => {
    const desk = await all.open();
    const { page } = desk;
    await page.evaluate(async () => {
      const book = window.desk.grid.api.getActiveWorkbook()!;
      book.insertSheet("Prices");
      await window.desk.write("Prices", "A1:A2", [[1], [2]]);
      book.insertDefinedName("Pot_Price", "Prices!$A$2");
    });
    await desk.write("N1:N3", [["=Prices!A1+A1"], ["=Pot_Price*3"], ['="Prices!A1"']]);
    expect(await desk.read("N2")).toEqual([[6]]);
    await choose(desk, "Prices", "Delete");
    const said =
      "Delete the sheet Prices? 2 formulas on other sheets read it, the first in Example!N1: they lose what they read (#REF!). Undo brings the sheet back.";
    await page.getByText(said).waitFor();
    await page.keyboard.press("Escape");
    expect(await sheets(desk)).toEqual(["Example", "Prices"]);
    await choose(desk, "Prices", "Delete");
    await page.getByRole("button", { name: "Delete the sheet" }).click();
    await expect.poll(() => sheets(desk)).toEqual(["Example"]);
    const gone = { error: "#REF!" };
    await expect.poll(() => desk.read("N1:N3")).toEqual([[gone], [gone], ["Prices!A1"]]);
    await page.evaluate(() => window.desk.grid.api.undo());
    await expect.poll(() => desk.read("N2:N3")).toEqual([[6], ["Prices!A1"]]);
    expect(await desk.read("A1:A2", "Prices")).toEqual([[1], [2]]);
    expect(await page.textContent("#figures")).toBe("");
  });

  test("stay as they are where the file locks its structure, which is said", async () => {
    const parts = foreignParts();
    const book = strFromU8(parts["xl/workbook.xml"]!).replace('lockStructure="0"', 'lockStructure="1"');
    const desk = await all.open();
    await openFile(desk, zipSync({ ...parts, "xl/workbook.xml": strToU8(book) }), "locked.xlsx");
    const before = await sheets(desk);
    const first = before[0]!;
    const tab = desk.page.locator('[data-u-comp="slide-tab-item"]', { hasText: first }).first();
    const acts = [
      () => choose(desk, first, "Copy"),
      () => choose(desk, first, "Rename"),
      () => tab.dblclick(),
      () => desk.page.getByRole("button", { name: "Add a sheet" }).first().click(),
    ];
    for (const act of acts) {
      await act();
      await desk.page.getByText("The structure of this workbook is locked").waitFor();
      await desk.page.evaluate(() => {
        document.getElementById("message")!.textContent = "";
      });
    }
    const added = desk.page.evaluate(() => window.desk.host.addSheet("New"));
    await expect(added).rejects.toThrow("no sheet can be added, deleted, copied, renamed, moved, hidden or shown");
    expect(await sheets(desk)).toEqual(before);
    await desk.write("A2", 25, first);
    expect(await desk.read("A2", first)).toEqual([[25]]);
  });

  test("merged cells of a file that was just opened grow with a row that is inserted in them", async () => {
    const parts = foreignParts();
    const sheet = strFromU8(parts["xl/worksheets/sheet1.xml"]!)
      .replace(/<sheetProtection [^>]*>/, "")
      .replace(
        "<conditionalFormatting",
        '<mergeCells count="1"><mergeCell ref="F2:G3"/></mergeCells><conditionalFormatting',
      );
    const desk = await all.open();
    await openFile(desk, zipSync({ ...parts, "xl/worksheets/sheet1.xml": strToU8(sheet) }), "merged.xlsx");
    await desk.page.evaluate(() => {
      window.desk.grid.api.getActiveWorkbook()!.getSheetByName("Bed 7")!.insertRowsBefore(2, 1);
    });
    const saved = strFromU8(unzipSync(await savedFile(desk, "Save under this name"))["xl/worksheets/sheet1.xml"]!);
    expect(saved).toContain('<mergeCell ref="F2:G4"/>');
  });
});
