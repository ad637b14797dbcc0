/** The desk in Chromium: its start against the bare grid, an entry to settled figures, many entries, many files. */
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import type {} from "@univerjs/preset-sheets-core";
import { build } from "esbuild";
import { type Browser, chromium, type Page } from "playwright-core";
import type {} from "../../src/desk/script-access";
import { DIST, productionBuild } from "../browser/dist";

const [STARTS = 5, EDITS = 500, CYCLES = 30] = process.argv.slice(2).map(Number);
const BARE = ".cache/bare-grid";
const TYPES: [end: string, type: string][] = [
  ["html", "text/html"],
  ["js", "text/javascript"],
  ["css", "text/css"],
];
const BARE_PAGE =
  '<!doctype html><link rel="stylesheet" href="bare-grid.css"><div id="grid" style="height:900px"></div><script type="module" src="bare-grid.js"></script>';

const median = (of: number[]) => [...of].sort((a, b) => a - b)[Math.floor(of.length / 2)]!;
const mean = (of: number[]) => of.reduce((sum, one) => sum + one, 0) / of.length;

let book = "";
function served(path: string): Uint8Array | string {
  if (path === "/empty/") return "";
  if (path === "/bare/") return BARE_PAGE;
  if (path === "/book.json") return book;
  if (path.startsWith("/bare/")) return readFileSync(join(BARE, path.slice("/bare".length)));
  return readFileSync(join(DIST, "desk", path === "/" ? "index.html" : path));
}

const server = createServer((request, response) => {
  const path = new URL(request.url ?? "/", "http://desk").pathname;
  try {
    const body = served(path);
    const type = path.endsWith("/") ? "text/html" : TYPES.find(([end]) => path.endsWith(end))?.[1];
    response.writeHead(200, { "Content-Type": type ?? "application/octet-stream" }).end(body);
  } catch {
    response.writeHead(404).end();
  }
});

/**
 * When a page can be used: the grid has drawn the workbook and takes keys; at the desk files open and save too, and the
 * pane shows its step with the answer.
 */
const USABLE = {
  bare: () => "ready" in window,
  desk: () => "desk" in window && document.querySelector("#pane .answer")?.textContent,
};

/** Milliseconds until the page can be used, in a browser that has compiled it before. */
async function start(page: Page, address: string, usable: () => unknown): Promise<number> {
  await page.goto(new URL("/empty/", address).href); // so that leaving the page before is not counted
  const from = performance.now();
  await page.goto(address);
  await page.waitForFunction(usable);
  return performance.now() - from;
}

async function heap(page: Page): Promise<number> {
  const inside = await page.context().newCDPSession(page);
  await inside.send("HeapProfiler.collectGarbage");
  const { usedSize } = await inside.send("Runtime.getHeapUsage");
  await inside.detach();
  return usedSize / 1e6;
}

/** Seconds of the processor that the page's own thread has had, whatever else the machine does. */
async function processor(page: Page): Promise<() => Promise<number>> {
  const inside = await page.context().newCDPSession(page);
  await inside.send("Performance.enable", { timeDomain: "threadTicks" });
  return async () => {
    const { metrics } = await inside.send("Performance.getMetrics");
    return metrics.find(({ name }) => name === "TaskDuration")!.value;
  };
}

/** Milliseconds from each entry to settled figures. */
const edits = (page: Page, count: number): Promise<number[]> =>
  page.evaluate(async (many) => {
    const times: number[] = [];
    for (let i = 0; i < many; i += 1) {
      const from = performance.now();
      await window.desk.write("Cans", "G6", 20 + (i % 40));
      await window.desk.settled();
      times.push(performance.now() - from);
    }
    return times;
  }, count);

/** Saves the open file and opens it again. */
const cycle = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await window.desk.host.openBook(await window.desk.host.bytes(), "audit.xlsx");
    await window.desk.settled();
  });

/** Megabytes after the tenth cycle and after the last, and seconds a cycle in the first ten and the last ten. */
async function cycles(page: Page, count: number): Promise<void> {
  const times: number[] = [];
  let tenth = 0;
  for (let i = 1; i <= count; i += 1) {
    const from = performance.now();
    await cycle(page);
    times.push((performance.now() - from) / 1000);
    if (i === Math.min(10, count)) tenth = await heap(page);
  }
  const last = await heap(page);
  const [early, late] = [times.slice(0, 10), times.slice(-10)].map(mean);
  console.log(
    `| seconds to save and open, the first and the last ten of ${count} | ${early!.toFixed(1)}, ${late!.toFixed(1)} |`,
  );
  console.log(
    `| memory after 10 and ${count} times of that, ratio | ${tenth.toFixed(0)} MB, ${last.toFixed(0)} MB, ${(last / tenth).toFixed(2)} |`,
  );
}

async function measure(browser: Browser, address: string): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 1600, height: 900 } });
  page.on("dialog", (dialog) => dialog.accept()); // what is unsaved may go
  await start(page, address, USABLE.desk);
  book = await page.evaluate(() => JSON.stringify(window.desk.grid.api.getActiveWorkbook()!.save()));
  await start(page, `${address}bare/`, USABLE.bare);
  const [desk, bare]: [number[], number[]] = [[], []];
  for (let i = 0; i < STARTS; i += 1) {
    bare.push(await start(page, `${address}bare/`, USABLE.bare));
    desk.push(await start(page, address, USABLE.desk));
  }
  console.log("| what | figure |\n| --- | --- |");
  const ratio = median(desk) / median(bare);
  console.log(
    `| start: desk, bare grid, ratio (median of ${STARTS}) | ${median(desk).toFixed(0)} ms, ${median(bare).toFixed(0)} ms, ${ratio.toFixed(2)} |`,
  );
  await page.evaluate(() => window.desk.settled());
  await edits(page, Math.min(10, EDITS));
  const before = await heap(page);
  const used = await processor(page);
  const from = await used();
  const times = await edits(page, EDITS);
  const busy = ((await used()) - from) * 1000;
  const tenth = Math.ceil(EDITS / 10);
  console.log(`| a changed reading to settled figures (median of ${EDITS}) | ${median(times).toFixed(0)} ms |`);
  console.log(
    `| of that on the processor, drawing and the pane's refresh included (mean) | ${(busy / EDITS).toFixed(0)} ms |`,
  );
  console.log(
    `| the first and the last tenth of ${EDITS} entries (mean) | ${mean(times.slice(0, tenth)).toFixed(0)} ms, ${mean(times.slice(-tenth)).toFixed(0)} ms |`,
  );
  console.log(
    `| memory before and after ${EDITS} entries | ${before.toFixed(0)} MB, ${(await heap(page)).toFixed(0)} MB |`,
  );
  if (CYCLES > 0) await cycles(page, CYCLES);
}

async function bench(): Promise<void> {
  await productionBuild();
  await build({
    entryPoints: ["tests/bench/bare-grid.ts"],
    bundle: true,
    minify: true,
    format: "esm",
    splitting: true, // what the grid fetches only when it needs it stays apart, as at the desk
    outdir: BARE,
    logLevel: "error",
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu"],
  });
  try {
    await measure(browser, `http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  } finally {
    await browser.close();
    server.close();
  }
}

void bench();
