import { beforeAll, expect, it } from "vitest";
import { layoutCompare, layoutCoverage } from "../../../src/functions/layout";
import { cell, fakeCustomFunctions } from "../../support/custom-functions";
import fc from "../../support/properties";

const odd = fc.oneof(
  fc.constantFrom<unknown>(null, "", 0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e-9, 1e9, 5e-324, "4", true, [[]]),
  fc.double(),
  fc.anything(),
);
const profile = fc.oneof(
  fc.constantFrom<unknown>(null, [["ring"]], [["uniform"]], "triangular"),
  fc.array(fc.tuple(fc.double({ min: 0, max: 9 }), fc.double({ min: 0, max: 9 })), { maxLength: 4 }),
);

/** Mostly what a person types, now and then anything else. */
const mostly = (good: fc.Arbitrary<unknown>) =>
  fc.oneof({ weight: 12, arbitrary: good }, { weight: 1, arbitrary: odd });
const metres = (min: number, max: number) => mostly(fc.double({ min, max, noNaN: true }));

const size = metres(1, 12);
const spacing = metres(2, 8);
const side = metres(0.3, 1);
const flow = metres(10, 900);
const arrangement = mostly(fc.constantFrom("border", "inset", "centre", "staggered"));
const arcs = mostly(fc.constantFrom(null, "full", "matched", "unmatched"));

function allowed(result: unknown): boolean {
  if (Array.isArray(result)) {
    const width = result[0].length;
    return result.every(
      (row) => row.length === width && row.every((of: unknown) => typeof of === "string" || Number.isFinite(of)),
    );
  }
  const { error, message } = result as { error: string; message: string };
  return (error === "#VALUE!" || error === "#N/A") && / must .+, got /.test(message);
}

beforeAll(() => void fakeCustomFunctions());

it.each([
  [
    "LAYOUT.COVERAGE",
    layoutCoverage,
    fc.tuple(size, size, spacing, spacing, flow, arrangement, arcs, mostly(profile), side, spacing),
  ],
  ["LAYOUT.COMPARE", layoutCompare, fc.tuple(size, size, spacing, spacing, flow, mostly(profile), side)],
] as const)(
  "%s answers a full matrix of numbers and text, or an error with a message; often each",
  (_, work, given) => {
    let answers = 0;
    let refusals = 0;
    fc.assert(
      fc.property(given as fc.Arbitrary<unknown[]>, (values) => {
        const result = cell(() => (work as (...values: unknown[]) => unknown)(...values));
        if (Array.isArray(result)) answers += 1;
        else refusals += 1;
        return allowed(result);
      }),
      { numRuns: 2000 },
    );
    expect(answers).toBeGreaterThan(100);
    expect(refusals).toBeGreaterThan(100);
  },
);
