import { FORMULA_REF_TO_ARRAY_CACHE } from "@univerjs/engine-formula";
import { expect, test, vi } from "vitest";
import { oldValues } from "../../src/desk/univer-fixes/formulas/old-values";

// the presets hand on what the engine exports, and the page with it
vi.mock("@univerjs/preset-sheets-core", () => import("@univerjs/engine-formula"));

test("old-values: what a range held when it was first read is not kept for formulas that read it later", () => {
  if (process.env.WITHOUT !== oldValues.name) oldValues.mend({} as never);
  FORMULA_REF_TO_ARRAY_CACHE.set("a range of a sheet", {} as never);
  expect(FORMULA_REF_TO_ARRAY_CACHE.get("a range of a sheet")).toBeUndefined();
});
