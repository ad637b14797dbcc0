import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, inject, test } from "vitest";
import { built } from "./desk-page";
import { DIST } from "./dist";
import { serve } from "./serve";

let browser: Browser;
let page: Page;
let host: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  await built();
  browser = await chromium.connect(inject("desk").browser);
});
afterEach(async () => {
  await page.context().close();
  host.close();
});
afterAll(() => browser.close());

/** The built folder below the root of a plain host. */
async function open(headers: Record<string, string>, name = ""): Promise<void> {
  host = await serve(DIST, { under: "/tools/canfall/", headers });
  page = await (await browser.newContext()).newPage();
  await page.goto(host.address + name);
}
const result = () => page.locator("#host-result");

test("the folder's first page leads to the desk and to the manifest, and the check of the host names its address", async () => {
  await open({ "Access-Control-Allow-Origin": "*" });
  const download = page.waitForEvent("download");
  await page.getByRole("link", { name: "download the manifest" }).click();
  expect((await download).suggestedFilename()).toBe("canfall-manifest.xml");
  await page.getByText("It was built for another address than this page's").waitFor();
  await page.getByRole("button", { name: "Check this host" }).click();
  await result().getByText("not ready").waitFor();
  const found = await result().locator("li").allTextContents();
  expect(found).toHaveLength(2); // this host is plain http at another address; all else is as Excel needs it
  expect(found[0]).toContain("Excel takes https addresses only");
  expect(found[1]).toContain(`build it again with CANFALL_URL=${host.address}`);
  await page.getByRole("link", { name: "Open the desk" }).click();
  await page.locator("#open").waitFor();
  expect(page.url()).toBe(`${host.address}desk/index.html`);
});

test("the check of a host without the header for other origins names that header", async () => {
  await open({});
  await page.getByRole("button", { name: "Check this host" }).click();
  await result().getByText("Access-Control-Allow-Origin: *").waitFor();
});

test("a page saves the table that is pasted on it, and says what to do where there is none", async () => {
  await open({}, "save.html?name=start+times.csv");
  const paste = (text: string) =>
    page.evaluate((pasted) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData("text/plain", pasted);
      document.body.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true }));
    }, text);
  await paste("one word");
  await page.getByText("The clipboard holds no table").waitFor();
  const download = page.waitForEvent("download");
  await paste("Block\tMinutes\r\nA, north\t12.5");
  const saved = await download;
  expect(saved.suggestedFilename()).toBe("start times.csv");
  // RFC 4180: a field with a comma is quoted, lines end with CRLF; the byte order mark tells programs that it is UTF-8
  let text = "";
  for await (const part of await saved.createReadStream()) text += part;
  expect(text).toBe('\ufeffBlock,Minutes\r\n"A, north",12.5\r\n');
});

test("the pane's page opened without Excel leads to the first page", async () => {
  await open({}, "taskpane.html");
  await page.waitForURL(`${host.address}index.html`);
  await page.getByRole("heading", { name: "Put it into Excel" }).waitFor();
});
