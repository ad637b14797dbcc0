import { join } from "node:path";
import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { DIST, productionBuild } from "./dist";
import { serve } from "./serve";

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
/** One build and one browser for a run; other tests go on while it is built. */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const built = productionBuild();
  built.catch(() => {}); // whoever asks for a file is told
  const desk = await serve(join(DIST, "desk"), { built });
  const browser = await chromium.launchServer({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: FLAGS,
  });
  project.provide("desk", { address: desk.address, browser: browser.wsEndpoint() });
  return async () => {
    await browser.close();
    desk.close();
  };
}
