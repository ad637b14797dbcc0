import { afterAll, beforeAll, expect, test } from "vitest";
import { type Desk, type Desks, desks } from "./desk-page";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.anew("");
});
afterAll(() => all?.close());

const MOST_PRESSES = 80;
const press = (key: string) => desk.page.keyboard.press(key);
const pane = () => desk.page.locator("#pane");
const isIn = (place: string) => desk.page.evaluate((asked) => document.activeElement?.closest(asked) !== null, place);

/** What has the focus, as a person hears it. */
const focused = () =>
  desk.page.evaluate(() => {
    const at = document.activeElement as HTMLElement | null;
    const label = (at as HTMLInputElement | null)?.labels?.[0]?.textContent;
    const tab = at?.querySelector(".fui-Tab__content")?.textContent;
    return (at?.getAttribute("aria-label") || label || tab || at?.textContent || "").trim();
  });

/** Presses a key until it is so. */
async function until(key: string, reached: () => Promise<boolean>, what: string): Promise<void> {
  for (let count = 0; count < MOST_PRESSES; count += 1) {
    if (await reached()) return;
    await press(key);
  }
  throw new Error(`${key} does not reach ${what}, but ${await focused()}`);
}
const reach = (key: string, name: string) => until(key, async () => (await focused()) === name, name);
/** F6 goes from part to part of the desk. */
const into = (part: string) => until("F6", () => isIn(part), part);

async function step(title: string): Promise<void> {
  await into("#pane");
  await until("Shift+Tab", () => isIn("#pane .groups, #pane [role=tablist]"), "the head of the pane");
  await until("Tab", () => isIn("#pane [role=tablist]"), "the steps");
  await reach("ArrowRight", title);
  await press("Enter");
  await desk.page.getByRole("tab", { name: title, exact: true, selected: true }).waitFor();
}

/** Presses a button or link of the pane once it is there. */
async function pressed(name: string): Promise<void> {
  await pane().getByRole("button", { name, exact: true }).first().waitFor();
  await into("#pane");
  await reach("Tab", name);
  await press("Enter");
}

/** Types into the cells from the one that a link of the pane led to, a key after each. */
async function typeCells(texts: readonly (string | number)[], key: string): Promise<void> {
  await desk.page.waitForFunction(() => document.activeElement?.closest("#grid"));
  for (const text of texts) {
    await desk.page.keyboard.type(String(text));
    await press(key);
  }
}

const value = async (name: string) => {
  const area = (await desk.page.evaluate((asked) => window.desk.host.named(asked), name))!;
  return (await desk.read(area.address, area.sheet)).flat().filter((cell) => cell !== null);
};

const FACTS = { Site: "Example Nursery", Block: "block 12", "Bed width, across [m]": "6" };
/** An invented bed of 20 cans. */
const CANS = [
  [20, 25, 30, 22],
  [22, 28, 32, 24],
  [24, 30, 34, 25],
  [22, 27, 31, 23],
  [19, 24, 29, 20],
];

test("the keyboard alone does an audit from Set up to Share", async () => {
  const { page } = desk;
  await step("Set up");
  await pressed("Open as a new workbook");
  await pane().getByText("The audit is open as a workbook of its own.").waitFor();
  for (const [label, text] of Object.entries(FACTS)) {
    await reach("Tab", label);
    await press("ControlOrMeta+A");
    await page.keyboard.type(text);
  }
  await press("Tab");
  await expect.poll(() => value("Bed_Width_m")).toEqual([6]);

  // what is still needed leads to its cell, and what is typed goes there
  await step("Answer");
  await pressed("Length of the bed");
  await typeCells([8], "Enter");
  await pressed("Minutes of the test");
  await typeCells([15], "Enter");
  await pressed("Can mouth, inside diameter");
  await typeCells([100], "Enter");
  await pressed("Places of the cans across the bed");
  await typeCells([0.6, 2.2, 3.8, 5.4], "Tab");
  await pressed("Places of the cans along the bed");
  await typeCells([0.6, 2.2, 4, 5.8, 7.4], "Enter");
  await pressed("Readings of the cans");
  for (const row of CANS) {
    await typeCells(row, "Tab");
    await press("Enter");
  }
  await expect.poll(() => value("Cans_Readings")).toEqual(CANS.flat());
  await pressed("Water that one pot uses, or the depth");
  await typeCells([9.4], "Enter");
  await pane()
    .locator(".answer")
    .getByText(/^block 12: set \d+ min/)
    .waitFor();

  await step("Share");
  await pane().getByRole("button", { name: "Make a share copy" }).waitFor();
  const [download] = await Promise.all([page.waitForEvent("download"), pressed("Make a share copy")]);
  expect(download.suggestedFilename()).toBe("Example Nursery block 12 no test date share copy.xlsx");
  expect(desk.complaints).toEqual([]);
}, 180_000);
