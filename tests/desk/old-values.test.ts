import { ObjectMatrix } from "@univerjs/core";
import {
  type ArrayValueObject,
  FormulaRuntimeService,
  NumberValueObject,
  RangeReferenceObject,
} from "@univerjs/engine-formula";
import { expect, test, vi } from "vitest";
import { oldValues, readAnew } from "../../src/desk/univer-fixes/formulas/old-values";

// the presets hand on what the engine exports, and the page with it
vi.mock("@univerjs/preset-sheets-core", () => import("@univerjs/engine-formula"));

if (process.env.WITHOUT !== oldValues.name) oldValues.mend({} as never);

const cellData = new ObjectMatrix([[{ v: 1, t: 2 }], [{ v: 2, t: 2 }]] as never);
const running = new FormulaRuntimeService({} as never, {} as never);

/** The range A1:A2 as a formula reads it. */
function range(): RangeReferenceObject {
  const found = new RangeReferenceObject({ startRow: 0, endRow: 1, startColumn: 0, endColumn: 0 });
  found.setDefaultUnitId("book");
  found.setDefaultSheetId("sheet");
  found.setUnitData({
    book: { sheet: { cellData, rowCount: 9, columnCount: 9, rowData: {}, columnData: {} } },
  } as never);
  found.setRuntimeData(running.getUnitData());
  return found;
}

const values = (array: ArrayValueObject) => array.toValue().flat();

test("old-values: what a range held when it was first read is not kept once one of its cells is calculated", () => {
  expect(values(range().toArrayValueObject())).toEqual([1, 2]);
  running.setCurrent(1, 0, 9, 9, "sheet", "book");
  running.setRuntimeData(NumberValueObject.create(7));
  expect(values(range().toArrayValueObject())).toEqual([1, 7]);
  running.reset();
});

test("old-values: a range whose cells stay as they are is read once, and a function that changes its lines changes no other's", () => {
  const first = range();
  const cells = vi.spyOn(first, "getCellData");
  first.toArrayValueObject().getArrayValue().reverse();
  expect(cells).toHaveBeenCalledTimes(2);
  const second = range();
  const again = vi.spyOn(second, "getCellData");
  expect(values(second.toArrayValueObject())).toEqual([1, 2]);
  expect(again).not.toHaveBeenCalled();
  cellData.setValue(0, 0, { v: 5, t: 2 } as never);
  expect(values(readAnew(() => range().toArrayValueObject()))).toEqual([5, 2]);
  running.reset();
  expect(values(range().toArrayValueObject())).toEqual([5, 2]);
});
