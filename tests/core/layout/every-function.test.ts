import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";

const FAMILY = fileURLToPath(new URL("../../../src/core/layout/", import.meta.url));
const HERE = fileURLToPath(new URL("./", import.meta.url));
const SELF = "every-function.test.ts";

/** Functions that are seen only through another one. */
const THROUGH: Record<string, string> = { checkArcs: "coverage", checkedCells: "coverage", stamp: "overlap" };

const modules = readdirSync(FAMILY).filter((name) => name.endsWith(".ts"));
const exported = (
  await Promise.all(modules.map(async (name) => (await import(`${FAMILY}${name}`)) as Record<string, unknown>))
).flatMap((module) => Object.keys(module).filter((name) => typeof module[name] === "function"));
const tests = readdirSync(HERE)
  .filter((name) => name.endsWith(".test.ts") && name !== SELF)
  .map((name) => readFileSync(`${HERE}${name}`, "utf8"))
  .join("\n");

it.each(exported)("%s has a value from outside or a property", (name) => {
  expect(tests).toMatch(new RegExp(`\\b${THROUGH[name] ?? name}\\(`));
});
