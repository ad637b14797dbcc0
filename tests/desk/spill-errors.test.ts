import { ObjectMatrix } from "@univerjs/core";
import { ArrayValueObject, FormulaRuntimeService, NumberValueObject } from "@univerjs/engine-formula";
import { expect, test, vi } from "vitest";
import { spillErrors } from "../../src/desk/univer-fixes/formulas/spill-errors";

// the presets hand on what the engine exports, and the page with it
vi.mock("@univerjs/preset-sheets-core", () => import("@univerjs/engine-formula"));

test("spill-errors: an array formula without room leaves what a formula in its way has just given", () => {
  if (process.env.WITHOUT !== spillErrors.name) spillErrors.mend({} as never);
  const cellData = new ObjectMatrix([[{ f: "={1;2}" }], [{ f: "=34" }]] as never);
  const config = {
    getUnitData: () => ({ book: { sheet: { cellData } } }),
    getArrayFormulaCellData: () => ({}),
    getArrayFormulaRange: () => ({}),
  };
  const running = new FormulaRuntimeService(config as never, {} as never);
  running.setCurrent(1, 0, 9, 9, "sheet", "book");
  running.setRuntimeData(NumberValueObject.create(34));
  running.setCurrent(0, 0, 9, 9, "sheet", "book");
  running.setRuntimeData(ArrayValueObject.create("{1;2}"));
  const given = running.getUnitData().book!.sheet!;
  expect(given.getValue(0, 0)).toMatchObject({ v: "#SPILL!" });
  expect(given.getValue(1, 0)).toMatchObject({ v: 34 });
});
