import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { bytesOf, type Desk, type Desks, desks, openFile } from "./desk-page";
import { openStep } from "./open-step";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.open();
});
afterAll(() => all?.close());

/** An invented bed of 25 cans, 5 across and 5 along. */
const CANS = [
  [20, 25, 30, 25, 20],
  [22, 28, 32, 27, 21],
  [24, 30, 34, 29, 23],
  [22, 27, 31, 28, 20],
  [19, 24, 29, 24, 18],
];
const METRES = [0.6, 1.8, 3, 4.2, 5.4];

const pane = () => desk.page.locator("#pane");
const step = (name: string) => openStep(desk.page, name);
const press = (name: string) => pane().getByRole("button", { name, exact: true }).click();
const says = (words: string | RegExp) =>
  pane().getByText(words).filter({ visible: true }).first().waitFor({ timeout: 20_000 });

async function fill(label: string, text: string): Promise<void> {
  const field = pane().getByRole("textbox", { name: label });
  await field.fill(text);
  await field.press("Tab");
}

/** The value of a named cell, once everything is calculated. */
async function value(name: string): Promise<unknown> {
  const area = await desk.page.evaluate((asked) => window.desk.host.named(asked), name);
  return (await desk.read(area!.address, area!.sheet))[0]![0];
}

async function type(name: string, inputs: number[][]): Promise<void> {
  const area = (await desk.page.evaluate((asked) => window.desk.host.named(asked), name))!;
  const first = area.address.split(":")[0]!;
  const [, letters = "", row = ""] = /^([A-Z]+)(\d+)$/.exec(first)!;
  const last = `${String.fromCharCode(letters.charCodeAt(0) + inputs[0]!.length - 1)}${Number(row) + inputs.length - 1}`;
  await desk.write(`${first}:${last}`, inputs, area.sheet);
}

const flat = CANS.flat();
const mean = flat.reduce((sum, can) => sum + can, 0) / flat.length;

describe("an audit from the pane", () => {
  test("starts as a workbook of its own where the open one uses its names", async () => {
    await step("Set up");
    await press("Add the audit sheets to this workbook");
    await says(/is already defined in this workbook.*Open the audit as a new workbook instead\?/);
    await pane().getByRole("alertdialog").getByRole("button", { name: "Open as a new workbook" }).click();
    await says("The audit is open as a workbook of its own.");
    expect(await desk.page.evaluate(() => window.desk.host.sheets())).toEqual([
      ...["Start", "Block", "Cans", "Heads", "Results", "Coverage", "Run time", "Pots", "Water and cost", "Cost"],
      ...["Actions", "Report", "Limits", "Working"],
    ]);
  });

  test("takes its first facts from fields", async () => {
    await fill("Site", "Example Nursery");
    await fill("Block", "block 7");
    await fill("Bed width, across [m]", "6");
    await fill("Bed length, along [m]", "6");
    await fill("Length of the test [min]", "15");
    await fill("Can mouth, inside diameter [mm]", "100");
    await says("entry in Cans!");
    expect([await value("Site_Name"), await value("Can_Mouth_mm")]).toEqual(["Example Nursery", 100]);
    await expect.poll(() => value("Block_Area_m2")).toBe(36);
  });

  test("takes pasted readings, and shows the results of the workbook", async () => {
    await step("Readings");
    await pane().getByText("Paste readings from elsewhere").click();
    await pane()
      .getByLabel("Readings [mL], a line")
      .fill(CANS.map((row) => row.join("\t")).join("\n"));
    await press("Put them into the workbook");
    await says("The readings are in Cans!");
    await type("Cans_Across_m", [METRES]);
    await type(
      "Cans_Along_m",
      METRES.map((metres) => [metres]),
    );
    expect(await value("Result_SC_Can")).toBeCloseTo(mean / 18, 9);
    await step("Answer");
    const rate = ((mean * 1000) / (Math.PI * 50 ** 2)) * 4; // mL in a mouth of 100 mm, in 15 min
    await says(`${rate.toPrecision(3)} mm/h`);
    await says("Against your limits");
    expect(await value("Result_MAR")).toBeCloseTo(rate, 9);
  });

  test("gives a run time for a depth typed in the pane, and takes the depth back", async () => {
    await step("Answer");
    await pane().getByText("What the run time is calculated from").click();
    await fill("Net depth wanted in each pot [mm a day]", "9.4");
    await says("entry in 'Run time'!");
    const times = (await value("Run_Multiplier")) as number;
    const rate = (await value("Used_MAR")) as number;
    const minutes = (60 * 9.4 * times) / rate;
    expect(await value("Result_Run_Time_min")).toBeCloseTo(minutes, 9);
    await says(`${minutes.toPrecision(3)} min`);
    await press("Undo");
    await says("is as before the entry");
    expect(await value("Result_Run_Time_min")).toBe("needs water use and pot top");
    await fill("Net depth wanted in each pot [mm a day]", "9.4");
    await says("entry in 'Run time'!");
  });

  test("makes a share copy, and a check of that copy agrees with every figure", async () => {
    await step("Share");
    const [download] = await Promise.all([desk.page.waitForEvent("download"), press("Make a share copy")]);
    expect(download.suggestedFilename()).toBe("Example Nursery block 7 no test date share copy.xlsx");
    const buffer = Buffer.from(await bytesOf(download));
    const file = { name: download.suggestedFilename(), mimeType: "application/octet-stream", buffer };
    await pane().getByLabel("Copies to check", { exact: true }).setInputFiles(file);
    await pane().getByRole("heading", { name: file.name }).waitFor();
    await says(/\d+ agree; \d+ cannot be given, since entries are missing/);
    await says("not that the readings are true");
    expect(await pane().locator(".report tbody tr", { hasText: "does not agree" }).count()).toBe(0);
  });

  test("prints the authority's own report on one page and over all its width, with the key of its map", async () => {
    await desk.page.evaluate(() => Object.assign(window, { print: () => {} }));
    await press("Print the report");
    const report = desk.page.locator(".own-report");
    await report.waitFor({ state: "attached" });
    const isPrinting = () => desk.page.evaluate(() => document.body.classList.contains("printing-own-report"));
    expect(await isPrinting()).toBe(true); // some browsers print once `print` has come back
    expect(await report.locator(".own-tile").allTextContents()).toEqual(
      expect.arrayContaining(["1", "2", "3", "4", "5", "6", "7", "75 %"]),
    );
    const said = await report.locator(".own-entry").allTextContents();
    expect(said).toContain("needs watering days");
    expect(said.filter((text) => text.includes("(the file shows: needs"))).toEqual([]);
    const points = await report.evaluate((drawn) => Number.parseFloat(drawn.style.fontSize));
    expect([points >= 5.5, points <= 8]).toEqual([true, true]);
    await desk.page.emulateMedia({ media: "print" });
    const share = await report.evaluate(
      (drawn) => drawn.getBoundingClientRect().width / document.documentElement.clientWidth,
    );
    expect(share).toBeGreaterThan(0.97);
    await desk.page.emulateMedia({ media: null });
    const pages = (await desk.page.pdf({ preferCSSPageSize: true })).toString("latin1").match(/\/Type \/Page\b/g);
    expect(pages).toHaveLength(1);
    await desk.page.evaluate(() => dispatchEvent(new Event("afterprint")));
    await expect.poll(isPrinting).toBe(false);
  });

  test("says of a share copy that is opened in the grid that it was not checked, and checks it in one act", async () => {
    const [download] = await Promise.all([desk.page.waitForEvent("download"), press("Make a share copy")]);
    const copy = await bytesOf(download);
    desk.page.once("dialog", (question) => question.accept());
    const words = "a share copy, not checked. Check it first: step Share, Check a copy.";
    await openFile(desk, copy, "sent.xlsx", `sent.xlsx: ${words}`);
    await step("Answer");
    await desk.page.getByRole("button", { name: words }).click();
    await pane().getByRole("heading", { name: "sent.xlsx" }).waitFor();
    const asked = desk.page.getByText("what its check says is in the step Share");
    await asked.waitFor();
    await says(/\d+ agree; \d+ cannot be given, since entries are missing/);
    await desk.page.evaluate(() => window.desk.settled()); // the file may still have been calculated
    expect(await asked.count()).toBe(1);
  });

  test("nothing went wrong on the page meanwhile", () => {
    expect(desk.complaints).toEqual([]);
  });
});
