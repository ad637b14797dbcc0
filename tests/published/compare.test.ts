import { describe, expect, it } from "vitest";
import { compare, halfLastDigit } from "../support/published";

describe("the comparer of published values", () => {
  it.each([
    ["90.67", 0.005],
    ["80", 0.5],
    ["1.50", 0.005],
    ["-9.26", 0.005],
    ["6.22e-16", 0.005e-16],
    ["1e+3", 500],
  ])("takes half a unit of the last digit of %s", (printed, half) => {
    expect(halfLastDigit(printed)).toBeCloseTo(half, 18);
  });

  it.each([Number.NaN, Infinity, -Infinity, undefined, null, "80"])("refuses %s", (ours) => {
    expect(compare(ours, { expected: "80" })).toMatchObject({ agrees: false, misses: Infinity });
  });

  it("takes a value on the edge and refuses one just past it, on both sides", () => {
    expect(compare(80.5, { expected: "80" }).agrees).toBe(true);
    expect(compare(79.5, { expected: "80" }).agrees).toBe(true);
    expect(compare(80.500001, { expected: "80" }).agrees).toBe(false);
    expect(compare(79.499999, { expected: "80" }).agrees).toBe(false);
    expect(compare(90.675, { expected: "90.67" }).agrees).toBe(true);
  });

  it("takes a wider tolerance only with a reason", () => {
    expect(compare(81.4, { expected: "80", tolerance: 1.5, why: "the source cuts" }).agrees).toBe(true);
    expect(() => compare(81.4, { expected: "80", tolerance: 1.5 })).toThrow('the wider tolerance of "80" needs a why');
  });

  it("refuses a tolerance that is no tolerance, and a text that is no number", () => {
    expect(() => compare(80, { expected: "80", tolerance: Number.NaN })).toThrow(
      'the tolerance of "80" must be more than 0',
    );
    expect(() => compare(80, { expected: "80", tolerance: Infinity, why: "no" })).toThrow(
      'the tolerance of "80" must be more than 0',
    );
    expect(() => compare(80, { expected: "about 80" })).toThrow('"about 80" is not a printed number');
    expect(() => compare(80, { expected: "" })).toThrow('"" is not a printed number');
  });

  it("says what was expected and what came", () => {
    expect(compare(82, { expected: "80" }).message).toBe("expected 80 to 0.5, got 82");
  });
});
