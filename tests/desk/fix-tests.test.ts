import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { FIX_TESTS } from "../support/fix-tests";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const FOLDER = `${ROOT}src/desk/univer-fixes/`;

it("every fix of the grid has a test that is there, and says what is wrong, since when, and what it needs", () => {
  const fixes = readdirSync(FOLDER, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => readFileSync(FOLDER + file, "utf8"))
    .filter((source) => /: Fix = \{/.test(source));
  const names = fixes.map((source) => /\bname: "([^"]+)"/.exec(source)![1]!);
  expect(names.length).toBeGreaterThan(20);
  expect(Object.keys(FIX_TESTS).sort()).toEqual(names.sort());
  for (const source of fixes) {
    for (const part of [/\bwrong:\s+["'`]/, /\bseen: "\d+\.\d+\.\d+"/, /\bmembers\b/]) expect(source).toMatch(part);
  }
  for (const [file, title] of Object.values(FIX_TESTS)) {
    const path = `${ROOT}tests/${file}.test.ts`;
    expect(existsSync(path), file).toBe(true);
    if (title) expect(readFileSync(path, "utf8")).toContain(title);
  }
});
