import type { Injector } from "@univerjs/core";
import { ArrayValueObject, type BaseValueObject, IFunctionService } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

const own = (injector: Injector) => injector.get(IFunctionService).getExecutor("SORT") || null;

/** Gives SORT a copy. */
export const sort: Fix = {
  name: "sort",
  wrong: "The grid's SORT sorts the range's shared cache in place, and other formulas then see sorted cells.",
  seen: "0.25.1",
  members: ({ injector }) => [["SORT", own(injector), "calculate"]],
  mend({ injector }) {
    const executor = own(injector)!;
    const calculate = executor.calculate.bind(executor);
    executor.calculate = (cells: BaseValueObject, ...rest: BaseValueObject[]) => {
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
  },
};
