import { describe, expect, it } from "vitest";
import type { Cells } from "../../src/share/native/arguments";
import { compiled } from "../../src/share/native/compiled";
import { isMatrix, type Matrix, type Scalar, Unsure } from "../../src/share/native/value";

const NO_CELLS: Cells = {
  matrix: (value) => (isMatrix(value) ? value : [[value]]) as Matrix,
  first: (value) => (isMatrix(value) ? value[0]![0]! : value) as Scalar,
  named: () => {
    throw new Unsure();
  },
};

function result(formula: string) {
  const { evaluate, leaves } = compiled(formula, "Limits");
  return evaluate(NO_CELLS, leaves);
}

describe("a list of values in a formula", () => {
  // ECMA-376 part 1, 18.17.2.1: commas between columns, semicolons between rows.
  it.each([
    ["SUMPRODUCT({1,2;3,4})", 1 + 2 + 3 + 4],
    ["SUMPRODUCT({1,2;3,4},{5,6;7,8})", 1 * 5 + 2 * 6 + 3 * 7 + 4 * 8],
    ['SUMPRODUCT(4-LEN(SUBSTITUTE("8.05",{".","0"},"")))', 1 + 1],
    ['INDEX({"a","b";"c","d"},2,1)', "c"],
  ])("is calculated: %s", (formula, expected) => {
    expect(result(formula)).toBe(expected);
  });

  it.each(["SUM({1,A1})", "SUM({1", "SUM({1 2})"])("is not judged where it is no plain list: %s", (formula) => {
    expect(() => result(formula)).toThrow(Unsure);
  });
});
