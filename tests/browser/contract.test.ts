import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { contract } from "../../src/hosts/contract/contract";
import { contractFile } from "../../src/hosts/contract/file";
import type { Host } from "../../src/hosts/host";
import { bytesOf, type Desks, desks } from "./desk-page";
import { pageHost } from "./page-host";

let all: Desks;
let page: Page;
let host: Host;
beforeAll(async () => {
  all = await desks();
  page = (await all.open()).page;
  host = await pageHost(page);
});
afterAll(() => all?.close());

describe("the desk as a host", () => {
  for (const { name, check } of contract) test(name, () => check(host));

  test("a finished file goes to the downloads", async () => {
    const arrives = page.waitForEvent("download");
    const bytes = new Uint8Array([98, 108, 111, 99, 107]);
    expect(await host.deliver(bytes, "register.csv")).toBe("register.csv went to your downloads.");
    const download = await arrives;
    expect(download.suggestedFilename()).toBe("register.csv");
    expect(await bytesOf(download)).toEqual(bytes);
  });

  test("a file takes the place of unsaved work only when the person agrees", async () => {
    const file = contractFile("Cans", "Results", "Cans_Readings");
    const [sheet] = await host.sheets();
    await host.write({ sheet: sheet!, address: "Z1" }, [["not saved"]]);
    page.once("dialog", (question) => question.dismiss());
    expect(await host.openBook(file, "audit.xlsx")).toBe(false);
    expect(await host.read({ sheet: sheet!, address: "Z1" })).toEqual([["not saved"]]);
    page.once("dialog", (question) => question.accept());
    expect(await host.openBook(file, "audit.xlsx")).toBe(true);
    expect(await host.sheets()).toEqual(["Cans", "Results"]);
    expect(await host.named("Cans_Readings")).toEqual({ sheet: "Cans", address: "A1:A3" });
  });
});
