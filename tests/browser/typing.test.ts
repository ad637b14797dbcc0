import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startAt, typeByHand } from "./by-hand";
import { type Desk, type Desks, desks } from "./desk-page";

let all: Desks;
beforeAll(async () => {
  all = await desks();
});
afterAll(() => all?.close());

async function type(desk: Desk, formula: string, cell = "G13"): Promise<void> {
  await desk.page.evaluate(() => window.desk.host.settled());
  await startAt(desk, "Example", cell);
  await desk.page.keyboard.type(formula);
  await desk.page.keyboard.press("Enter");
  await expect.poll(async () => (await desk.read(cell))[0]![0]).not.toBeNull();
}

describe("typing at the desk", () => {
  test("a function typed in lower case over the cans gives mean over driest", async () => {
    const desk = await all.restored();
    const cans = (await desk.read("B2:B26")).flat() as number[];
    await type(desk, "=canfall.sc.can(b2:b26)");
    const mean = cans.reduce((sum, can) => sum + can, 0) / cans.length;
    expect((await desk.read("G13"))[0]![0]).toBeCloseTo(mean / Math.min(...cans), 12);
    expect(desk.complaints).toEqual([]);
  });

  test("a typed function that answers with a table fills the cells below and beside it", async () => {
    const desk = await all.restored();
    await desk.write("A30:A32", [[20], [25], [30]]);
    await type(desk, "=canfall.depth.caught(a30:a32,100)");
    const mouthArea = Math.PI * 50 ** 2; // mm2
    const depths = (await desk.read("G13:G15")).flat();
    [20, 25, 30].forEach((can, i) => {
      expect(depths[i]).toBeCloseTo((can * 1000) / mouthArea, 12);
    });
  });

  test("the summary typed over the cans spills its table", async () => {
    const desk = await all.restored();
    const cans = (await desk.read("B2:B26")).flat() as number[];
    await type(desk, "=canfall.summary(b2:b26,15,100)", "M13");
    const mean = cans.reduce((sum, can) => sum + can, 0) / cans.length;
    const unevenness = cans.reduce((sum, can) => sum + Math.abs(can - mean), 0) / cans.length;
    const [head, ...rows] = await desk.read("M13:S20");
    expect(head).toEqual(["measure", "value", "unit", "low", "high", "limit", "verdict"]);
    expect(rows.map(([measure, , unit]) => [measure, unit])).toEqual([
      ["Cans counted", "cans"],
      ["Dry cans", "cans"],
      ["Mean application rate", "mm/h"],
      ["CU (Christiansen)", "%"],
      ["DU (low quarter)", "%"],
      ["SC (driest of 25 cans)", ""],
      ["SC (low quarter)", ""],
    ]);
    const values = rows.map(([, value]) => value);
    expect(values.slice(0, 2)).toEqual([25, 0]);
    expect(values[2]).toBeCloseTo(((mean * 1000) / (Math.PI * 50 ** 2)) * (60 / 15), 10);
    expect(values[3]).toBeCloseTo(100 * (1 - unevenness / mean), 10);
    expect(values[5]).toBeCloseTo(mean / Math.min(...cans), 10);
  });

  test("an error carries the message of the function, under the grid too", async () => {
    const desk = await all.restored();
    await desk.write("B4", "12 ml");
    await type(desk, "=canfall.sc.can(b2:b26)");
    const message = 'readings must be numbers, got "12 ml" in row 3, column 1';
    expect(await desk.read("G13")).toEqual([[{ error: "#VALUE!", message }]]);
    await startAt(desk, "Example", "G13");
    await expect.poll(() => desk.page.textContent("#message")).toBe(`G13 shows #VALUE!: ${message}`);
  });

  test("nothing is fetched from anywhere but the page's own address", async () => {
    const desk = await all.restored();
    expect(desk.requests.length).toBeGreaterThan(2);
    const home = new URL(desk.page.url()).origin;
    expect(
      desk.requests.filter((address) => !/^(data|blob):/.test(address) && new URL(address).origin !== home),
    ).toEqual([]);
    expect(desk.complaints).toEqual([]);
  });

  test("until the pane is there, its place says that it is loading", async () => {
    const desk = await all.restored();
    const page = await desk.page.context().newPage();
    await page.route("**/desk.js", (script) => script.abort());
    await page.goto(desk.page.url());
    expect(await page.locator("#pane").getByRole("status").textContent()).toBe("Loading …");
    await page.close();
    expect(await desk.page.getByText("Loading …").count()).toBe(0);
  });

  test("Enter takes a function from their list only while its name is typed", async () => {
    const desk = await all.restored();
    const cans = (await desk.read("B2:B26")).flat() as number[];
    await startAt(desk, "Example", "G13");
    await desk.page.keyboard.type("=canfall.");
    await desk.page.getByText("CANFALL.CU.CHRISTIANSEN").first().waitFor();
    await desk.page.keyboard.type("sc.can(b2:b26)");
    await desk.page.keyboard.press("Enter");
    const mean = cans.reduce((sum, can) => sum + can, 0) / cans.length;
    await expect.poll(async () => (await desk.read("G13"))[0]![0]).toBeCloseTo(mean / Math.min(...cans), 12);
  });

  test("the list of functions says what each one is while its name is typed", async () => {
    const desk = await all.restored();
    await startAt(desk, "Example", "G13");
    await desk.page.keyboard.type("=canfall.du");
    await desk.page.getByText("CANFALL.DU.QUARTER").first().waitFor();
    await desk.page.getByText("Low-quarter distribution uniformity").first().waitFor();
  });

  test("an entry that our functions refuse is named at once, wherever their cells are on the sheet", async () => {
    const desk = await all.restored();
    await startAt(desk, "Example", "B5");
    await typeByHand(desk, "12 ml", "Enter");
    const rule = /^[A-Z]+\d+ shows #VALUE!: readings must be .*got "12 ml" in row 4(, column 1)?$/;
    await expect.poll(() => desk.page.textContent("#message")).toMatch(rule);
  });
});
