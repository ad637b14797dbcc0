import type { Injector } from "@univerjs/core";
import { ArrayValueObject, type BaseValueObject, IFunctionService } from "@univerjs/preset-sheets-core";

/** The grid's SORT sorts the range's shared cache in place, and others then see sorted cells: give it a copy. */
export function mendSort(injector: Injector): void {
  const sort = injector.get(IFunctionService).getExecutor("SORT");
  if (!sort) throw new Error("the grid must have a SORT to mend");
  const calculate = sort.calculate.bind(sort);
  sort.calculate = (cells: BaseValueObject, ...rest: BaseValueObject[]) => {
    if (!cells?.isArray()) return calculate(cells, ...rest);
    const lines = cells.getArrayValue().map((line) => [...line]);
    const copy = ArrayValueObject.create({
      calculateValueList: lines,
      rowCount: lines.length,
      columnCount: lines[0]?.length ?? 0,
      unitId: "",
      sheetId: "",
      row: -1,
      column: -1,
    });
    return calculate(copy, ...rest);
  };
}
