import { expect } from "vitest";
import type { Rectangle } from "../../src/desk/cell-rectangle";
import type { Desk } from "./desk-page";

const rectangle = (desk: Desk, sheet: string, address: string): Promise<Rectangle> =>
  desk.page.evaluate(([one, place]) => window.desk.rectangle(one, place), [sheet, address] as const);

/** Two clicks of one cell within this are a double click to the grid, which opens the cell behind what it holds [ms]. */
const DOUBLE_CLICK_MS = 600;
let clicked = { cell: "", at: 0 };

/** Clicks into the middle of a cell, wherever the grid has drawn it. */
export async function clickCell(desk: Desk, sheet: string, address: string): Promise<void> {
  const { x, y, width, height } = await rectangle(desk, sheet, address);
  const cell = `${sheet}!${address}`;
  const since = Date.now() - clicked.at;
  if (cell === clicked.cell && since < DOUBLE_CLICK_MS) await desk.page.waitForTimeout(DOUBLE_CLICK_MS - since);
  await desk.page.mouse.click(x + width / 2, y + height / 2);
  clicked = { cell, at: Date.now() };
}

/** Clicks the arrow of a cell with a list, at its right. */
export async function clickArrow(desk: Desk, sheet: string, address: string): Promise<void> {
  const { x, y, width, height } = await rectangle(desk, sheet, address);
  await desk.page.mouse.click(x + width - ARROW_FROM_RIGHT, y + height / 2);
}

/** Half of the mark that the grid draws at the right of a cell with a list [px]. */
const ARROW_FROM_RIGHT = 10;

export const selected = (desk: Desk) => desk.page.evaluate(() => window.desk.host.selection());

/** Selects a cell by a click, so that the grid has the keys. */
export async function startAt(desk: Desk, sheet: string, address: string): Promise<void> {
  await clickCell(desk, sheet, address);
  const first = async () => (await selected(desk)).address.split(":")[0]; // a merged cell is selected with all of them
  await expect.poll(first).toBe(address);
}

/** Types a line of entries: Tab after each, Enter after the last. */
export async function typeLine(desk: Desk, ...entries: (number | string)[]): Promise<void> {
  for (const [i, entry] of entries.entries()) {
    await desk.page.keyboard.type(String(entry));
    await desk.page.keyboard.press(i < entries.length - 1 ? "Tab" : "Enter");
  }
}

/** Types like a person with a quick hand: 60 to 100 ms a key, whatever the grid does meanwhile. */
export async function typeByHand(desk: Desk, text: string, last: "Tab" | "Enter"): Promise<void> {
  for (const key of [...text, last]) {
    await desk.page.keyboard.press(key);
    await desk.page.waitForTimeout(60 + ((text.length * 13) % 41));
  }
}
