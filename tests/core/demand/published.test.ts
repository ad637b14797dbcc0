import { describe, expect, it } from "vitest";
import annex from "../../published/fao56-annex.json";
import examples from "../../published/fao56-examples.json";
import { DEMAND } from "./core";

interface Case {
  place: string;
  function: string;
  /** A list among the arguments is a step before: a function and its arguments. */
  arguments: unknown[];
  printed: string;
}

const CASES: Case[] = [...examples.cases, ...annex.cases];

function called(name: string, values: unknown[]): number {
  const steps = values.map((value) => (Array.isArray(value) ? called(value[0], value.slice(1)) : value));
  return DEMAND[name]!(...(steps as never[]));
}

/** Half a unit of the last digit printed. */
function tolerance(printed: string): number {
  const decimals = printed.split(".")[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals + 1e-12;
}

describe("FAO-56", () => {
  it.each(CASES)("$place: $function is $printed", ({ function: name, arguments: values, printed }) => {
    expect(Math.abs(called(name, values) - Number(printed))).toBeLessThanOrEqual(tolerance(printed));
  });

  it("prints a value for every function of the family but the plain arithmetic", () => {
    const checked = new Set(CASES.map((each) => each.function));
    expect(Object.keys(DEMAND).filter((name) => !checked.has(name))).toEqual(["potDepth", "radians"]);
  });
});
