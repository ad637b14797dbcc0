import type { BaseValueObject, ErrorValueObject, FunctionVariantType } from "@univerjs/preset-sheets-core";
import type { Parameter } from "./metadata";

/** How a blank cell reaches the functions: Excel's platforms differ, so tests try each. */
export type Blank = "zero" | "null" | "empty";

type Value = BaseValueObject | null | undefined;

const BLANKS = { zero: 0, null: null, empty: "" } as const;

/** An error in a cell as Excel passes it where functions.json allows errors. */
const passedError = (error: BaseValueObject) => ({
  type: "Error",
  basicType: "Error",
  basicValue: (error as ErrorValueObject).getErrorType(),
});

function argumentOf(value: Value, blank: Blank): unknown {
  if (value?.isError()) return passedError(value);
  return value == null || value.isNull() ? BLANKS[blank] : value.getValue();
}

function rows(argument: FunctionVariantType): Value[][] {
  if (argument.isReferenceObject()) {
    // Past the grid's shared cache, which other functions may sort in place.
    return (argument as { toArrayValueObject(cached: boolean): BaseValueObject } & FunctionVariantType)
      .toArrayValueObject(false)
      .getArrayValue() as Value[][];
  }
  const value = argument as BaseValueObject;
  return value.isArray() ? (value.getArrayValue() as Value[][]) : [[value]];
}

/** The arguments as Excel would pass them. */
export function excelArguments(given: FunctionVariantType[], parameters: Parameter[], blank: Blank): unknown[] {
  const passed: unknown[] = [];
  for (const [place, parameter] of parameters.entries()) {
    const argument = given[place];
    if (argument === undefined) {
      passed.push(null);
      continue;
    }
    const values = rows(argument).map((row) => Array.from(row, (cell) => argumentOf(cell, blank)));
    const single = values.length === 1 && values[0]?.length === 1;
    const omitted = single && !argument.isReferenceObject() && (argument as BaseValueObject).isNull();
    if (omitted) passed.push(null);
    else passed.push(single && parameter.dimensionality !== "matrix" ? values[0]?.[0] : values);
  }
  return passed;
}
