import * as formulajs from "@formulajs/formulajs";
import { describe, expect, it } from "vitest";
import { annuity } from "../../src/core/cost/annuity";
import fc from "../support/properties";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("annuity", () => {
  it("is what @formulajs PMT pays off a loan with", () => {
    fc.assert(
      fc.property(between(1, 1e6), fc.integer({ min: 1, max: 50 }), between(0.001, 1), (capital, life, rate) => {
        const payment = -(formulajs.PMT(rate, life, capital) as number);
        expect(annuity(capital, life, rate) / payment).toBeCloseTo(1, 9);
      }),
    );
  });

  it("shares the capital among the years where money costs nothing, and comes near that at a tiny rate", () => {
    // 900 over 9 years
    expect(annuity(900, 9, 0)).toBe(100);
    expect(annuity(900, 9, 1e-12)).toBeCloseTo(100, 6);
    expect(annuity(0, 9, 0.06)).toBe(0);
  });

  it.each([
    [[-1, 10, 0.06], "capital must be 0 or more, got -1"],
    [[100, 0, 0.06], "life must be more than 0 years, got 0"],
    [[100, 10, 6], "discount_rate must be from 0 to 1, got 6"],
    [[100, 10, Number.NaN], "discount_rate must be from 0 to 1, got NaN"],
  ] as const)("refuses %j", ([capital, life, rate], message) => {
    expect(() => annuity(capital, life, rate)).toThrow(expect.objectContaining({ message }));
  });
});
