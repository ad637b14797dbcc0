import { describe, expect, it } from "vitest";
import { InputError } from "../../src/core/errors";
import { answer } from "../../src/functions/answer";
import { readings } from "../../src/functions/cells";
import { scCan } from "../../src/functions/uniformity";
import { cell, fakeCustomFunctions } from "../support/custom-functions";

function throwing(error: unknown) {
  return () =>
    answer(() => {
      throw error;
    });
}

describe("before Excel has put CustomFunctions in place", () => {
  it("the functions are loaded and answer", () => {
    expect(globalThis).not.toHaveProperty("CustomFunctions");
    // mean 10, driest 8
    expect(scCan([[8, 10, 12, 10]])).toBe(1.25);
  });
});

describe("an answer", () => {
  it("is #VALUE! with the message where an input is wrong", () => {
    fakeCustomFunctions();
    const error = new InputError("spacing", "be more than 0 m", 0);
    expect(cell(throwing(error))).toEqual({ error: "#VALUE!", message: "spacing must be more than 0 m, got 0" });
  });

  it("is #N/A with the message where right inputs give no answer", () => {
    fakeCustomFunctions();
    const error = new InputError("readings", "have at least 2 cans", 1, { missing: true });
    expect(cell(throwing(error))).toEqual({ error: "#N/A", message: "readings must have at least 2 cans, got 1" });
  });

  it("leaves a bug and a cell error as they are", () => {
    fakeCustomFunctions();
    const bug = new TypeError("not a function");
    expect(throwing(bug)).toThrow(bug);
    const passed = new CustomFunctions.Error(CustomFunctions.ErrorCode.divisionByZero);
    expect(cell(throwing(passed))).toEqual({ error: "#DIV/0!", message: "" });
  });
});

describe("the readings of a range", () => {
  it("are in one array, in reading order, without the unread cans", () => {
    const { values } = readings("readings", [
      [1, "x", 2],
      [null, 3, -0],
    ]);
    expect([...values]).toEqual([1, 2, 3, 0]);
    expect(values.buffer.byteLength).toBe(6 * Float64Array.BYTES_PER_ELEMENT);
  });
});
