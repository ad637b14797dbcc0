import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));
const BROWSER = "tests/browser/**/*.test.ts";
const PANE = "tests/taskpane/**/*.test.{ts,tsx}";
/** Each has a process of its own: it replaces a module, needs none of a host's names, or takes Microsoft's client in. */
const ALONE = [
  "tests/core/figures.test.ts",
  "tests/functions/answer.test.ts",
  "tests/hosts/*excel*.test.ts",
  "tests/taskpane/excel-faults.test.tsx",
  "tests/taskpane/localised.test.tsx",
  "tests/taskpane/night.test.tsx",
  "tests/taskpane/excel-requests.test.tsx",
];

export default defineConfig({
  cacheDir: `${root}.cache/vitest`,
  test: {
    root,
    testTimeout: 60_000,
    hookTimeout: 300_000,
    expect: { poll: { timeout: 20_000 } },
    maxWorkers: 2,
    // tests make much that is soon thrown away: with more room for it, collecting takes a sixth less of the time
    execArgv: ["--max-semi-space-size=128", "--single-threaded-gc"],
    deps: {
      // for the tests of the pane: Fluent is thousands of modules, which each test file would load one by one
      optimizer: {
        client: {
          enabled: true,
          include: [
            "@fluentui/react-components",
            "react",
            "react-dom",
            "react-dom/client",
            "react/jsx-dev-runtime",
            "react/jsx-runtime",
          ],
        },
      },
    },
    projects: [
      {
        extends: true,
        test: {
          name: "node",
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: [BROWSER, PANE, ...ALONE],
          isolate: false, // the files of a test process share what they import, which took a minute in all
          globalSetup: "tests/support/offices.ts",
        },
      },
      {
        extends: true,
        test: {
          name: "pane",
          include: [PANE],
          exclude: ALONE,
          isolate: false, // the files of a test process share what they import: Fluent takes seconds
        },
      },
      { extends: true, test: { name: "alone", include: ALONE } },
      {
        extends: true,
        test: {
          name: "page",
          include: [BROWSER],
          globalSetup: "tests/browser/set-up.ts",
          isolate: false, // the files of a test process share its browser window
        },
      },
    ],
  },
});
