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
   * The worked sheet of the functions, or the example that the query names, as it comes, in the page that the test
   * files of a process share: opened in place of what they left.
   */
  open(query?: string): Promise<Desk>;
  /** A page of its own, closed by the next one and at the end; `first` runs in it before any of its own scripts. */
  anew(query?: string, first?: () => void): Promise<Desk>;
  /** The shared page; where the worked sheet is still open only its cells are written as they came. */
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

/** The open workbook as a file, in letters: as a list of numbers it takes seconds on its way out of the page. */
const bookLetters = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const bytes = await window.desk.host.bytes();
    return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
  });

/** The open workbook as a file. */
export const bookBytes = async (page: Page) => new Uint8Array(Buffer.from(await bookLetters(page), "base64"));

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

/** The file that Save gives; where it asks first, since something of the file can't go along, `answer` is pressed. */
export async function savedFile({ page }: Desk, answer?: string): Promise<Uint8Array> {
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save .xlsx" }).click();
  if (answer !== undefined) {
    const button = page.getByRole("button", { name: answer });
    await Promise.race([download, button.waitFor()]);
    if (await button.isVisible()) await button.click();
  }
  return bytesOf(await download);
}

let pages: Promise<BrowserContext> | undefined;

/** One for all pages of a test process, so that they share what was fetched and compiled. */
async function context(): Promise<BrowserContext> {
  const connect = async () => {
    await built();
    const browser = await chromium.connect(inject("desk").browser);
    return browser.newContext({ viewport: { width: 1600, height: 900 } });
  };
  pages ??= connect();
  return pages;
}

async function newPage(query: string, first?: () => void): Promise<Desk> {
  const page = await (await context()).newPage();
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
  await page.evaluate(async () => {
    Object.assign(window, { asks: window.confirm });
    await window.desk.settled();
  });
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

/** The page that the test files of a process share. */
interface Shared {
  desk: Desk;
  /** What its address says of the desk itself. */
  settings: string;
  /** What the worked sheet's cells hold as it comes, and that sheet as a file in letters; null before it was opened. */
  worked: { inputs: Input[][]; file: string } | null;
}

let shared: Shared | undefined;

const EXAMPLES: Record<string, [file: string, sheet: string]> = {
  audit: ["example-audit.xlsx", "Results"],
  nursery: ["example-nursery.xlsx", "Program"],
};
const WORKED_FILE = "worked.xlsx";

const exampleOf = (query: string) => new URLSearchParams(query).get("example") ?? "audit";
const settingsOf = (query: string) => query.replace(/[?&]example=\w+/, "");

/** Takes back what a test put in place of the browser's own question, and the answers that it gave. */
async function asksAgain(page: Page): Promise<void> {
  page.removeAllListeners("dialog");
  await page.evaluate(() => Object.assign(window, { confirm: (window as unknown as { asks: unknown }).asks }));
}

/** Opens an example in the shared page; false where only a new page can. */
async function openedAgain({ desk: { page, complaints }, worked }: Shared, example: string): Promise<boolean> {
  if (example === "functions" && !worked) return false;
  page.setDefaultTimeout(120_000);
  await page.keyboard.press("Escape");
  await page.evaluate(
    async ([name, sheet, file]) => {
      window.confirm = () => true;
      localStorage.clear();
      const bytes =
        file === null
          ? new Uint8Array(await (await fetch(name)).arrayBuffer())
          : Uint8Array.from(atob(file), (sign) => sign.charCodeAt(0));
      await window.desk.host.openBook(bytes, name);
      await window.desk.host.select({ sheet, address: "A1" });
      await window.desk.settled();
    },
    example === "functions"
      ? ([WORKED_FILE, WORKED_SHEET.sheet, worked!.file] as const)
      : ([...EXAMPLES[example]!, null] as const),
  );
  await asksAgain(page);
  complaints.length = 0;
  return true;
}

/** Opens the built desk in the browser of the run. */
export async function desks(): Promise<Desks> {
  await built(); // here, so that no test's own time counts it
  let own: Page | undefined;

  async function anew(query = WORKED_QUERY, first?: () => void): Promise<Desk> {
    await own?.close();
    const desk = await newPage(query, first);
    own = desk.page;
    return desk;
  }

  async function open(query = WORKED_QUERY): Promise<Desk> {
    const [example, settings] = [exampleOf(query), settingsOf(query)];
    if (shared?.settings === settings && (await openedAgain(shared, example))) return shared.desk;
    await shared?.desk.page.close();
    shared = undefined;
    const desk = await newPage(query);
    const isWorked = example === "functions";
    const inputs = isWorked ? await desk.page.evaluate((area) => window.desk.host.inputs(area), WORKED_SHEET) : [];
    const worked = isWorked ? { inputs, file: await bookLetters(desk.page) } : null;
    shared = { desk, settings, worked };
    return desk;
  }

  async function restored(query = WORKED_QUERY): Promise<Desk> {
    if (!shared?.worked || shared.settings !== settingsOf(query)) return open(query);
    const { page } = shared.desk;
    const [sheets, name] = await page.evaluate(async () => [
      await window.desk.host.sheets(),
      document.getElementById("file")!.textContent,
    ]);
    if (String(sheets) !== WORKED_SHEET.sheet || !["", WORKED_FILE].includes(String(name))) return open(query);
    await asksAgain(page);
    await shared.desk.write(WORKED_SHEET.address, shared.worked.inputs);
    await page.evaluate(() => window.desk.settled());
    return shared.desk;
  }

  return { open, anew, restored, close: async () => own?.close() };
}
