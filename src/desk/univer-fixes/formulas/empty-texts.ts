import { CellValueType } from "@univerjs/core";
import { BaseReferenceObject } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

/** Such a text stays a text. */
export const emptyTexts: Fix = {
  name: "empty-texts",
  wrong: "The grid takes a text without letters that it has just calculated for a blank cell, and later for 0.",
  seen: "0.25.1",
  members: () => [["BaseReferenceObject", BaseReferenceObject.prototype, "getCellData"]],
  mend() {
    const { getCellData } = BaseReferenceObject.prototype;
    BaseReferenceObject.prototype.getCellData = function (row, column) {
      const cell = getCellData.call(this, row, column);
      return cell?.v === "" && !cell.f && !cell.si ? { ...cell, t: CellValueType.STRING, f: '=""' } : cell;
    };
  },
};
