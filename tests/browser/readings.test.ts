import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Cell } from "../../src/cells/cell";
import { clickCell, selected as selectedIn, startAt, typeByHand, typeLine } from "./by-hand";
import { type Desk, type Desks, desks } from "./desk-page";
import { openStep } from "./open-step";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
});
afterAll(() => all?.close());

/** An invented bed of 25 cans, 5 across and 5 along. */
const CANS = [
  [20, 25, 130, 25, 20],
  [22, 28, 32, 27, 121],
  [24, 30, 34, 29, 23],
  [22, 127, 31, 28, 20],
  [19, 24, 29, 24, 18],
];
const METRES = [0.6, 1.8, 3, 4.2, 5.4];
const flat = CANS.flat();
const mean = flat.reduce((sum, can) => sum + can, 0) / flat.length;

async function newAudit(): Promise<void> {
  desk = await all.open();
  desk.page.setDefaultTimeout(120_000);
  const pane = desk.page.locator("#pane");
  await openStep(desk.page, "Set up");
  await pane.getByRole("button", { name: "Open as a new workbook", exact: true }).click();
  await pane.getByText("The audit is open as a workbook of its own.").waitFor();
}

const selected = () => selectedIn(desk);
const start = (sheet: string, address: string) => startAt(desk, sheet, address);
const type = (text: string, last: "Tab" | "Enter") => typeByHand(desk, text, last);

/** Lines typed by hand; those below are written at once. */
const TYPED = 2;

const typeLines = async (lines: number[][]): Promise<void> => {
  for (const line of lines) {
    for (const [j, one] of line.entries()) await type(String(one), j < line.length - 1 ? "Tab" : "Enter");
  }
};

/** Every value of every sheet. */
const everything = (): Promise<[string, Cell[][]][]> =>
  desk.page.evaluate(async () => {
    const { host } = window.desk;
    await host.settled();
    const sheets = await host.sheets();
    return Promise.all(
      sheets.map(async (sheet): Promise<[string, Cell[][]]> => {
        const used = await host.used(sheet);
        return [sheet, used ? await host.read(used) : []];
      }),
    );
  });

const RATE = ((mean * 1000) / (Math.PI * 50 ** 2)) * 4; // mL in a mouth of 100 mm, in 15 min

async function value(name: string): Promise<unknown> {
  const area = (await desk.page.evaluate((asked) => window.desk.host.named(asked), name))!;
  return (await desk.read(area.address, area.sheet))[0]![0];
}

describe("readings typed at the desk", { timeout: 240_000 }, () => {
  beforeAll(newAudit);

  test("each is in its own cell however quickly they follow one another", async () => {
    await start("Cans", "G6");
    await typeLines(CANS.slice(0, TYPED));
    await expect.poll(() => desk.read("G6:K7", "Cans")).toEqual(CANS.slice(0, TYPED));
    expect(await selected()).toEqual({ sheet: "Cans", address: "G8" });
    await desk.write("G8:K10", CANS.slice(TYPED), "Cans");
  });

  test("a click or an arrow key ends the line of entries that Tab began", async () => {
    await start("Cans", "G5");
    for (const metres of METRES) await type(String(metres), "Tab");
    await clickCell(desk, "Cans", "J12");
    await expect.poll(selected).toEqual({ sheet: "Cans", address: "J12" });
    await desk.page.keyboard.press("Enter");
    await expect.poll(selected).toEqual({ sheet: "Cans", address: "J13" });
    await start("Cans", "G5");
    await type(String(METRES[0]), "Tab");
    await desk.page.keyboard.press("ArrowLeft");
    await desk.page.keyboard.press("ArrowLeft");
    await desk.page.keyboard.press("ArrowDown");
    for (const metres of METRES) await type(String(metres), "Enter");
    expect((await desk.read("F6:F10", "Cans")).flat()).toEqual(METRES);
    await expect.poll(selected).toEqual({ sheet: "Cans", address: "F11" });
    await expect.poll(() => desk.read("G6:K10", "Cans")).toEqual(CANS);
  });

  test("the results follow from them", async () => {
    await desk.write("G5:K5", [METRES], "Cans");
    await desk.write(
      "F6:F10",
      METRES.map((metres) => [metres]),
      "Cans",
    );
    await start("Cans", "B4");
    for (const entry of [100, 15]) await typeLine(desk, entry); // Enter goes down from merged cells too
    expect([await value("Can_Mouth_mm"), await value("Test_Minutes")]).toEqual([100, 15]);
    expect(await value("Result_MAR")).toBeCloseTo(RATE, 9);
    expect(await value("Result_SC_Can")).toBeCloseTo(mean / 18, 9);
  });

  test("what is typed while the grid calculates counts too", async () => {
    const lines = CANS.map((line) => line.map((can) => can * 4));
    await desk.write("G8:K10", lines.slice(TYPED), "Cans");
    await start("Cans", "G6");
    for (const line of lines.slice(0, TYPED)) {
      await desk.write("B5", 15, "Cans");
      await desk.page.waitForTimeout(600);
      await typeLines([line]);
    }
    await expect.poll(() => desk.read("G6:K10", "Cans")).toEqual(lines);
    expect(await value("Result_MAR")).toBeCloseTo(4 * RATE, 8);
    expect(await value("Result_SC_Can")).toBeCloseTo(mean / 18, 9);
  });

  test("a reading that breaks its rule is refused at once, in words, and the cell stays as it was", async () => {
    await start("Cans", "G6");
    await typeLine(desk, "12 ml");
    await desk.page
      .getByText("The mL in this can, 0 for a dry can, or x for a can that was not read.")
      .first()
      .waitFor();
    await desk.page.getByRole("button", { name: /^OK$/i }).click();
    await desk.page.keyboard.press("Escape");
    await expect.poll(() => desk.read("G6", "Cans")).toEqual([[80]]); // 4 · 20
  });

  test("the line above the grid names the workbook", async () => {
    expect(await desk.page.textContent("#file")).toBe("Block audit.xlsx");
  });

  test("Tab goes to the next cell that may be filled in", async () => {
    await start("Block", "B4");
    await typeLine(desk, "Hill", "L-7", "M-1");
    await expect.poll(() => desk.read("B4:B6", "Block")).toEqual([["Hill"], ["L-7"], ["M-1"]]);
  });

  test("every value is what the saved file gives when it is opened again", async () => {
    const before = await everything();
    const opened = await desk.page.evaluate(async () => {
      const bytes = await window.desk.host.bytes();
      window.confirm = () => true;
      return window.desk.host.openBook(bytes, "again.xlsx");
    });
    expect(opened).toBe(true);
    expect(await everything()).toEqual(before);
    expect(desk.complaints).toEqual([]);
  });
});
