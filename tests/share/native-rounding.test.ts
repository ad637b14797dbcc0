import { ROUND, ROUNDUP } from "@formulajs/formulajs";
import { describe, expect, it } from "vitest";
import { rounded } from "../../src/share/native/arguments";
import { randomNumbers } from "../support/random";

const random = randomNumbers(5);
const DRAWN = Array.from({ length: 200 }, () => Number((2000 * random() - 1000).toPrecision(9)));
const TINY_AND_LARGE = [-1e-9, 1e-9, 2.5e-7, -3.2e-12, 1e21, -4.5e22, 0];

describe("rounding of what was typed", () => {
  it.each([0, 1, 3, -1])("to %d digits is that of a general library of spreadsheet functions", (digits) => {
    for (const value of [...DRAWN, ...TINY_AND_LARGE]) {
      expect(rounded(value, digits, false) + 0, `${value}`).toBeCloseTo(ROUND(value, digits) as number, 9);
      expect(rounded(value, digits, true) + 0, `${value}`).toBeCloseTo(ROUNDUP(value, digits) as number, 9);
    }
  });

  it.each([
    [2.5, 0, 3],
    [-2.5, 0, -3],
    [1.005, 2, 1.01],
    [0.15, 1, 0.2],
  ])("takes halves of decimal digits away from 0: %d", (value, digits, expected) => {
    expect(rounded(value, digits, false)).toBe(expected);
  });
});
