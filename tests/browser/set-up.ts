import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";
import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { DIST, productionBuild } from "./dist";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the built desk is served, and where the browser of the run takes orders. */
    desk: { address: string; browser: string };
  }
}

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
  ".woff2": "font/woff2",
};

/** Serves a folder as soon as it is built; a build that failed answers with its reason. */
function serve(folder: string, built: Promise<void>): Promise<Server> {
  const server = createServer(async (request, response) => {
    try {
      await built;
    } catch (problem) {
      response.writeHead(500).end(String(problem));
      return;
    }
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

/** One build and one browser for a run; other tests go on while it is built. */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const built = productionBuild();
  built.catch(() => {}); // whoever asks for a file is told
  const server = await serve(join(DIST, "desk"), built);
  const browser = await chromium.launchServer({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: FLAGS,
  });
  const { port } = server.address() as AddressInfo;
  project.provide("desk", { address: `http://127.0.0.1:${port}/`, browser: browser.wsEndpoint() });
  return async () => {
    await browser.close();
    server.closeAllConnections();
    server.close();
  };
}
