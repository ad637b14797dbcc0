import { ArrayValueObject, BooleanValueObject, ErrorType, ErrorValueObject } from "@univerjs/engine-formula";
import { expect, test, vi } from "vitest";
import { branchLeft } from "../../src/desk/univer-fixes/formulas/branches";
import type { Node } from "../../src/desk/univer-fixes/formulas/formula-size";

// the presets hand on what the engine exports, and the page with it
vi.mock("@univerjs/preset-sheets-core", () => import("@univerjs/engine-formula"));

/** An IF whose condition gave a value, and which of its branches is left out: the second, the third or none. */
function left(condition: object, name = "IF", branches = 2): number {
  const parts = [condition, null, null]
    .slice(0, branches + 1)
    .map((value) => ({ getValue: () => value, setValue() {} }));
  const node = { nodeType: 4, getToken: () => name, getChildren: () => parts };
  return parts.indexOf(branchLeft(node as unknown as Node) as never);
}

test("endless: an IF calculates the branch that its condition asks for, and both where it gives several answers or an error", () => {
  expect(left(BooleanValueObject.create(true))).toBe(2);
  expect(left(BooleanValueObject.create(false))).toBe(1);
  expect(left(ArrayValueObject.create("{TRUE;FALSE}"))).toBe(-1);
  expect(left(ErrorValueObject.create(ErrorType.NA))).toBe(-1);
  expect(left(BooleanValueObject.create(true), "IF", 1)).toBe(-1);
  expect(left(BooleanValueObject.create(true), "SUM")).toBe(-1);
});
