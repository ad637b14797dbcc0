import { describe, expect, it } from "vitest";
import { BUILT_IN_LIMITS, LIMITED, parseLimit } from "../../src/core/figures/limits";
import { verdict } from "../../src/core/summary/verdict";

describe("parseLimit", () => {
  it.each([
    ["<= 1.5", { high: 1.5, text: "<= 1.5" }],
    [" ≤1.5 ", { high: 1.5, text: "≤1.5" }],
    [">= 85", { low: 85, text: ">= 85" }],
    ["≥ 85", { low: 85, text: "≥ 85" }],
    ["5 to 12", { low: 5, high: 12, text: "5 to 12" }],
    ["5 TO 5", { low: 5, high: 5, text: "5 TO 5" }],
  ])("reads %j", (text, bounds) => {
    expect(parseLimit(text)).toEqual(bounds);
  });

  it.each(["", "1.5", "< 1.5", ">= ", "<= -1", "12 to 5", "5 to", "about 5", 5, null, [">= 85"]])(
    "refuses %j",
    (text) => {
      expect(() => parseLimit(text)).toThrow('limit must be like "<= 1.5", ">= 85" or "5 to 12", got ');
    },
  );
});

describe("the built-in limits", () => {
  it("each name a measure and a source", () => {
    for (const { measure, source } of BUILT_IN_LIMITS) {
      expect(LIMITED).toContain(measure);
      expect(source).not.toBe("");
    }
  });
});

describe("verdict", () => {
  const range = { measure: "", low: 5, high: 12, text: "", source: "", year: "" };

  it.each([
    [5, 12, "within"],
    [6, 7, "within"],
    [1, 4.9, "outside"],
    [12.1, 30, "outside"],
    [4.9, 5, "too close to call"],
    [12, 13, "too close to call"],
    [1, 30, "too close to call"],
  ])("of %s to %s against 5 to 12 is %s", (low, high, expected) => {
    expect(verdict([low, high], range, 24)).toBe(expected);
  });
});
