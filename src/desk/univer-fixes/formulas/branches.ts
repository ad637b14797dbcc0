import type { ArrayValueObject, BaseReferenceObject, BaseValueObject } from "@univerjs/preset-sheets-core";
import { FUNCTION, type Node } from "./formula-size";

/** One value, also where it is that of a single cell; null of several. */
function single(value: ReturnType<Node["getValue"]>): BaseValueObject | null {
  if (!value) return null;
  if (value.isReferenceObject()) {
    const { startRow, endRow, startColumn, endColumn } = (value as BaseReferenceObject).getRangePosition();
    const one = startRow === endRow && startColumn === endColumn;
    return one ? single((value as BaseReferenceObject).toArrayValueObject()) : null;
  }
  if (!(value as BaseValueObject).isArray()) return value as BaseValueObject;
  const array = value as ArrayValueObject;
  return array.getRowCount() === 1 && array.getColumnCount() === 1 ? (array.get(0, 0) ?? null) : null;
}

/** The part of an IF that its condition, once that is calculated, doesn't ask for; it gets a value that nobody reads. */
export function branchLeft(node: Node): Node | null {
  if (node.nodeType !== FUNCTION || node.getToken().toUpperCase() !== "IF") return null;
  const [condition, whenTrue, whenFalse] = node.getChildren();
  const value = whenFalse && single(condition!.getValue());
  if (!value || value.isError()) return null;
  const left = value.getValue() ? whenFalse : whenTrue!;
  left.setValue(value);
  return left;
}
