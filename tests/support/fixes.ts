/**
 * Runs the test of each fix of the grid with that fix left out: a fix whose test passes all the same is no longer needed.
 * `npm test` must be green before. `npm run fixes`, or `npm run fixes sort checks` for some.
 */
import { spawnSync } from "node:child_process";
import { readFileSync, rmSync } from "node:fs";
import { FIX_TESTS } from "./fix-tests";

const REPORT = ".cache/fixes.json";

interface Report {
  testResults: { message: string; assertionResults: { title: string; status: string }[] }[];
}

/** What the test of a fix says without it. */
function verdict(fix: string): string {
  const [file, title] = FIX_TESTS[fix]!;
  const asked = ["--config", "tests/vitest.config.mts", `tests/${file}.test.ts`, ...(title ? ["-t", title] : [])];
  rmSync(REPORT, { force: true });
  spawnSync("npx", ["vitest", "run", ...asked, "--bail=1", "--reporter=json", `--outputFile=${REPORT}`], {
    env: { ...process.env, WITHOUT: fix },
    stdio: "ignore",
  });
  let report: Report;
  try {
    report = JSON.parse(readFileSync(REPORT, "utf8"));
  } catch {
    return `not known: tests/${file}.test.ts did not run`;
  }
  const results = report.testResults.flatMap(({ assertionResults }) => assertionResults);
  const failed = results.find(({ status }) => status === "failed");
  if (failed) return `still needed: "${failed.title}" fails`;
  if (results.some(({ status }) => status === "passed")) return `no longer needed: tests/${file}.test.ts passes`;
  return `not known: no test of tests/${file}.test.ts ran. ${report.testResults.map(({ message }) => message).join(" ")}`;
}

const asked = process.argv.slice(2);
for (const fix of Object.keys(FIX_TESTS).filter((name) => asked.length === 0 || asked.includes(name))) {
  const start = Date.now();
  const said = verdict(fix);
  console.log(`${fix.padEnd(16)}${String(Math.round((Date.now() - start) / 1000)).padStart(4)} s  ${said}`);
}
