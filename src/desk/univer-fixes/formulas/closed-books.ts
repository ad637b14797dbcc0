import { IUniverInstanceService } from "@univerjs/core";
import { SheetsDataValidationValidatorService } from "@univerjs/preset-sheets-data-validation";
import type { Fix } from "../fix";

const validator = SheetsDataValidationValidatorService.prototype;

/** Looks over changed cells only while their workbook is open. */
export const closedBooks: Fix = {
  name: "closed-books",
  wrong: "The grid checks changed cells when it has time, and fails where their workbook was closed by then.",
  seen: "0.25.1",
  members: () => [["SheetsDataValidationValidatorService", validator, "validatorRanges"]],
  mend({ injector }) {
    const { validatorRanges } = validator;
    validator.validatorRanges = async function (unit, ...rest) {
      return injector.get(IUniverInstanceService).getUnit(unit) ? validatorRanges.call(this, unit, ...rest) : [];
    };
  },
};
