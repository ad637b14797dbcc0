import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { clickArrow, selected as selectedIn, startAt, typeLine as typeInto } from "./by-hand";
import { type Desk, type Desks, desks } from "./desk-page";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.open("?example=nursery");
  desk.page.setDefaultTimeout(60_000);
}, 300_000);
afterAll(() => all?.close());

const list = () => desk.page.locator('[data-u-comp="sheets-dropdown-list"]');
const selected = () => selectedIn(desk);
const typeLine = (...words: string[]) => typeInto(desk, ...words);

async function openList(): Promise<void> {
  await startAt(desk, "Program", "B32");
  await clickArrow(desk, "Program", "B27");
  await expect.poll(selected).toEqual({ sheet: "Program", address: "B27" });
}

/** The names on the sheet Demand that the cells of the sheets Program and Weighings take. */
const GROUPS = ["tubes 50", "herbs 140", "shrubs 190", "natives 200", "trees 400"];

describe("cells with a list at the desk", { timeout: 240_000 }, () => {
  test("take a listed word as it is typed, and the next cells what follows it", async () => {
    const named = (await desk.page.evaluate(() => window.desk.host.named("Demand_Groups")))!;
    expect((await desk.read(named.address, named.sheet))[0]!.slice(0, 5)).toEqual(GROUPS);
    await startAt(desk, "Program", "A31");
    await typeLine("Fern house", "shrubs 190", "120", "14");
    await typeLine("Herb bay", "Herbs 140", "80", "12.5");
    await expect
      .poll(() => desk.read("A31:D32", "Program"))
      .toEqual([
        ["Fern house", "shrubs 190", 120, 14],
        ["Herb bay", "herbs 140", 80, 12.5],
      ]);
    await expect.poll(selected).toEqual({ sheet: "Program", address: "A33" });
    expect(await list().count()).toBe(0);
  });

  test("take a name that was written on the list's sheet a moment before", async () => {
    const { address } = (await desk.page.evaluate(() => window.desk.host.named("Demand_Groups")))!;
    const [first = "C", row = "4"] = /^([A-Z]+)(\d+)/.exec(address)!.slice(1);
    await startAt(desk, "Demand", `${String.fromCharCode(first.charCodeAt(0) + 5)}${row}`);
    await typeLine("Ferns 140");
    await startAt(desk, "Program", "B31");
    await typeLine("Ferns 140", "130", "15");
    await expect.poll(() => desk.read("B31:D31", "Program")).toEqual([["Ferns 140", 130, 15]]);
  });

  test("refuse another word, in words, and stay as they were", async () => {
    await startAt(desk, "Program", "B32");
    await typeLine("hedges");
    await desk.page.getByRole("button", { name: /^OK$/i }).waitFor();
    await desk.page.getByRole("button", { name: /^OK$/i }).click();
    await desk.page.keyboard.press("Escape");
    await expect.poll(() => desk.read("B32", "Program")).toEqual([["herbs 140"]]);
  });

  test("take a word of a list that is written into the check, too", async () => {
    const { address } = (await desk.page.evaluate(() => window.desk.host.named("Demand_Shapes")))!;
    const [first] = address.split(":");
    await startAt(desk, "Demand", first!);
    await typeLine("Round");
    await expect.poll(() => desk.read(first!, "Demand")).toEqual([["round"]]);
  });

  test("show their list where the arrow is clicked, and take what is chosen", async () => {
    await openList();
    await expect.poll(() => list().count()).toBe(1);
    expect(await list().getByText("Ferns 140").count()).toBe(1);
    await list().getByText("trees 400").click();
    await expect.poll(() => desk.read("B27", "Program")).toEqual([["trees 400"]]);
    expect(await list().count()).toBe(0);
  });

  test("close their list where one types, moves on or presses Escape", async () => {
    await openList();
    await typeLine("shrubs 190");
    await expect.poll(() => desk.read("B27", "Program")).toEqual([["shrubs 190"]]);
    expect(await list().count()).toBe(0);
    await expect.poll(selected).toEqual({ sheet: "Program", address: "B28" });
    for (const key of ["ArrowDown", "Escape"]) {
      await openList();
      await expect.poll(() => list().count()).toBe(1);
      await desk.page.keyboard.press(key);
      await expect.poll(() => list().count()).toBe(0);
    }
    await expect.poll(() => desk.read("B27:B28", "Program")).toEqual([["shrubs 190"], ["tubes 50"]]);
    expect(desk.complaints).toEqual([]);
  });
});
