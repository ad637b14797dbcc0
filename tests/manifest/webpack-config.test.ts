import { createRequire } from "node:module";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";

type Env = Record<string, boolean>;
interface Config {
  devServer?: { server?: { type: string; options: unknown } };
}

const require = createRequire(import.meta.url);
const CERTIFICATES = require.resolve("office-addin-dev-certs");
const load = require("../../webpack.config.js") as (env: Env) => Promise<Config | Config[]>;
const made = vi.fn(async () => ({ cert: "a certificate for the test" }));

/** Stands in for the package that makes certificates, and counts how often it is asked for one. */
const stub = { id: CERTIFICATES, filename: CERTIFICATES, loaded: true, exports: { getHttpsServerOptions: made } };

beforeAll(() => {
  require.cache[CERTIFICATES] = stub as unknown as NodeJS.Module;
  vi.stubEnv("CANFALL_URL", "https://canfall.example/");
  process.argv.push("--port 0"); // any free port
});
afterAll(() => {
  delete require.cache[CERTIFICATES];
  vi.unstubAllEnvs();
  process.argv.pop();
});

describe("the settings of webpack", () => {
  test.each<[what: string, env: Env]>([
    ["a production build", { production: true, WEBPACK_BUNDLE: true, WEBPACK_BUILD: true }],
    ["a build of the desk", { desk: true, WEBPACK_BUNDLE: true, WEBPACK_BUILD: true }],
    ["a build of the add-in", { WEBPACK_BUNDLE: true, WEBPACK_BUILD: true }],
    ["serving the desk", { desk: true, WEBPACK_SERVE: true }],
    ["a tool that only reads them", {}],
  ])("make no certificate for %s", async (_what, env) => {
    made.mockClear();
    const configs = [await load(env)].flat();
    expect(made).not.toHaveBeenCalled();
    for (const { devServer } of configs) expect(devServer?.server).toBeUndefined();
  });

  test("make one for serving the add-in to Excel", async () => {
    made.mockClear();
    const { devServer } = (await load({ WEBPACK_SERVE: true })) as Config;
    expect(made).toHaveBeenCalledOnce();
    expect(devServer?.server).toEqual({ type: "https", options: { cert: "a certificate for the test" } });
  });
});
