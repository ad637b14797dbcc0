import {
  ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/preset-sheets-core";
import { FunctionError } from "./custom-functions";

/** An error that carries its message into the cell's custom data. */
export function errorResult(code: string, message: string): ErrorValueObject {
  return new ErrorValueObject(code as ErrorType).withCustomData({ message });
}

function single(value: unknown): BaseValueObject {
  if (value instanceof FunctionError) return errorResult(value.code, value.message);
  if (typeof value === "string") return StringValueObject.create(value);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (typeof value === "number" && Number.isFinite(value)) return NumberValueObject.create(value);
  return ErrorValueObject.create(ErrorType.NUM);
}

/** What a function answered as the grid takes it; a matrix spills. */
export function gridResult(answer: unknown): BaseValueObject {
  if (!Array.isArray(answer)) return single(answer);
  const columnCount = Math.max(0, ...answer.map((row: unknown[]) => row.length));
  if (columnCount === 0) return ErrorValueObject.create(ErrorType.VALUE);
  return ArrayValueObject.create({
    calculateValueList: answer.map((row: unknown[]) => row.map(single)),
    rowCount: answer.length,
    columnCount,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

/** Runs a function so that nothing it throws stops the calculation of the other cells. */
export function guarded(name: string, work: () => unknown): BaseValueObject {
  try {
    return gridResult(work());
  } catch (problem) {
    if (problem instanceof FunctionError) return errorResult(problem.code, problem.message);
    console.error(`${name} failed`, problem);
    return errorResult(ErrorType.VALUE, "");
  }
}
