/** Runs the tests of each fix of the grid with that fix left out: one whose tests pass all the same is no longer needed. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";

const TESTS: Record<string, string> = {
  failures: "fixes",
  endless: "fixes",
  "whole-ranges": "fixes",
  circles: "fixes",
  "empty-texts": "fixes",
  "plain-paste": "fixes",
  "bar-names": "pane-access",
  sort: "calculation",
  comparison: "calculation",
  calculation: "readings",
  editing: "readings",
  checks: "readings",
  "tab-start": "readings",
  "list-values": "lists",
  "list-spelling": "lists",
  "list-opening": "lists",
  "typed-values": "refusals",
  refusals: "refusals",
  "formula-cache": "grid-work",
  dependencies: "grid-work",
  "range-ends": "fixes",
  shades: "grid-work",
  drawing: "grid-work",
  "closed-books": "grid-work",
  "plain-texts": "../desk/plain-texts",
  "old-values": "../desk/old-values",
  "parsed-formulas": "grid-work",
};

const asked = process.argv.slice(2);
for (const [fix, file] of Object.entries(TESTS)) {
  if (asked.length > 0 && !asked.includes(fix)) continue;
  const command = ["vitest", "run", "--config", "tests/vitest.config.mts", join("tests/browser", `${file}.test.ts`)];
  const { status } = spawnSync("npx", command, { env: { ...process.env, WITHOUT: fix }, stdio: "ignore" });
  console.log(
    `${fix.padEnd(14)} ${status === 0 ? `no longer needed: ${file}.test.ts passes without it` : "still needed"}`,
  );
}
