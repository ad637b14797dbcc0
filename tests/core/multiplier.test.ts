import { describe, expect, it } from "vitest";
import { parseBasis } from "../../src/core/uniformity/multiplier";

describe("parseBasis", () => {
  it.each(["can", "quarter", 0.5, 0.9, 1])("takes %j", (basis) => {
    expect(parseBasis(basis)).toBe(basis);
  });

  it.each([
    ["Can", '"Can"'],
    [0.49, "0.49"],
    [1.01, "1.01"],
    [Number.NaN, "NaN"],
    [true, "TRUE"],
    [null, "a blank cell"],
  ])("refuses %j", (basis, shown) => {
    expect(() => parseBasis(basis)).toThrow(
      `basis must be "can", "quarter" or a share of the cans from 0.5 to 1, got ${shown}`,
    );
  });
});
