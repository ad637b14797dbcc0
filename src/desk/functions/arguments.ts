import { type BaseValueObject, ErrorValueObject, type FunctionVariantType } from "@univerjs/preset-sheets-core";
import type { Parameter } from "./metadata";

/** How a blank cell reaches the functions: Excel's platforms differ, so tests try each. */
export type Blank = "zero" | "null" | "empty";

type Value = BaseValueObject | null | undefined;

const BLANKS = { zero: 0, null: null, empty: "" } as const;

function argumentOf(value: Value, blank: Blank): unknown {
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

/** The arguments as Excel would pass them, or the first error among them, which then is the cell's. */
export function excelArguments(
  given: FunctionVariantType[],
  parameters: Parameter[],
  blank: Blank,
): unknown[] | ErrorValueObject {
  const passed: unknown[] = [];
  for (const [place, parameter] of parameters.entries()) {
    const argument = given[place];
    if (argument === undefined) {
      passed.push(null);
      continue;
    }
    if (argument.isError()) return argument as ErrorValueObject;
    const cells = rows(argument);
    const error = cells.flat().find((cell) => cell?.isError());
    if (error) return error as ErrorValueObject;
    const values = cells.map((row) => Array.from(row, (cell) => argumentOf(cell, blank)));
    const single = values.length === 1 && values[0]?.length === 1;
    const omitted = single && !argument.isReferenceObject() && (argument as BaseValueObject).isNull();
    if (omitted) passed.push(null);
    else passed.push(single && parameter.dimensionality !== "matrix" ? values[0]?.[0] : values);
  }
  return passed;
}

export const isError = (value: unknown[] | ErrorValueObject): value is ErrorValueObject =>
  value instanceof ErrorValueObject;
