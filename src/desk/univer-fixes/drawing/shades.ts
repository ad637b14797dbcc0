import { cellToRange, ICommandService, ObjectMatrix, Rectangle } from "@univerjs/core";
import {
  CFSubRuleType,
  ConditionalFormattingFormulaService,
  ConditionalFormattingRuleModel,
  ConditionalFormattingService,
  ConditionalFormattingViewModel,
} from "@univerjs/preset-sheets-conditional-formatting";
import { FormulaResultStatus, SetFormulaCalculationNotificationMutation } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";
import { firstCell, valueNow } from "../formulas/value-now";

/** The grid's own service of conditional formats by formula. */
interface Shades {
  _registerRuleFormulas(): void;
  registerFormulaWithRange(): void;
  getFormulaMatrix(): object;
  getFormulaResultWithCoords(
    unit: string,
    sheet: string,
    id: string,
    formula: string,
    down?: number,
    right?: number,
  ): object;
}

const own = ConditionalFormattingFormulaService.prototype as unknown as Shades;
const view = ConditionalFormattingViewModel.prototype;
const service = ConditionalFormattingService.prototype;

/** On every change of a cell the grid asks which formats lie on it, and works them out: here only where it draws the cell. */
function namedOnly(rules: ConditionalFormattingRuleModel): void {
  const drawn = view.getCellCfs;
  let drawing = false;
  view.getCellCfs = function (unit, sheet, row, column) {
    if (drawing) return drawn.call(this, unit, sheet, row, column);
    const onCell = (rules.getSubunitRules(unit, sheet) ?? []).filter(({ ranges }) =>
      ranges.some((one) => Rectangle.contains(one, cellToRange(row, column))),
    );
    return onCell.map(({ cfId }, priority) => ({ cfId, priority, result: {} }));
  };
  const { composeStyle } = service;
  service.composeStyle = function (...cell) {
    drawing = true;
    try {
      return composeStyle.apply(this, cell);
    } finally {
      drawing = false;
    }
  };
}

/** Calculates a format for a cell that is drawn, when it is drawn. */
export const shades: Fix = {
  name: "shades",
  wrong:
    "With every calculation the grid calculates the conditional formats of every cell of every sheet: of 14,200 formulas that follow a reading 12,700 are such, and it is slow.",
  seen: "0.25.1",
  members({ injector }) {
    const replaced = [
      "_registerRuleFormulas",
      "registerFormulaWithRange",
      "getFormulaMatrix",
      "getFormulaResultWithCoords",
    ];
    return [
      ...replaced.map((name): [string, object, string] => ["ConditionalFormattingFormulaService", own, name]),
      ["ConditionalFormattingViewModel", view, "getCellCfs"],
      ["ConditionalFormattingViewModel", injector.get(ConditionalFormattingViewModel), "markRuleDirty"],
      ["ConditionalFormattingService", service, "composeStyle"],
      ["ConditionalFormattingRuleModel", injector.get(ConditionalFormattingRuleModel), "getSubunitRules"],
    ];
  },
  mend({ injector }) {
    const rules = injector.get(ConditionalFormattingRuleModel);
    const status = FormulaResultStatus.SUCCESS;
    own._registerRuleFormulas = () => {};
    own.registerFormulaWithRange = () => {};
    own.getFormulaMatrix = () => ({ status, result: new ObjectMatrix() });
    own.getFormulaResultWithCoords = (unit, sheet, id, formula, down = 0, right = 0) => {
      const first = firstCell(rules.getRule(unit, sheet, id)?.ranges ?? []);
      const at = { unit, sheet, row: first.row + down, column: first.column + right };
      return { status, result: valueNow(injector, formula, first, at) };
    };
    namedOnly(rules);
    injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
      if (id !== SetFormulaCalculationNotificationMutation.id) return;
      if ((params as { functionsExecutedState?: number }).functionsExecutedState === undefined) return;
      const shown = injector.get(ConditionalFormattingViewModel);
      for (const [unit, sheets] of rules.getAll()) {
        for (const [sheet, ofSheet] of sheets) {
          for (const { cfId, rule } of ofSheet) {
            if ("subType" in rule && rule.subType === CFSubRuleType.formula) shown.markRuleDirty(unit, sheet, cfId);
          }
        }
      }
    });
  },
};
