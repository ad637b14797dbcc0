import { readFileSync } from "node:fs";
import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { clickCell, selected as selectedIn, startAt, typeByHand, typeLine as typeInto } from "./by-hand";
import { bookBytes, type Desk, type Desks, desks } from "./desk-page";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.open("?example=audit");
  desk.page.setDefaultTimeout(60_000);
}, 300_000);
afterAll(() => all?.close());

const selected = () => selectedIn(desk);
const type = (text: string) => typeInto(desk, text);
const leaching = () => desk.page.evaluate(async () => (await window.desk.host.named("Leaching_Fraction"))!);
const box = () => desk.page.getByRole("alertdialog");
const READING = "The mL in this can, 0 for a dry can, or x for a can that was not read.";
const DATE = "A date, such as 2026-11-25.";

/** Presses Enter at the box, which says what was refused. */
async function goOn(said: string): Promise<void> {
  await box().waitFor();
  expect(await box().locator("p").textContent()).toBe(said);
  await desk.page.keyboard.press("Enter");
  await box().waitFor({ state: "hidden" });
}

async function refused(sheet: string, address: string, text: string, rule: string): Promise<void> {
  await startAt(desk, sheet, address);
  await type(text);
  await goOn(`${address}: "${text}" is not allowed here. ${rule}`);
  await expect.poll(selected).toEqual({ sheet, address });
}

/** Number formats of cells in a file. */
async function formats(bytes: Uint8Array, cells: { sheet: string; address: string }[]): Promise<string[]> {
  installChartSupport();
  const book = new Workbook();
  await book.xlsx.load(bytes);
  return cells.map(({ sheet, address }) => String(book.getWorksheet(sheet)!.getCell(address).numFmt ?? "General"));
}

describe("what a check refuses at the desk", { timeout: 120_000 }, () => {
  test("is in its cell again, selected, so that typing puts another in its place", async () => {
    await refused("Cans", "G6", "12 ml", READING);
    await type("12");
    await expect.poll(selected).toEqual({ sheet: "Cans", address: "G7" });
    await type("31");
    await expect.poll(() => desk.read("G6:G7", "Cans")).toEqual([[12], [31]]);
  });

  test("does so by the mouse too, and Cancel leaves the cell as it was and the keys in the grid", async () => {
    const [came] = await desk.read("H7", "Cans");
    await startAt(desk, "Cans", "H6");
    await type("18 ml");
    await box().getByRole("button", { name: "OK" }).click();
    await box().waitFor({ state: "hidden" });
    await type("18");
    await expect.poll(selected).toEqual({ sheet: "Cans", address: "H7" });
    await type("dry");
    await box().getByRole("button", { name: "Cancel" }).click();
    await box().waitFor({ state: "hidden" });
    await desk.page.keyboard.press("ArrowDown");
    await type("29");
    await expect.poll(() => desk.read("H6:H8", "Cans")).toEqual([[18], came, [29]]);
  });

  test("does so by Escape at the box too", async () => {
    await startAt(desk, "Cans", "H6");
    await type("20 ml");
    await box().waitFor();
    await desk.page.keyboard.press("Escape");
    await type("19");
    await expect.poll(() => desk.read("H6", "Cans")).toEqual([[19]]);
  });

  test("is refused again as long as it breaks the rule, and given up by Escape", async () => {
    await refused("Cans", "G6", "12 ml", READING);
    await desk.page.keyboard.type("wet");
    await clickCell(desk, "Cans", "K12");
    await goOn(`G6: "wet" is not allowed here. ${READING}`);
    await expect.poll(selected).toEqual({ sheet: "Cans", address: "G6" });
    await desk.page.keyboard.press("Escape");
    await desk.page.keyboard.press("ArrowDown");
    await expect.poll(selected).toEqual({ sheet: "Cans", address: "G7" });
    await expect.poll(() => desk.read("G6:G7", "Cans")).toEqual([[12], [31]]);
  });

  test("is gone on with by Enter after a click on the words of the box too", async () => {
    await startAt(desk, "Cans", "G6");
    await type("12 ml");
    await box().locator("p").click();
    await goOn(`G6: "12 ml" is not allowed here. ${READING}`);
    await type("12");
    await expect.poll(() => desk.read("G6", "Cans")).toEqual([[12]]);
  });

  test("is open again before the next key can come, with all of it selected", async () => {
    await startAt(desk, "Cans", "G6");
    await type("12 ml");
    await box().waitFor();
    const editing = () =>
      desk.page.evaluate(() => {
        document.querySelector<HTMLButtonElement>("#refusal button")!.click();
        return window.desk.grid.api.getActiveWorkbook()!.isCellEditing();
      });
    expect(await editing()).toBe(true);
    await type("12");
    await expect.poll(() => desk.read("G6", "Cans")).toEqual([[12]]);
  });

  test("waits for an answer while a hand types on, and lets none of that into other cells", async () => {
    const came = await desk.read("G6:G11", "Cans");
    await startAt(desk, "Cans", "G6");
    await type("12 ml");
    for (const reading of [31, 32, 33, 34]) await typeByHand(desk, String(reading), "Enter");
    expect(await box().locator("p").textContent()).toBe(`G6: "12 ml" is not allowed here. ${READING}`);
    expect(await desk.read("G6:G11", "Cans")).toEqual(came);
    await goOn(`G6: "12 ml" is not allowed here. ${READING}`);
    await type("12");
    await type("31");
    await expect.poll(() => desk.read("G6:G8", "Cans")).toEqual([[12], [31], came[2]]);
  });

  test("is a date or a share where a number is asked for", async () => {
    for (const text of ["10%", "1/2", "3-4", "6:45"]) {
      await refused("Cans", "G6", text, READING);
      await desk.page.keyboard.press("Escape");
    }
    await expect.poll(() => desk.read("G6", "Cans")).toEqual([[12]]);
  });

  test("is not a share where 1 is the most", async () => {
    const { sheet, address } = await leaching();
    await startAt(desk, sheet, address);
    await type("10%");
    await expect.poll(() => desk.read(address, sheet)).toEqual([[0.1]]);
  });

  test("is a date that could be two days, or none", async () => {
    for (const text of ["12/3/2025", "31/2/2025", "2025-02-31", "45994"]) {
      await refused("Actions", "D5", text, DATE);
      await desk.page.keyboard.press("Escape");
    }
    await startAt(desk, "Actions", "D5");
    await type("2025-03-12");
    const days = (Date.UTC(2025, 2, 12) - Date.UTC(1899, 11, 30)) / 86_400_000;
    await expect.poll(() => desk.read("D5", "Actions")).toEqual([[days]]);
    for (const text of ["29/11/2026", "29.11.2026"]) {
      await startAt(desk, "Actions", "D5");
      await type(text);
      const day = (Date.UTC(2026, 10, 29) - Date.UTC(1899, 11, 30)) / 86_400_000;
      await expect.poll(() => desk.read("D5", "Actions")).toEqual([[day]]);
    }
  });

  test("is a decimal comma until it is switched on, which is remembered", async () => {
    const [came] = await desk.read("I8", "Cans");
    await startAt(desk, "Cans", "I8");
    await type("12,5");
    await goOn(
      `I8: "12,5" is not allowed here. ${READING} Write it with a point, 12.5, or tick Decimal comma above the grid.`,
    );
    await desk.page.keyboard.press("Escape");
    await expect.poll(() => desk.read("I8", "Cans")).toEqual([came]);
    await desk.page.getByLabel("Decimal comma").check();
    await startAt(desk, "Cans", "I8");
    await type("12,5");
    await expect.poll(() => desk.read("I8", "Cans")).toEqual([[12.5]]);
    expect(await desk.page.evaluate(() => localStorage.getItem("canfall-decimal-comma"))).toBe("yes");
    await desk.page.getByLabel("Decimal comma").uncheck();
    await desk.page.evaluate(() => localStorage.removeItem("canfall-decimal-comma"));
  });

  test("is not a name that reads as a date", async () => {
    await startAt(desk, "Block", "B5");
    await type("3-4");
    await expect.poll(() => desk.read("B5", "Block")).toEqual([["3-4"]]);
  });

  test("is not a time of day where one is asked for", async () => {
    const { sheet, address } = (await desk.page.evaluate(() => window.desk.host.named("Test_Start")))!;
    await startAt(desk, sheet, address);
    await type("6:45");
    await expect.poll(async () => (await desk.read(address, sheet))[0]![0]).toBeCloseTo(6.75 / 24, 12);
    expect(desk.complaints).toEqual([]);
  });

  test("leaves each cell its number format, and gives a date the one of dates", async () => {
    const cells = [{ sheet: "Cans", address: "G6" }, await leaching(), { sheet: "Actions", address: "D5" }];
    const came = await formats(readFileSync("templates/example-audit.xlsx"), cells);
    expect(await formats(await bookBytes(desk.page), cells)).toEqual([came[0], came[1], "yyyy-mm-dd"]);
  });
});
