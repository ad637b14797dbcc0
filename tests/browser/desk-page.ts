import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import type { Cell, Input } from "../../src/cells/cell";
import type {} from "../../src/desk/script-access";
import { productionBuild } from "./dist";

const WORKED_SHEET = { sheet: "Example", address: "A1:Z60" };
const WORKED_QUERY = "?example=functions";
const FLAGS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
const TYPES: Record<string, string> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
};

function serve(folder: string): Promise<Server> {
  const server = createServer((request, response) => {
    const path = normalize(new URL(request.url ?? "/", "http://desk").pathname);
    const file = join(folder, path === "/" ? "index.html" : path);
    if (!existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, {
      "Content-Type": TYPES[extname(file)] ?? "application/octet-stream",
      "Cache-Control": "max-age=3600",
    });
    createReadStream(file).pipe(response);
  });
  return new Promise((ready) => server.listen(0, "127.0.0.1", () => ready(server)));
}

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

/** Serves the built desk and drives it in a browser. */
export async function desks(): Promise<Desks> {
  const server = await serve(join(await productionBuild(), "desk"));
  const browser: Browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: FLAGS,
  });
  const { port } = server.address() as AddressInfo;

  /** One for all pages, so that they share what was fetched and compiled. */
  const context = await browser.newContext({ viewport: { width: 1600, height: 900 } });
  let before: Page | undefined;

  async function open(query = WORKED_QUERY, first?: () => void): Promise<Desk> {
    await before?.close();
    const page = await context.newPage();
    before = page;
    if (first) await page.addInitScript(first);
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("console", (message) => {
      if (message.type() === "error") complaints.push(message.text());
    });
    const requests: string[] = [];
    page.on("request", (request) => requests.push(request.url()));
    await page.goto(`http://127.0.0.1:${port}/${query}`);
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
    await browser.close();
    server.close();
  }
  return { open, restored, close };
}
