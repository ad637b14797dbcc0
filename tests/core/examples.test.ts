import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { halfLastDigit } from "../support/published";

const CORE = fileURLToPath(new URL("../../src/core", import.meta.url));
/** What rounding may add to a value that is written without a fraction. */
const ROUNDING = 1e-9;

interface Example {
  expression: string;
  value: string;
}

/** Every `@example EXPRESSION // VALUE` of a source text; the expression may run over several lines. */
function examplesOf(source: string): Example[] {
  return [...source.matchAll(/^ \* @example ([^@]+?) \/\/ (.+)$/gm)].map(([, expression, value]) => ({
    expression: expression!.replaceAll(/\n \* +/g, " "),
    value: value!,
  }));
}

const files = await Promise.all(
  readdirSync(CORE, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map(async (name) => {
      const source = readFileSync(`${CORE}/${name}`, "utf8");
      const exported = (await import(`${CORE}/${name}`)) as Record<string, unknown>;
      return { name, source, exported, examples: examplesOf(source) };
    }),
);
const everything = Object.assign({}, ...files.map(({ exported }) => exported)) as Record<string, unknown>;

describe.each(files.filter(({ examples }) => examples.length > 0))(
  "the examples in $name",
  ({ exported, examples }) => {
    it.each(examples)("$expression is $value", ({ expression, value }) => {
      const known = Object.entries({ ...everything, ...exported });
      const evaluate = new Function(...known.map(([key]) => key), `return [${expression}, ${value}]`);
      const [ours, expected] = evaluate(...known.map(([, work]) => work));
      if (typeof expected !== "number") return expect(ours).toEqual(expected);
      const allowed = value.includes(".") ? halfLastDigit(value) : ROUNDING;
      return expect(Math.abs(ours - expected), `got ${ours}`).toBeLessThanOrEqual(allowed);
    });
  },
);

describe("the search for examples", () => {
  it.each(files)("finds every one in $name", ({ source, examples }) => {
    expect(examples).toHaveLength(source.match(/@example/g)?.length ?? 0);
  });
});
