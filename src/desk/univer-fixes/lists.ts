import { DataValidationType, type Injector, type ISheetDataValidationRule, toDisposable } from "@univerjs/core";
import {
  AFTER_CELL_EDIT,
  IEditorBridgeService,
  ISheetCellDropdownManagerService,
  SheetInterceptorService,
  SheetsSelectionsService,
} from "@univerjs/preset-sheets-core";
import {
  DataValidationListCacheService,
  ListValidator,
  SheetDataValidationModel,
} from "@univerjs/preset-sheets-data-validation";
import { firstCell, valuesNow } from "./value-now";

const same = (one: string) => one.trim().toLowerCase();

/** The grid calculated a list that is a range or name only with its next calculation: here it is read when it is asked for. */
function readNow(injector: Injector): void {
  const lists = DataValidationListCacheService.prototype;
  const { getOrCompute } = lists;
  lists.getOrCompute = function (unit, sheet, rule) {
    const { formula1 = "", ranges } = rule;
    if (!formula1.startsWith("=")) return getOrCompute.call(this, unit, sheet, rule);
    const at = { unit, sheet, ...firstCell(ranges) };
    const texts = valuesNow(injector, formula1, at).map(String);
    const list = [...new Set(texts.filter((text) => text !== ""))];
    const listWithColor = list.map((label) => ({ label, color: "" }));
    return { list, listWithColor, colorMap: {}, set: new Set(list) };
  };
  const validator = ListValidator.prototype;
  const { getListWithColorMap } = validator;
  validator.getListWithColorMap = function (rule, ...sheet) {
    return rule.formula2 ? getListWithColorMap.call(this, rule, ...sheet) : {};
  };
  validator.parseFormula = async () => ({ formula1: undefined, formula2: undefined, isFormulaValid: true });
}

/** A listed word counts however it is capitalised, and is in the cell as in its list. */
function spelledAsListed(injector: Injector): void {
  const rules = injector.get(SheetDataValidationModel);
  const lists = injector.get(DataValidationListCacheService);
  const listOf = (unit: string, sheet: string, rule: ISheetDataValidationRule | undefined) =>
    rule?.type === DataValidationType.LIST ? lists.getOrCompute(unit, sheet, rule).list : [];
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    handler: (cell, { unitId, subUnitId, row, col }, next) => {
      const typed = cell?.v;
      if (typeof typed !== "string" || cell?.f) return next(cell);
      const list = listOf(unitId, subUnitId, rules.getRuleByLocation(unitId, subUnitId, row, col));
      const listed = list.includes(typed) ? typed : list.find((one) => same(one) === same(typed));
      return next(listed === undefined ? cell : { ...cell, v: listed });
    },
  });
}

/**
 * The grid opened a list as soon as somebody typed into its cell, and the list took the keys: here only its arrow opens it,
 * and it closes when somebody types or goes on.
 */
function openByArrowOnly(injector: Injector): void {
  const editor = injector.get(IEditorBridgeService);
  const dropdowns = injector.get(ISheetCellDropdownManagerService);
  const { showDropdown } = dropdowns;
  let close = () => {};
  dropdowns.showDropdown = (asked) => {
    if (asked.type !== "list") return showDropdown.call(dropdowns, asked);
    if (editor.isVisible().visible) return toDisposable(() => {});
    const { row, col } = asked.location;
    const shown = showDropdown.call(dropdowns, asked);
    const moves = injector.get(SheetsSelectionsService).selectionMoveEnd$.subscribe((selections) => {
      const cell = selections.at(-1)?.primary;
      if (cell && (cell.actualRow !== row || cell.actualColumn !== col)) close();
    });
    close = () => {
      moves.unsubscribe();
      shown.dispose();
    };
    return toDisposable(() => close());
  };
  editor.visible$.subscribe(({ visible }) => visible && close());
  document.addEventListener("keydown", ({ key }) => key === "Escape" && close(), { capture: true });
}

/** Makes cells with a list as dependable to type into as others. */
export function mendLists(injector: Injector): void {
  readNow(injector);
  spelledAsListed(injector);
  openByArrowOnly(injector);
}
