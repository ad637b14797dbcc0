import { ROUND, ROUNDDOWN, ROUNDUP } from "@formulajs/formulajs";
import { describe, expect, it } from "vitest";
import { rounded, surelyRounded } from "../../src/share/native/arguments";
import { Unsure } from "../../src/share/native/value";
import { randomNumbers } from "../support/random";

const random = randomNumbers(5);
const DRAWN = Array.from({ length: 200 }, () => Number((2000 * random() - 1000).toPrecision(9)));
const TINY_AND_LARGE = [-1e-9, 1e-9, 2.5e-7, -3.2e-12, 1e21, -4.5e22, 0];

it("a half that binary digits only come near is not judged: LibreOffice gives 37 for 100 · 7.5/20, others 38", () => {
  expect(() => surelyRounded(37.499999999999993, 0)).toThrow(Unsure);
  expect(surelyRounded(1.005, 2)).toBe(1.01);
  expect([37.5, 37.4999, -2.5, 0, 3].map((value) => surelyRounded(value, 0) + 0)).toEqual([38, 37, -3, 0, 3]);
});

describe("rounding of what was typed", () => {
  it.each([0, 1, 3, -1])("to %d digits is that of a general library of spreadsheet functions", (digits) => {
    for (const value of [...DRAWN, ...TINY_AND_LARGE]) {
      expect(rounded(value, digits, "nearest") + 0, `${value}`).toBeCloseTo(ROUND(value, digits) as number, 9);
      expect(rounded(value, digits, "down") + 0, `${value}`).toBeCloseTo(ROUNDDOWN(value, digits) as number, 9);
      expect(rounded(value, digits, "up") + 0, `${value}`).toBeCloseTo(ROUNDUP(value, digits) as number, 9);
    }
  });

  it.each([
    [2.5, 0, 3],
    [-2.5, 0, -3],
    [1.005, 2, 1.01],
    [0.15, 1, 0.2],
  ])("takes halves of decimal digits away from 0: %d", (value, digits, expected) => {
    expect(rounded(value, digits, "nearest")).toBe(expected);
  });
});
