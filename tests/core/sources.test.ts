import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { COSTS, PAYING } from "../../src/core/figures/costs";
import type { Figure } from "../../src/core/figures/figure";
import { BUILT_IN_LIMITS } from "../../src/core/figures/limits";
import { MEASURES } from "../../src/core/figures/measures";
import { RUN_TIME } from "../../src/core/figures/run-time";
import { WATER } from "../../src/core/figures/water";

const CORE = fileURLToPath(new URL("../../src/core", import.meta.url));
/** Says neither who wrote it nor that nobody did. */
const BARE = /^common practice\W*$/;

it("no `@source` says only that something is common practice", () => {
  const tags = readdirSync(CORE, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .flatMap((name) =>
      [...readFileSync(`${CORE}/${name}`, "utf8").matchAll(/@source (.*)/g)].map(([, source]) => ({
        name,
        source: source!,
      })),
    );
  expect(tags.length).toBeGreaterThan(100);
  expect(tags.filter(({ source }) => BARE.test(source) || /, common practice$/.test(source))).toEqual([]);
});

it("nor does the source of a figure or a limit, which the user sees", () => {
  const figures: Figure[] = [MEASURES, RUN_TIME, WATER, COSTS, PAYING].flatMap((all) => Object.values<Figure>(all));
  for (const { name, source } of figures) expect(BARE.test(source) || source === "", name).toBe(false);
  for (const { measure, source } of BUILT_IN_LIMITS) expect(source, measure).not.toMatch(BARE);
});
