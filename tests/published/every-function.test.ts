import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { namesIn } from "../support/calls";
import { caseFiles } from "../support/case-files";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const FAMILIES = ["uniformity", "application", "cost", "summary"];

/** Functions that no printed value checks directly, and the file that holds a property or a reference for each. */
const ELSEWHERE: Record<string, string> = {
  Generator: "tests/core/generator.test.ts",
  bcaEnds: "tests/published/scipy-bootstrap.test.ts",
  bootstrap: "tests/published/scipy-bootstrap.test.ts",
  countedChristiansen: "tests/published/scipy-bootstrap.test.ts",
  countedDistribution: "tests/published/scipy-bootstrap.test.ts",
  correctedRunTime: "tests/core/application/leaching.test.ts",
  countedMean: "tests/published/scipy-bootstrap.test.ts",
  interval: "tests/core/properties.test.ts",
  multiplier: "tests/core/properties.test.ts",
  parseBasis: "tests/core/multiplier.test.ts",
  pulses: "tests/core/application/pulses.test.ts",
  quarterCount: "tests/core/quarter-count.test.ts",
  summary: "tests/core/summary.test.ts",
  verdict: "tests/core/limits.test.ts",
};

const named = new Set(caseFiles().flatMap(({ cases }) => cases.flatMap(namesIn)));

const exported = (
  await Promise.all(
    FAMILIES.flatMap((family) =>
      readdirSync(`${ROOT}/src/core/${family}`)
        .filter((file) => file.endsWith(".ts"))
        .map(async (file) => (await import(`${ROOT}/src/core/${family}/${file}`)) as Record<string, unknown>),
    ),
  )
).flatMap((module) => Object.keys(module).filter((name) => typeof module[name] === "function"));

describe("every function of core", () => {
  it.each(exported)("%s has a value from outside or a property", (name) => {
    expect(named.has(name) || name in ELSEWHERE).toBe(true);
  });
});

describe("the list of properties", () => {
  it.each(Object.entries(ELSEWHERE))("has %s in the file that it names", (name, file) => {
    expect(exported).toContain(name);
    expect(readFileSync(`${ROOT}/${file}`, "utf8")).toMatch(new RegExp(`\\b${name}\\b`));
  });
});
