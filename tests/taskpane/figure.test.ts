import { describe, expect, it } from "vitest";
import { figure, withItsUnit } from "../../src/taskpane/parts/figure";

describe("a figure", () => {
  it.each([
    [54.123, "54.1"],
    [1.5, "1.50"],
    [100, "100"],
    [1234.4, "1,234"],
    [0.01234, "0.0123"],
    [0, "0"],
    [1e-6, "1.00e-6"],
    [123456789, "1.23e+8"],
  ])("shows %d with three significant digits, or in whole units from 1,000 on, as %s", (value, text) => {
    expect(figure(value)).toBe(text);
  });

  it("shows a count in full and words as they are", () => {
    expect(withItsUnit(1234, "cans")).toBe("1234");
    expect(withItsUnit("a can is dry", "ratio")).toBe("a can is dry");
  });
});
