import { type BrowserContext, chromium, type Download, type Page } from "playwright-core";
import { inject } from "vitest";
import type { Cell, Input } from "../../src/cells/cell";
import type {} from "../../src/desk/script-access";
import type {} from "./set-up";

/** The fix of the grid that is left out, for `npm run fixes`. */
const WITHOUT = process.env.WITHOUT ? `&without=${process.env.WITHOUT}` : "";
const WORKED_SHEET = { sheet: "Example", address: "A1:Z60" };
const WORKED_QUERY = "?example=functions";

export interface Desk {
  page: Page;
  /** What the page complained about since it opened. */
  complaints: string[];
  /** Every address it asked for. */
  requests: string[];
  /** Values once all is calculated. */
  read(address: string, sheet?: string): Promise<Cell[][]>;
  write(address: string, inputs: Input | Input[][], sheet?: string): Promise<void>;
}

export interface Desks {
  /**
   * Opens the page anew, on the worked sheet of the functions, and closes the one before; `first` runs in it before any
   * of its own scripts.
   */
  open(query?: string, first?: () => void): Promise<Desk>;
  /** The open page where it was opened by the same query, with the worked sheet as it came; else opens it. */
  restored(query?: string): Promise<Desk>;
  close(): Promise<void>;
}

/** Waits for the production build of the run. */
export async function built(): Promise<void> {
  const answer = await fetch(inject("desk").address);
  if (!answer.ok) throw new Error(await answer.text());
  await answer.body?.cancel();
}

export async function bytesOf(download: Download): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  for await (const part of await download.createReadStream()) parts.push(part);
  return new Uint8Array(Buffer.concat(parts));
}

/** Chooses a file by the desk's button. */
export async function chooseFile({ page }: Desk, bytes: Uint8Array, name: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Open .xlsx" }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
}

/** Opens a file in a page that nothing was left unsaved in; `said` is what the page then shows. */
export async function openFile(desk: Desk, bytes: Uint8Array, name: string, said = name): Promise<void> {
  await chooseFile(desk, bytes, name);
  await desk.page.getByText(said, { exact: said === name }).waitFor();
}

/** The file that Save gives. */
export async function savedFile({ page }: Desk): Promise<Uint8Array> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save .xlsx" }).click(),
  ]);
  return bytesOf(download);
}

let kept: Promise<BrowserContext> | undefined;

/** One for all pages of a test process, so that they share what was fetched and compiled. */
async function context(): Promise<BrowserContext> {
  const connect = async () => {
    await built();
    const browser = await chromium.connect(inject("desk").browser);
    return browser.newContext({ viewport: { width: 1600, height: 900 } });
  };
  kept ??= connect();
  return kept;
}

/** Opens the built desk in the browser of the run. */
export async function desks(): Promise<Desks> {
  const pages = await context();
  let before: Page | undefined;

  async function open(query = WORKED_QUERY, first?: () => void): Promise<Desk> {
    await before?.close();
    const page = await pages.newPage();
    before = page;
    page.setDefaultTimeout(120_000);
    if (first) await page.addInitScript(first);
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("console", (message) => {
      if (message.type() === "error") complaints.push(message.text());
    });
    const requests: string[] = [];
    page.on("request", (request) => requests.push(request.url()));
    await page.goto(inject("desk").address + query + WITHOUT);
    await page.waitForFunction(() => "desk" in window);
    await page.evaluate(() => window.desk.settled());
    return {
      page,
      complaints,
      requests,
      read: (address, sheet = "Example") =>
        page.evaluate(
          async (asked) => {
            await window.desk.settled();
            return window.desk.read(asked.sheet, asked.address);
          },
          { sheet, address },
        ),
      write: (address, inputs, sheet = "Example") =>
        page.evaluate((given) => window.desk.write(given.sheet, given.address, given.inputs), {
          sheet,
          address,
          inputs,
        }),
    };
  }

  let shared: { query: string; desk: Desk; came: Input[][] } | undefined;

  async function restored(query = WORKED_QUERY): Promise<Desk> {
    if (shared?.query === query && shared.desk.page === before) {
      await shared.desk.write(WORKED_SHEET.address, shared.came);
    } else {
      const desk = await open(query);
      const came = await desk.page.evaluate((area) => window.desk.host.inputs(area), WORKED_SHEET);
      shared = { query, desk, came };
    }
    await shared.desk.page.evaluate(() => window.desk.settled());
    return shared.desk;
  }

  async function close(): Promise<void> {
    await before?.close();
  }
  return { open, restored, close };
}
