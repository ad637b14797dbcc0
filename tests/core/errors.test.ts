import { describe, expect, it } from "vitest";
import { InputError } from "../../src/core/errors";

describe("InputError", () => {
  it.each([
    [0, "0"],
    ["12 ml", '"12 ml"'],
    ["", '""'],
    ["x".repeat(41), `"${"x".repeat(40)}…"`],
    ["x".repeat(40), `"${"x".repeat(40)}"`],
    [true, "TRUE"],
    [false, "FALSE"],
    [null, "a blank cell"],
    [undefined, "a blank cell"],
    [[1, 2], "a list"],
    [{ a: 1 }, "a linked value"],
    [Number.NaN, "NaN"],
  ])("shows %j as %s", (value, shown) => {
    expect(new InputError("depth", "be more than 0 mm", value).message).toBe(
      `depth must be more than 0 mm, got ${shown}`,
    );
  });

  it("names the place when it is known, and keeps all else when the place is added later", () => {
    const error = new InputError("readings", "be numbers", "a", { missing: true });
    expect(error.place).toBeUndefined();
    const placed = error.at("row 4, column 1");
    expect(placed.message).toBe('readings must be numbers, got "a" in row 4, column 1');
    expect(placed).toMatchObject({ parameter: "readings", rule: "be numbers", value: "a", missing: true });
  });
});
