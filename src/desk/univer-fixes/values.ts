import { CellValueType } from "@univerjs/core";
import { BaseReferenceObject, FORMULA_REF_TO_ARRAY_CACHE } from "@univerjs/preset-sheets-core";

/**
 * To find what depends on what, the grid evaluates references such as `A1:INDEX(A:A,B11)` before it calculates anything,
 * and keeps what it read: formulas then saw the old value of such a cell. Each cell is read when it is needed.
 */
function keepNoValues(): void {
  FORMULA_REF_TO_ARRAY_CACHE.set = () => {};
}

/** The grid takes a text without letters that it has just calculated for a blank cell, and later for 0: it stays a text. */
function keepEmptyTexts(): void {
  const { getCellData } = BaseReferenceObject.prototype;
  BaseReferenceObject.prototype.getCellData = function (row, column) {
    const cell = getCellData.call(this, row, column);
    return cell?.v === "" && !cell.f && !cell.si ? { ...cell, t: CellValueType.STRING, f: '=""' } : cell;
  };
}

/** Formulas read each cell as it is: neither its old value nor 0 for an empty text. */
export function mendValues(): void {
  keepNoValues();
  keepEmptyTexts();
}
