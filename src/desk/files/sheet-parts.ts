import { DataValidationErrorStyle, DataValidationRenderMode, type ISheetDataValidationRule } from "@univerjs/core";
import type { IConditionFormattingRule } from "@univerjs/preset-sheets-conditional-formatting";
import { CFRuleType, CFSubRuleType } from "@univerjs/preset-sheets-conditional-formatting";
import type { ISheetNote } from "@univerjs/preset-sheets-note";
import type { BookNote, BookSheet, Condition, Validation } from "../../xlsx/desk-file/book";
import { ownNamesOf } from "./defined-names";
import { styleOf } from "./looks";

const REFUSALS = {
  stop: DataValidationErrorStyle.STOP,
  warning: DataValidationErrorStyle.WARNING,
  information: DataValidationErrorStyle.INFO,
} as const;
const NOTE_SIZE_PX = { width: 200, height: 100 };

function rule({ places, type, operator, formulas, allowBlank, refusal, prompt }: Validation, uid: string) {
  return {
    uid,
    ranges: places,
    type,
    ...(operator && { operator }),
    ...(formulas[0] !== undefined && { formula1: formulas[0] }),
    ...(formulas[1] !== undefined && { formula2: formulas[1] }),
    allowBlank,
    ...(type === "list" && { showDropDown: true, renderMode: DataValidationRenderMode.ARROW }),
    ...(refusal && {
      showErrorMessage: true,
      errorStyle: REFUSALS[refusal.style],
      errorTitle: refusal.title,
      error: refusal.text,
    }),
    ...(prompt && { showInputMessage: true, promptTitle: prompt.title, prompt: prompt.text }),
  } as ISheetDataValidationRule;
}

function format({ places, formula, look }: Condition, cfId: string): IConditionFormattingRule {
  const { n: _, ...style } = styleOf(look);
  const rule = { type: CFRuleType.highlightCell, subType: CFSubRuleType.formula, value: formula, style } as const;
  return { cfId, ranges: places, stopIfTrue: false, rule };
}

function notes(all: BookNote[], key: string): Record<number, Record<number, ISheetNote>> {
  const found: Record<number, Record<number, ISheetNote>> = {};
  for (const { row, column, text } of all) {
    found[row] ??= {};
    found[row][column] = { id: `${key}-${row}-${column}`, row, col: column, ...NOTE_SIZE_PX, note: text };
  }
  return found;
}

/** Checks, conditional formats and notes of sheets as the grid loads them, by the name of the part. */
export function sheetParts(sheets: BookSheet[]): { name: string; data: string }[] {
  const part = (name: string, of: (sheet: BookSheet) => unknown) => ({
    name,
    data: JSON.stringify(Object.fromEntries(sheets.map((sheet) => [sheet.key, of(sheet)]))),
  });
  const own = ownNamesOf(sheets);
  const translated = (formula: string, key: string) =>
    formula.startsWith("=") ? own.translated(formula, key) : formula;
  return [
    part("SHEET_DATA_VALIDATION_PLUGIN", ({ key, validations }) =>
      validations
        .filter(({ type }) => type !== "any")
        .map((one) => ({ ...one, formulas: one.formulas.map((formula) => translated(formula, key)) }))
        .map((one, i) => rule(one, `${key}-check-${i}`)),
    ),
    part("SHEET_CONDITIONAL_FORMATTING_PLUGIN", ({ key, conditions }) =>
      conditions.map((one, i) => format({ ...one, formula: translated(one.formula, key) }, `${key}-format-${i}`)),
    ),
    part("SHEET_NOTE_PLUGIN", ({ key, notes: all }) => notes(all, key)),
  ];
}
