import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { published } from "./support/case-files";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const read = (path: string) => readFileSync(`${ROOT}${path}`, "utf8");
const { scripts } = JSON.parse(read("package.json")) as { scripts: Record<string, string> };

/** All text of a file or a folder, without marks of emphasis and with one space between words. */
function textOf(path: string): string {
  const whole = `${ROOT}${path}`;
  const files = statSync(whole).isDirectory()
    ? readdirSync(whole, { recursive: true, encoding: "utf8" })
        .filter((name) => /\.(tsx?|ejs|html)$/.test(name))
        .map((name) => `${path}/${name}`)
    : [path];
  return files.map(read).join("\n").replaceAll("**", "").replace(/\s+/g, " ");
}

const rows = read("DEVELOPERS.md")
  .split("## Claims")[1]!
  .split("\n## ")[0]!
  .split("\n")
  .filter((line) => line.startsWith("| ") && !line.startsWith("| ---"))
  .slice(1)
  .map((line) => line.slice(2, -2).split(" | ") as [sentence: string, where: string, holds: string]);

describe("the table of claims in DEVELOPERS.md", () => {
  it("has three cells a row", () => {
    expect(rows.length).toBeGreaterThan(60);
    for (const row of rows) expect(row, row[0]).toHaveLength(3);
  });

  it.each(rows)("%s", (sentence, where, holds) => {
    const quotes = [...sentence.matchAll(/"([^"]+)"/g)].map(([, quote]) => quote!);
    expect(where === "here" ? quotes : [], "a quote needs a place").toEqual([]);
    expect(where === "here" || quotes.length > 0, "what is said elsewhere is quoted").toBe(true);
    for (const path of where === "here" ? [] : where.split(", ")) {
      const text = textOf(path);
      for (const quote of quotes) expect(text.includes(quote), `${path} says: ${quote}`).toBe(true);
    }
    const tests = [...holds.matchAll(/tests\/[\w./-]+\w/g)].map(([path]) => path);
    const commands = [...holds.matchAll(/`npm run ([\w:]+)`/g)].map(([, name]) => name!);
    expect(tests.length + commands.length, "a test or a command").toBeGreaterThan(0);
    const isThere = (path: string) => ["", ".test.ts", ".test.tsx"].some((end) => existsSync(`${ROOT}${path}${end}`));
    expect(tests.filter((path) => !isThere(path))).toEqual([]);
    expect(commands.filter((name) => !(name in scripts))).toEqual([]);
  });
});

it("the README counts the values of FAO-56 as they are", () => {
  const cases = ["fao56-annex.json", "fao56-examples.json"].flatMap(
    (name) => (published(name) as { cases: unknown[] }).cases,
  );
  expect(read("README.md")).toContain(`FAO-56 (${cases.length} values)`);
});
