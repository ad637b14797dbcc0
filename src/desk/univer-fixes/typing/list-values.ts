import { DataValidationListCacheService, ListValidator } from "@univerjs/preset-sheets-data-validation";
import type { Fix } from "../fix";
import { firstCell, valuesNow } from "../formulas/value-now";

const lists = DataValidationListCacheService.prototype;
const validator = ListValidator.prototype;

/** Reads a list that is a range or a name when it is asked for. */
export const listValues: Fix = {
  name: "list-values",
  wrong:
    "The grid calculates a list that is a range or a name with its next calculation, so a word written there a moment before is refused.",
  seen: "0.25.1",
  members: () => [
    ["DataValidationListCacheService", lists, "getOrCompute"],
    ["ListValidator", validator, "getListWithColorMap"],
    ["ListValidator", validator, "parseFormula"],
  ],
  mend({ injector }) {
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
    const { getListWithColorMap } = validator;
    validator.getListWithColorMap = function (rule, ...sheet) {
      return rule.formula2 ? getListWithColorMap.call(this, rule, ...sheet) : {};
    };
    validator.parseFormula = async () => ({ formula1: undefined, formula2: undefined, isFormulaValid: true });
  },
};
