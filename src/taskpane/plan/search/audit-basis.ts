import type { LayoutBasis } from "../../../core/layout/multiplier";
import { type NamedCells, numberIn, textIn } from "../../workbook/named";
import type { SearchEntries } from "./entries";

/** The cells of an audit that a search begins with. */
export const SEARCH_NAMES: readonly string[] = [
  ...["Water_Price", "Water_Days", "Multiplier_Basis"],
  ...["Limits_Table", "Limit_MAR_Low", "Limit_MAR_High", "Limit_SC_High", "Limit_SCQ_High"],
];

const BASES: Readonly<Record<string, LayoutBasis>> = { "driest can": "driest", "low quarter": "quarter" };

/** The kind of SC that sets the run time of the audit; undefined where a layout has none of that kind. */
export const basisOfAudit = (found: NamedCells): LayoutBasis | undefined => BASES[textIn(found.Multiplier_Basis)];

/** What the audit says of price, days, basis and limits. */
export function fromAudit(found: NamedCells): Partial<SearchEntries> {
  const text = (name: string) => String(numberIn(found[name]) ?? "");
  const basis = basisOfAudit(found);
  return {
    ...(text("Water_Price") && { waterPrice: text("Water_Price") }),
    ...(text("Water_Days") && { days: text("Water_Days") }),
    ...(basis && { basis }),
    ...(found.Limits_Table && {
      lowRate: text("Limit_MAR_Low"),
      highRate: text("Limit_MAR_High"),
      highest: text(basis === "quarter" ? "Limit_SCQ_High" : "Limit_SC_High"),
    }),
  };
}
