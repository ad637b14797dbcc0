import { BaseReferenceObject } from "@univerjs/preset-sheets-core";
import { LAST_COLUMN, LAST_ROW } from "../../../cells/box";
import type { Fix } from "../fix";

const reference = BaseReferenceObject.prototype;

/** Reads such a range as far as its sheet goes, where every cell that holds something is. */
export const wholeRanges: Fix = {
  name: "whole-ranges",
  wrong:
    "The grid answers #NAME? where a range goes past the last row of its sheet, and reads every cell of OFFSET(A1,0,0,1048576,16384), for hours.",
  seen: "0.25.1",
  members: () =>
    ["getRangePosition", "isExceedRange", "getActiveSheetRowCount", "getActiveSheetColumnCount"].map((name) => [
      "BaseReferenceObject",
      reference,
      name,
    ]),
  mend() {
    const { getRangePosition } = reference;
    reference.getRangePosition = function () {
      const range = getRangePosition.call(this);
      const [lastRow, lastColumn] = [this.getActiveSheetRowCount() - 1, this.getActiveSheetColumnCount() - 1];
      return {
        ...range,
        endRow: Math.max(range.startRow, Math.min(range.endRow, lastRow)),
        endColumn: Math.max(range.startColumn, Math.min(range.endColumn, lastColumn)),
      };
    };
    reference.isExceedRange = function () {
      const { startRow, startColumn } = this.getRangePosition();
      if (this.getActiveSheetRowCount() === 0) return true;
      return startRow < 0 || startColumn < 0 || startRow >= LAST_ROW || startColumn >= LAST_COLUMN;
    };
  },
};
