import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

const JSDOM = "// @vitest-environment jsdom";
const root = fileURLToPath(new URL("..", import.meta.url));
const BROWSER = "tests/browser/**/*.test.ts";
/** Those that say in their first line that they need a page: a test process ends where the next file needs another. */
const IN_JSDOM = readdirSync(`${root}tests`, { recursive: true, encoding: "utf8" })
  .filter((path) => /\.test\.tsx?$/.test(path) && readFileSync(`${root}tests/${path}`, "utf8").startsWith(JSDOM))
  .map((path) => `tests/${path}`);
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

/** Fluent is thousands of modules, which each test file of the pane would load one by one. */
const FLUENT = {
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
};

/** Files of the last project that take long for their size: first in it, so that no core waits for one of them at the end. */
const LONG = ["taskpane/map.test.tsx", "taskpane/access.test.tsx"];
const isLong = ({ moduleId }: TestSpecification) => LONG.some((name) => moduleId.endsWith(name));

/** Projects follow one another; in each the long files are first, then the others by their size. */
class Order extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const projects = [...new Set(sorted.map(({ project }) => project))];
    return projects.flatMap((project) => {
      const own = sorted.filter((file) => file.project === project);
      return [...own.filter(isLong), ...own.filter((file) => !isLong(file))];
    });
  }
}

export default defineConfig({
  cacheDir: `${root}.cache/vitest`,
  test: {
    root,
    testTimeout: 60_000,
    hookTimeout: 300_000,
    expect: { poll: { timeout: 20_000 } },
    maxWorkers: 2,
    sequence: { sequencer: Order },
    // tests make much that is soon thrown away: with more room for it, collecting takes a sixth less of the time
    execArgv: ["--max-semi-space-size=128", "--single-threaded-gc"],
    projects: [
      {
        extends: true,
        test: {
          name: "node",
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: [BROWSER, ...IN_JSDOM, ...ALONE],
          isolate: false, // the files of a test process share what they import, which took a minute in all
          globalSetup: "tests/support/offices.ts",
        },
      },
      {
        extends: true,
        test: {
          name: "pane",
          include: IN_JSDOM,
          deps: FLUENT,
          exclude: ALONE,
          isolate: false, // the files of a test process share what they import: Fluent takes seconds
        },
      },
      { extends: true, test: { name: "alone", include: ALONE, deps: FLUENT } },
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
