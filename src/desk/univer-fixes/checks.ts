import { type Injector, IUniverInstanceService } from "@univerjs/core";
import {
  DataValidationCustomFormulaService,
  SheetsDataValidationValidatorService,
} from "@univerjs/preset-sheets-data-validation";
import { valueNow } from "./value-now";

/** The formula of a check, and the cell that it is written for. */
interface Written {
  formula: string;
  originRow: number;
  originCol: number;
}

/** The grid's own service of checks by formula. */
interface Checks {
  _ruleFormulaMap: Map<string, Map<string, Map<string, Written>>>;
  _ruleFormulaMap2: Checks["_ruleFormulaMap"];
  _registerFormula(): string;
  makeRuleDirty(): void;
  getCellFormulaValue(
    unit: string,
    sheet: string,
    rule: string,
    row: number,
    column: number,
  ): Promise<{ v: unknown } | undefined>;
  getCellFormula2Value: Checks["getCellFormulaValue"];
}

/** The grid looks over changed cells when it has time, and complained where their workbook was closed by then. */
function leaveClosedBooks(injector: Injector): void {
  const validator = SheetsDataValidationValidatorService.prototype;
  const { validatorRanges } = validator;
  validator.validatorRanges = async function (unit, ...rest) {
    return injector.get(IUniverInstanceService).getUnit(unit) ? validatorRanges.call(this, unit, ...rest) : [];
  };
}

/**
 * The grid works out a check's formula only with its next calculation, for all cells of the check, and holds the
 * selection back until then: what is typed meanwhile goes into the wrong cell. Here each entry is checked at once.
 */
export function mendChecks(injector: Injector): void {
  const checks = DataValidationCustomFormulaService.prototype as unknown as Checks;
  const now = (formulas: "_ruleFormulaMap" | "_ruleFormulaMap2"): Checks["getCellFormulaValue"] =>
    async function (this: Checks, unit, sheet, rule, row, column) {
      const written = this[formulas].get(unit)?.get(sheet)?.get(rule);
      if (!written) return undefined;
      const first = { row: written.originRow, column: written.originCol };
      return { v: valueNow(injector, written.formula, first, { unit, sheet, row, column }) };
    };
  checks._registerFormula = () => "";
  checks.makeRuleDirty = () => {};
  checks.getCellFormulaValue = now("_ruleFormulaMap");
  checks.getCellFormula2Value = now("_ruleFormulaMap2");
  leaveClosedBooks(injector);
}
