import type { SummaryRow } from "../../core/summary/summary";
import { withItsUnit } from "../parts/figure";

/** A limit as it is shown, such as `≥ 85`. */
export const limitWords = (limit: string): string => limit.replace(">=", "≥").replace("<=", "≤");

/** The unit of a row beside a number; `without` is said of a figure that has none. */
export const unitOf = ({ unit, value }: SummaryRow, without = "ratio"): string =>
  unit === "cans" && value === 1 ? "can" : unit || without;

/** The value of a row with its unit, or the words that say why there is none. */
export function FigureValue({ row, without }: { row: SummaryRow; without?: string }) {
  const isNumber = typeof row.value === "number";
  return (
    <span className={isNumber ? "figure" : ""}>
      {`${withItsUnit(row.value, row.unit)}${isNumber ? ` ${unitOf(row, without)}` : ""}`.trimEnd()}
    </span>
  );
}
