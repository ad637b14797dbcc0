import { DataValidationType, type ISheetDataValidationRule } from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import { DataValidationListCacheService, SheetDataValidationModel } from "@univerjs/preset-sheets-data-validation";
import type { Fix } from "../fix";

const same = (one: string) => one.trim().toLowerCase();

/** Takes a listed word however it is capitalised, and writes it as in its list. */
export const listSpelling: Fix = {
  name: "list-spelling",
  wrong: "The grid refuses a word of a list that is typed with other capitals.",
  seen: "0.25.1",
  members: ({ injector }) => [
    ["SheetDataValidationModel", injector.get(SheetDataValidationModel), "getRuleByLocation"],
    ["DataValidationListCacheService", injector.get(DataValidationListCacheService), "getOrCompute"],
    ["SheetInterceptorService", injector.get(SheetInterceptorService), "writeCellInterceptor"],
  ],
  mend({ injector }) {
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
  },
};
