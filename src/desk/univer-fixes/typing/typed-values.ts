import {
  CellValueType,
  DataValidationOperator,
  DataValidationType,
  getNumfmtParseValueFilter,
  type ICellData,
  type ISheetDataValidationRule,
  type Nullable,
} from "@univerjs/core";
import { AFTER_CELL_EDIT, getPatternType, INumfmtService, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import { SheetDataValidationModel } from "@univerjs/preset-sheets-data-validation";
import { writtenDay } from "../../../cells/day-number";
import { commaNumber } from "../../decimal-comma";
import type { Fix } from "../fix";

const NUMBERS: string[] = [DataValidationType.WHOLE, DataValidationType.DECIMAL];

/** What a person typed into a cell. */
export const typedText = (cell: Nullable<ICellData>): string =>
  String(cell?.f ?? cell?.p?.body?.dataStream.replace(/\r\n$/, "") ?? cell?.v ?? "");

function asksForNumber({ type, formula1 = "" }: ISheetDataValidationRule): boolean {
  return NUMBERS.includes(type) || (type === DataValidationType.CUSTOM && formula1.includes("ISNUMBER("));
}

/** The most that the check allows is 1, so that 10 % may be meant. */
function allowsShares({ type, operator, formula2 }: ISheetDataValidationRule): boolean {
  const between = operator === undefined || operator === DataValidationOperator.BETWEEN;
  return NUMBERS.includes(type) && between && Boolean(formula2) && Number(formula2) <= 1;
}

/** Whether a number written in the manner `kind` counts as one in a cell with this check and kind of format. */
function counts(kind: string, own: string | undefined, rule: ISheetDataValidationRule | undefined): boolean {
  if (kind === own) return true;
  if (kind === "date" || kind === "datetime" || kind === "time") return false;
  if (own === "date" || own === "time") return false;
  if (kind === "percent") return !rule || allowsShares(rule);
  return !rule || asksForNumber(rule);
}

/** The cell's own format stays, and what is written in a manner that does not fit it stays the text that was typed. */
export const typedValues: Fix = {
  name: "typed-values",
  wrong:
    "The grid takes 1/2 for a day and 10% for a new number format, in cells with a check or a format of their own too.",
  seen: "0.25.1",
  members: ({ injector }) => [
    ["SheetDataValidationModel", injector.get(SheetDataValidationModel), "getRuleByLocation"],
    ["INumfmtService", injector.get(INumfmtService), "getValue"],
    ["SheetInterceptorService", injector.get(SheetInterceptorService), "writeCellInterceptor"],
  ],
  mend({ injector }) {
    const rules = injector.get(SheetDataValidationModel);
    const formats = injector.get(INumfmtService);
    const text = (cell: ICellData, v: string) => ({ ...cell, v, p: null, t: CellValueType.FORCE_STRING });
    const number = (cell: ICellData, v: number) => ({ ...cell, v, p: null, t: CellValueType.NUMBER });
    injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
      priority: 100,
      handler: (cell, { unitId, subUnitId, row, col }, next) => {
        const typed = typedText(cell).trim();
        if (!cell || cell.f || cell.t === CellValueType.FORCE_STRING || typed === "") return next(cell);
        const rule = rules.getRuleByLocation(unitId, subUnitId, row, col);
        const withComma = commaNumber(typed);
        if (withComma !== null && (!rule || asksForNumber(rule))) return next(number(cell, withComma));
        const pattern = formats.getValue(unitId, subUnitId, row, col)?.pattern;
        if (!rule && (!pattern || pattern === "General")) return next(cell);
        const parsed = getNumfmtParseValueFilter(typed);
        if (rule?.type === DataValidationType.DATE) {
          const day = writtenDay(typed);
          return next(day === null ? text(cell, typed) : number(cell, day));
        }
        if (!parsed?.z) return next(cell);
        const fits = counts(getPatternType(parsed.z), pattern && getPatternType(pattern), rule);
        return next(fits ? number(cell, Number(parsed.v)) : text(cell, typed));
      },
    });
  },
};
