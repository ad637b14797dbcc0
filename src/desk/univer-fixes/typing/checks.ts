import { DataValidationCustomFormulaService } from "@univerjs/preset-sheets-data-validation";
import type { Fix } from "../fix";
import { valueNow } from "../formulas/value-now";

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

const prototype = DataValidationCustomFormulaService.prototype as unknown as Checks;

/** Checks each entry at once, and its cell alone. */
export const checks: Fix = {
  name: "checks",
  wrong:
    "The grid calculates a check's formula with its next calculation, for all cells of the check, and holds the selection back until then: what is typed meanwhile goes into the wrong cell.",
  seen: "0.25.1",
  members({ injector }) {
    const service = injector.get(DataValidationCustomFormulaService);
    const owner = "DataValidationCustomFormulaService";
    const own = (["_ruleFormulaMap", "_ruleFormulaMap2"] as const).map((name): [string, object, string] => [
      owner,
      service,
      name,
    ]);
    const replaced = ["_registerFormula", "makeRuleDirty", "getCellFormulaValue", "getCellFormula2Value"];
    return [...own, ...replaced.map((name): [string, object, string] => [owner, prototype, name])];
  },
  mend({ injector }) {
    const now = (formulas: "_ruleFormulaMap" | "_ruleFormulaMap2"): Checks["getCellFormulaValue"] =>
      async function (this: Checks, unit, sheet, rule, row, column) {
        const written = this[formulas].get(unit)?.get(sheet)?.get(rule);
        if (!written) return undefined;
        const first = { row: written.originRow, column: written.originCol };
        return { v: valueNow(injector, written.formula, first, { unit, sheet, row, column }) };
      };
    prototype._registerFormula = () => "";
    prototype.makeRuleDirty = () => {};
    prototype.getCellFormulaValue = now("_ruleFormulaMap");
    prototype.getCellFormula2Value = now("_ruleFormulaMap2");
  },
};
