import type { Desk } from "./desk-page";

/** Clicks into the grid, so that it has the keys, and selects a cell. */
export async function startAt(desk: Desk, sheet: string, address: string): Promise<void> {
  await desk.page.evaluate((area) => window.desk.host.select(area), { sheet, address });
  await desk.page.mouse.click(700, 300);
  await desk.page.evaluate((area) => window.desk.host.select(area), { sheet, address });
}

/** Types like a person with a quick hand: 60 to 100 ms a key, whatever the grid does meanwhile. */
export async function typeByHand(desk: Desk, text: string, last: "Tab" | "Enter"): Promise<void> {
  for (const key of [...text, last]) {
    await desk.page.keyboard.press(key);
    await desk.page.waitForTimeout(60 + ((text.length * 13) % 41));
  }
}
