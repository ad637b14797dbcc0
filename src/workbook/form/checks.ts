import type { DataValidation, Worksheet } from "@cj-tech-master/excelts";
import { startOfDay } from "../../cells/day-number";
import type { CheckSpec } from "./sheet-spec";

export const CHECK_TITLE = "Please check";

const LATEST_DAY = 73050; // 2099-12-31

/** The file library takes dates for the ends of a date check, and numbers for milliseconds since 1970. */
const dateOf = (day: number) => new Date(startOfDay(day));

function rule({ rule }: CheckSpec): DataValidation {
  switch (rule.kind) {
    case "list":
      return { type: "list", formulae: ["of" in rule ? `"${rule.of.join(",")}"` : rule.from] };
    case "date":
      return { type: "date", operator: "between", formulae: [dateOf(1), dateOf(LATEST_DAY)] };
    case "formula":
      return { type: "custom", formulae: [rule.formula] };
    case "number": {
      const type = rule.whole ? "whole" : "decimal";
      const { least = -1e12, most = 1e12 } = rule;
      return { type, operator: "between", formulae: [least, most] };
    }
  }
}

/** Puts the checks of typed values on a sheet; what breaks a rule is refused in words. */
export function writeChecks(sheet: Worksheet, checks: readonly CheckSpec[]): void {
  for (const check of checks) {
    const validation = {
      ...rule(check),
      allowBlank: true,
      showErrorMessage: true,
      errorStyle: "stop",
      errorTitle: CHECK_TITLE,
      error: check.message,
    };
    sheet.dataValidations.add(check.range, validation as DataValidation);
  }
}
