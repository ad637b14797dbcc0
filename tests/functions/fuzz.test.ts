import { beforeAll, describe, expect, it } from "vitest";
import { cell, fakeCustomFunctions } from "../support/custom-functions";
import fc from "../support/properties";
import { BED, CALLS, type Call, COLUMN } from "./calls";

const RUNS = 2000;

const catches = fc.oneof(fc.double({ min: 0, max: 100, noNaN: true }), fc.integer({ min: 0, max: 30 }), fc.constant(0));
const wet = fc.double({ min: 1, max: 100, noNaN: true });
const unread = fc.constantFrom<unknown>(null, undefined, "", "x", " X ", { type: "Empty" });
const errorCell = fc
  .constantFrom("#N/A", "#VALUE!", "#DIV/0!", "#NAME?")
  .chain((code) =>
    fc.constantFrom<() => unknown>(
      () => new CustomFunctions.Error(code as CustomFunctions.ErrorCode),
      () => ({ type: "Error", basicType: "Error", basicValue: code }),
    ),
  )
  .map((make) => make());
const odd = fc.oneof(
  fc.constantFrom<unknown>(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -0, -1, 1e300, 5e-324, true),
  fc.constantFrom<unknown>("mm", "can", "quarter", "12", "12 ml", "MEAN", "cu.christiansen", "SC.CAN", "<= 1.5", [[]]),
  fc.double(),
  fc.string(),
  fc.anything(),
  fc.record({
    type: fc.constantFrom("FormattedNumber", "Double", "String", "Boolean", "Entity"),
    basicValue: fc.anything(),
  }),
  errorCell,
);

const anyCell = fc.oneof(
  { weight: 12, arbitrary: catches },
  { weight: 2, arbitrary: unread },
  { weight: 1, arbitrary: odd },
);

function rectangle(of: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  return fc
    .tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 6 }))
    .chain(([rows, columns]) =>
      fc.array(fc.array(of, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
    );
}

const anyRange = fc.oneof(
  { weight: 6, arbitrary: rectangle(wet) },
  { weight: 2, arbitrary: rectangle(catches) },
  { weight: 3, arbitrary: rectangle(fc.oneof({ weight: 6, arbitrary: wet }, { weight: 1, arbitrary: unread })) },
  { weight: 3, arbitrary: rectangle(anyCell) },
  { weight: 1, arbitrary: rectangle(fc.double({ min: 0, max: 1e9, noNaN: true })) },
  { weight: 1, arbitrary: fc.array(fc.array(anyCell, { maxLength: 4 }), { maxLength: 4 }) },
  { weight: 1, arbitrary: fc.constantFrom<unknown>(COLUMN, BED) },
  { weight: 1, arbitrary: odd },
);

const anyLimits = fc.oneof(
  fc.array(
    fc.tuple(
      fc.constantFrom<unknown>("CU (Christiansen)", "dry cans", "SC (low quarter)", "", null, "height"),
      fc.oneof(fc.constantFrom<unknown>("<= 1.5", ">= 85", "5 to 12", "5 to", "", null), odd),
    ),
    { minLength: 1, maxLength: 4 },
  ),
  anyRange,
);

function argumentsOf(call: Call): fc.Arbitrary<unknown[]> {
  const each = call.names.map((name, at) => {
    if (name === "readings" || name === "grid") return anyRange;
    const random = name === "limits" ? anyLimits : odd;
    const number = fc.double({ min: 1e-9, max: 1e9, noNaN: true });
    return fc.oneof(
      { weight: 10, arbitrary: fc.constant(call.good[at]) },
      { weight: 2, arbitrary: number },
      { weight: 1, arbitrary: random },
    );
  });
  return fc.tuple(...each);
}

function allowed(result: unknown): boolean {
  if (typeof result === "number") return Number.isFinite(result);
  if (!Array.isArray(result)) return false;
  const width = result[0]?.length;
  const fits = (value: unknown) => Number.isFinite(value) || typeof value === "string";
  return width > 0 && result.every((row) => Array.isArray(row) && row.length === width && Array.from(row).every(fits));
}

/** An error of our own has a message; one without was in a cell before. */
function refused(result: unknown): boolean {
  const { error, message } = result as { error: string; message: string };
  if (message) return (error === "#VALUE!" || error === "#N/A") && / must .+, got /.test(message);
  return ["#N/A", "#VALUE!", "#DIV/0!", "#NAME?"].includes(error);
}

beforeAll(() => void fakeCustomFunctions());

/** The functions of layouts and of a read bed have tests of their own: beds of few cells, fewer runs. */
const QUICK = CALLS.filter(({ id }) => !/^(LAYOUT|BED)\./.test(id));

describe.each(QUICK)("$id with random arguments", (call) => {
  it("answers a finite number, a full matrix of numbers and text, or a cell error with a message; often each", () => {
    let answers = 0;
    let refusals = 0;
    fc.assert(
      fc.property(argumentsOf(call), (values) => {
        const result = cell(() => call.run(...values));
        const isError = typeof result === "object" && result !== null && "error" in result;
        if (isError) refusals += 1;
        else answers += 1;
        return isError ? refused(result) : allowed(result);
      }),
      { numRuns: RUNS },
    );
    expect(answers).toBeGreaterThan(RUNS / 20);
    expect(refusals).toBeGreaterThan(RUNS / 20);
  });
});
