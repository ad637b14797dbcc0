import { strFromU8, strToU8, zipSync } from "fflate";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { foreignParts } from "../foreign/foreign-parts";
import { startAt, typeByHand } from "./by-hand";
import { type Desk, type Desks, desks, openFile } from "./desk-page";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.anew("?example=audit");
  desk.page.setDefaultTimeout(60_000);
  await desk.page.evaluate(forgetAll); // what other tests left behind
}, 300_000);
afterAll(() => all?.close());

const offer = (page: Page) => page.getByRole("button", { name: /^Restore the work of .+ on example-audit\.xlsx$/ });

/** The half-typed texts that the browser keeps. */
const noted = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<string[]>((done) => {
        const asked = indexedDB.open("canfall", 1);
        asked.onsuccess = () => {
          const drafts = asked.result.transaction("drafts").objectStore("drafts").getAll();
          drafts.onsuccess = () => {
            asked.result.close();
            done(drafts.result.map(({ text }: { text: string }) => text));
          };
        };
      }),
  );

/** How many works, or acts, the browser has noted. */
const noting = (kind: "works" | "edits") =>
  new Promise<number>((done) => {
    const asked = indexedDB.open("canfall", 1);
    asked.onsuccess = () => {
      const all = asked.result.transaction(kind).objectStore(kind).count();
      all.onsuccess = () => {
        asked.result.close();
        done(all.result);
      };
    };
  });

const forgetAll = () =>
  new Promise<void>((done) => {
    const asked = indexedDB.open("canfall", 1);
    asked.onsuccess = () => {
      const all = ["works", "edits", "drafts"];
      const change = asked.result.transaction(all, "readwrite");
      for (const name of all) change.objectStore(name).clear();
      change.oncomplete = () => {
        asked.result.close();
        done();
      };
    };
  });

/** Ends the process of the page, as a crash does. */
const kill = (page: Page) => page.goto("chrome://crash", { timeout: 5000 }).catch(() => {});

describe("work that was not saved", { timeout: 180_000 }, () => {
  test("is back after the tab was killed in the middle of typing, with the half-typed text in its cell", async () => {
    await startAt(desk, "Cans", "G6");
    await typeByHand(desk, "41", "Enter");
    await typeByHand(desk, "42", "Enter");
    await desk.page.keyboard.type("4");
    await desk.page.keyboard.type("3");
    await expect.poll(() => noted(desk.page), { timeout: 30_000 }).toEqual(["43"]);
    await kill(desk.page);
    desk = await all.anew("?example=audit");
    expect((await desk.read("G6:G7", "Cans")).flat()).not.toEqual([41, 42]);
    await desk.page.getByText("nothing leaves the machine").waitFor();
    await offer(desk.page).click();
    await expect.poll(() => desk.read("G6:G7", "Cans"), { timeout: 30_000 }).toEqual([[41], [42]]);
    await expect
      .poll(() => desk.page.evaluate(() => window.desk.host.selection()))
      .toEqual({
        sheet: "Cans",
        address: "G8",
      });
    await desk.page.keyboard.press("Enter");
    await expect.poll(() => desk.read("G8", "Cans"), { timeout: 30_000 }).toEqual([[43]]);
    expect(await offer(desk.page).count()).toBe(0);
  });

  test("is not offered by another tab while its own is open", async () => {
    const other = await desk.page.context().newPage();
    await other.goto(desk.page.url().replace("audit", "functions"));
    await other.waitForFunction(() => "desk" in window);
    await other.waitForTimeout(500);
    expect(await offer(other).isVisible()).toBe(false);
    await other.close();
  });

  test("is forgotten once it is saved", async () => {
    const download = desk.page.waitForEvent("download");
    await desk.page.getByRole("button", { name: "Save .xlsx" }).click();
    await download;
    await expect.poll(() => desk.page.evaluate(noting, "works" as const), { timeout: 30_000 }).toBe(0);
    desk = await all.anew();
    await desk.page.waitForTimeout(500);
    expect(await offer(desk.page).isVisible()).toBe(false);
    expect(desk.complaints).toEqual([]);
  });

  test("is discarded only where that is meant", async () => {
    await desk.write("B2", 77);
    await expect.poll(() => desk.page.evaluate(noting, "edits" as const)).toBe(1);
    await kill(desk.page);
    desk = await all.anew("?example=audit");
    const discard = desk.page.getByRole("button", { name: "Discard", exact: true });
    await discard.click();
    await desk.page.getByText(/^Discard the work of .+\? It can't be brought back\.$/).waitFor();
    await desk.page.keyboard.press("Escape");
    await discard.click();
    await desk.page.getByRole("button", { name: "Discard it" }).click();
    await expect.poll(() => desk.page.evaluate(noting, "works" as const)).toBe(0);
    expect(await discard.isVisible()).toBe(false);
  });

  test("is back with rows that came just before a crash, beside a file that changed since", async () => {
    const bed = (title: string) => {
      const parts = foreignParts();
      const [part, texts] = ["xl/worksheets/sheet1.xml", "xl/sharedStrings.xml"] as const;
      const sheet = strFromU8(parts[part]!).replace(/<sheetProtection [^>]*>/, "");
      const words = strFromU8(parts[texts]!).replace("Caught", title);
      const book = strFromU8(parts["xl/workbook.xml"]!).replace(' state="veryHidden"', "");
      return zipSync({
        ...parts,
        [part]: strToU8(sheet),
        [texts]: strToU8(words),
        "xl/workbook.xml": strToU8(book),
      });
    };
    await openFile(desk, bed("As it was"), "bed.xlsx");
    await desk.page.evaluate(async () => {
      const book = window.desk.grid.api.getActiveWorkbook()!;
      book.getSheetByName("Bed 7")!.insertRowsBefore(2, 1);
      await window.desk.write("Bed 7", "A3", 25);
      // on the sheet that does not open in front
      book.setActiveSheet(book.getSheetByName("Secret")!);
      book.getSheetByName("Secret")!.deleteRows(2, 1);
    });
    await expect.poll(() => desk.page.evaluate(noting, "edits" as const)).toBeGreaterThan(2);
    await kill(desk.page);
    desk = await all.anew("?example=audit");
    await openFile(desk, bed("As it is now"), "bed.xlsx");
    await desk.page.getByRole("button", { name: /^Restore the work of .+ on bed\.xlsx$/ }).click();
    await desk.page.getByText("bed (2).xlsx: the work goes on from bed.xlsx as it was before it changed").waitFor();
    expect((await desk.read("A1:A5", "Bed 7")).flat()).toEqual(["As it was", 20, 25, 30, 40]);
    expect(await desk.read("D5", "Bed 7")).toEqual([[115]]); // 20 + 25 + 30 + 40
  });
});
